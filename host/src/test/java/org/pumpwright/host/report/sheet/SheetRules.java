package org.pumpwright.host.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.pumpwright.host.text.Language;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** What holds for every paper of the desk. */
public final class SheetRules {
    /** Words that put intent or fault on a person; a stand measures neither. */
    public static final List<String> FORBIDDEN = List.of(
            "abuse",
            "fraud",
            "misuse",
            "negligen",
            "customer error",
            "operator error",
            "your fault",
            "tamper",
            "abuso",
            "fraude",
            "uso indebido",
            "mal uso",
            "neglig",
            "error del cliente",
            "su culpa",
            "culpa");

    private SheetRules() {}

    /** Checks a page. */
    public static void check(String html, Language language) {
        assertThat(html).startsWith("<!DOCTYPE html>").contains("<html lang=\"" + language.code() + "\">");
        assertThat(html)
                .doesNotContain("NaN", "Infinity", "null", "Optional[", "http:", "https:", "<script", "display: flex")
                .doesNotContain("var(--");
        String words = html.toLowerCase(Locale.ROOT).replaceAll("<style.*?</style>", "");
        FORBIDDEN.forEach(word -> assertThat(words).doesNotContain(word));
        assertThat(document(html).getDocumentElement().getTagName()).isEqualTo("html");
    }

    private static Document document(String html) {
        String xml = html.replace("<!DOCTYPE html>", "");
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xml)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("the page is not well formed", e);
        }
    }
}
