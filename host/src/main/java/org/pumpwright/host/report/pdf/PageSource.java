package org.pumpwright.host.report.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashSet;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page as a tree, with its style sheet made fit for print and for one sheet. Confined to one thread.
 *
 * @param tree the page
 * @param style the rules for print
 * @param title of the page
 * @param language its code
 */
record PageSource(Document tree, String style, String title, String language) {
    /** The style class of pages that number their sheets themselves. */
    private static final String OWN_FEET = "own-feet";

    /** The style class of the block that holds a page of the same width on every sheet. */
    private static final String NARROW = "sheet";

    private static final String DISALLOW = "http://apache.org/xml/features/nonvalidating/load-external-dtd";

    static PageSource read(String html, Sheet sheet) {
        Document tree = parse(html);
        Element root = tree.getDocumentElement();
        root.setAttribute("class", (root.getAttribute("class") + " " + sheet.styleClass()).strip());
        NodeList styles = tree.getElementsByTagName("style");
        Set<String> css = new LinkedHashSet<>();
        for (int i = 0; i < styles.getLength(); i++) {
            String print = PrintStyle.of(styles.item(i).getTextContent());
            styles.item(i).setTextContent(print);
            css.add(print);
        }
        String title =
                tree.getElementsByTagName("title").item(0).getTextContent().strip();
        Element size = tree.createElement("style");
        boolean ownFeet = root.getAttribute("class").contains(OWN_FEET);
        boolean narrow = isNarrow(tree.getElementsByTagName("div"));
        size.setTextContent(sheet.pageRule(ownFeet ? "" : title, narrow));
        tree.getElementsByTagName("head").item(0).appendChild(size);
        String language = root.getAttribute("lang");
        return new PageSource(tree, String.join("\n", css), title, language.isEmpty() ? "en" : language);
    }

    private static boolean isNarrow(NodeList blocks) {
        return blocks.getLength() > 0
                && blocks.item(0) instanceof Element first
                && first.getAttribute("class").startsWith(NARROW);
    }

    private static Document parse(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(DISALLOW, false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(html)));
        } catch (SAXException e) {
            throw new IllegalArgumentException("the page is not well formed: " + e.getMessage(), e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("a page in memory could not be read", e);
        }
    }
}
