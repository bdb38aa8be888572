package org.pumpwright.host.app.bucket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.pumpwright.host.app.OrderException;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Holds a certificate against the schema files that a user gives. Schemas that these import are looked up beside them only; nothing is
 * fetched from a network. Thread-safe.
 */
public final class SchemaCheck {
    private SchemaCheck() {}

    /**
     * Checks a certificate.
     *
     * @param schema the certificate's schema, with the schemas that it imports where it says they are, on this disk
     * @throws OrderException naming file, line and what does not keep to the schema
     */
    public static void check(Path schema, Path certificate) throws OrderException {
        if (!Files.isRegularFile(schema)) {
            throw new OrderException(
                    "%s: is not there. Give the file dcc.xsd that you have from its publisher.".formatted(schema));
        }
        try {
            SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "file");
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            Schema known = factory.newSchema(schema.toFile());
            known.newValidator().validate(new StreamSource(certificate.toFile()));
        } catch (SAXParseException e) {
            throw new OrderException("%s:%d: %s".formatted(place(e, certificate), e.getLineNumber(), e.getMessage()));
        } catch (SAXException e) {
            throw new OrderException("%s: can't be used as a schema: %s".formatted(schema, e.getMessage()));
        } catch (IOException e) {
            throw new OrderException("%s: can't be read: %s".formatted(certificate, e.getMessage()));
        }
    }

    private static String place(SAXParseException e, Path otherwise) {
        return e.getSystemId() == null ? otherwise.toString() : e.getSystemId();
    }
}
