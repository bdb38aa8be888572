package org.pumpwright.host.report.bucket;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes elements of a digital calibration certificate, indented. Characters that XML does not allow become a replacement sign.
 * Confined to one thread.
 */
final class DccWriter {
    static final String DCC = "https://ptb.de/dcc";
    static final String SI = "https://ptb.de/si";

    private static final String LANGUAGE = "en";

    private final StringWriter text = new StringWriter(16_384);
    private final XMLStreamWriter xml;
    private int depth;

    /** What goes into an element. */
    @FunctionalInterface
    interface Body {
        void write() throws XMLStreamException;
    }

    DccWriter() throws XMLStreamException {
        xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
        xml.setPrefix("dcc", DCC);
        xml.setPrefix("si", SI);
        xml.writeStartDocument("UTF-8", "1.0");
    }

    String finish() throws XMLStreamException {
        xml.writeEndDocument();
        xml.flush();
        return text.append('\n').toString();
    }

    void root(String name, String schemaVersion, Body body) throws XMLStreamException {
        newLine();
        xml.writeStartElement(DCC, name);
        xml.writeNamespace("dcc", DCC);
        xml.writeNamespace("si", SI);
        xml.writeNamespace("xsi", "http://www.w3.org/2001/XMLSchema-instance");
        xml.writeAttribute(
                "xsi",
                "http://www.w3.org/2001/XMLSchema-instance",
                "schemaLocation",
                DCC + " " + DCC + "/v" + schemaVersion + "/dcc.xsd");
        xml.writeAttribute("schemaVersion", schemaVersion);
        inside(body);
    }

    void group(String name, Body body) throws XMLStreamException {
        newLine();
        xml.writeStartElement(DCC, name);
        inside(body);
    }

    /** An element of the unit schema with elements in it. */
    void siGroup(String name, Body body) throws XMLStreamException {
        newLine();
        xml.writeStartElement(SI, name);
        inside(body);
    }

    void value(String name, String value) throws XMLStreamException {
        newLine();
        xml.writeStartElement(DCC, name);
        xml.writeCharacters(allowed(value));
        xml.writeEndElement();
    }

    void siValue(String name, String value) throws XMLStreamException {
        newLine();
        xml.writeStartElement(SI, name);
        xml.writeCharacters(allowed(value));
        xml.writeEndElement();
    }

    /** Text in the certificate's one language. */
    void words(String name, String words) throws XMLStreamException {
        group(name, () -> {
            newLine();
            xml.writeStartElement(DCC, "content");
            xml.writeAttribute("lang", LANGUAGE);
            xml.writeCharacters(allowed(words));
            xml.writeEndElement();
        });
    }

    private void inside(Body body) throws XMLStreamException {
        depth++;
        body.write();
        depth--;
        newLine();
        xml.writeEndElement();
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }

    /** Never empty: the schema asks for at least one sign, without spaces around. */
    private static String allowed(String words) {
        StringBuilder out = new StringBuilder(words.length());
        words.strip().codePoints().forEach(c -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD));
        return out.isEmpty() ? "-" : out.toString();
    }

    /** The characters of XML 1.0, production 2, without line breaks. */
    private static boolean isAllowed(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || (c >= 0x10000 && c <= 0x10FFFF);
    }
}
