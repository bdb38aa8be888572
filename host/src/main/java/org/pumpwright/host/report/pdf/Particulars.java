package org.pumpwright.host.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.pumpwright.host.report.draw.Tag;

/** What a document says of itself: as XMP (ISO 16684-1), in the old information table, and what its colours mean. Thread-safe. */
final class Particulars {
    private static final String PRODUCER = "Pumpwright";
    private static final String COLOURS = "sRGB IEC61966-2.1";
    private static final byte[] PROFILE = StandardRgb.profile();
    private static final DateTimeFormatter XMP_DATE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);
    private static final String XMP = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" \
            xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" \
            xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>B</pdfaid:conformance>
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
            <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
            <xmp:CreatorTool>%s</xmp:CreatorTool>
            <xmp:CreateDate>%s</xmp:CreateDate>
            <xmp:ModifyDate>%s</xmp:ModifyDate>
            <pdf:Producer>%s</pdf:Producer>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """;

    private Particulars() {}

    static void write(PDDocument document, String title, String language, Origin origin) throws IOException {
        document.setDocumentInformation(information(title, origin));
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage(language);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(title, language, origin).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
        PDOutputIntent colours = new PDOutputIntent(document, new ByteArrayInputStream(PROFILE));
        colours.setInfo(COLOURS);
        colours.setOutputConditionIdentifier(COLOURS);
        colours.setRegistryName("http://www.color.org");
        catalog.addOutputIntent(colours);
    }

    private static PDDocumentInformation information(String title, Origin origin) {
        GregorianCalendar date = GregorianCalendar.from(
                origin.date().truncatedTo(ChronoUnit.SECONDS).toZonedDateTime());
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setAuthor(origin.author());
        information.setCreator(origin.program());
        information.setProducer(PRODUCER);
        information.setCreationDate(date);
        information.setModificationDate(date);
        return information;
    }

    private static String xmp(String title, String language, Origin origin) {
        String date = XMP_DATE.format(origin.date());
        return XMP.formatted(
                Tag.escape(title),
                Tag.escape(origin.author()),
                Tag.escape(language),
                Tag.escape(origin.program()),
                date,
                date,
                PRODUCER);
    }
}
