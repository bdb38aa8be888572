package org.pumpwright.host.report.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The rules of a page's style sheet that a drawing follows: those for element names and classes, alone or within one another.
 * Thread-safe.
 */
final class DrawingRules {
    private static final Set<String> PROPERTIES = Set.of(
            "fill",
            "fill-opacity",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "stroke-linecap",
            "stroke-linejoin",
            "font-size",
            "font-weight");

    private final List<Rule> rules;

    private DrawingRules(List<Rule> rules) {
        this.rules = rules;
    }

    /** The rules of a style sheet for print, the most special last. */
    static DrawingRules of(String printCss) {
        List<Rule> rules = new ArrayList<>();
        int at = 0;
        int open = printCss.indexOf('{');
        while (open >= 0) {
            String selectors = printCss.substring(at, open).strip();
            int close = printCss.indexOf('}', open);
            if (close < 0) {
                break;
            }
            if (selectors.startsWith("@media")) {
                // What it holds are rules like any others.
                at = open + 1;
            } else {
                add(rules, selectors, declarations(printCss.substring(open + 1, close)));
                at = close + 1;
            }
            open = printCss.indexOf('{', at);
        }
        rules.sort(Comparator.comparingInt(Rule::weight));
        return new DrawingRules(rules);
    }

    private static void add(List<Rule> rules, String selectors, Map<String, String> declarations) {
        if (declarations.isEmpty()) {
            return;
        }
        for (String selector : selectors.replace("}", "").split(",", -1)) {
            if (selector.strip().matches("[A-Za-z0-9.\\s-]+")) {
                rules.add(new Rule(List.of(selector.strip().split("\\s+", -1)), declarations));
            }
        }
    }

    private static Map<String, String> declarations(String block) {
        Map<String, String> found = new HashMap<>();
        for (String declaration : block.split(";", -1)) {
            int colon = declaration.indexOf(':');
            String property = colon < 0 ? "" : declaration.substring(0, colon).strip();
            if (PROPERTIES.contains(property)) {
                found.put(property, declaration.substring(colon + 1).strip());
            }
        }
        return found;
    }

    /** How an element of a drawing looks, given how the one around it does. */
    DrawingStyle style(Element element, DrawingStyle around) {
        Map<String, String> own = new HashMap<>();
        for (String property : PROPERTIES) {
            if (element.hasAttribute(property)) {
                own.put(property, element.getAttribute(property));
            }
        }
        for (Rule rule : rules) {
            if (rule.fits(element)) {
                own.putAll(rule.declarations);
            }
        }
        return around.with(own);
    }

    /** A selector, the outermost part first, and what it declares. */
    private record Rule(List<String> parts, Map<String, String> declarations) {
        int weight() {
            return parts.stream()
                    .mapToInt(part ->
                            10 * (int) part.chars().filter(c -> c == '.').count() + (part.startsWith(".") ? 0 : 1))
                    .sum();
        }

        boolean fits(Element element) {
            int last = parts.size() - 1;
            if (!fits(parts.get(last), element)) {
                return false;
            }
            int open = last - 1;
            for (Node node = element.getParentNode(); open >= 0 && node instanceof Element around; ) {
                open -= fits(parts.get(open), around) ? 1 : 0;
                node = around.getParentNode();
            }
            return open < 0;
        }

        private static boolean fits(String part, Element element) {
            String[] names = part.split("\\.", -1);
            if (!names[0].isEmpty() && !names[0].equals(element.getNodeName())) {
                return false;
            }
            List<String> classes = List.of(element.getAttribute("class").split("\\s+", -1));
            for (int i = 1; i < names.length; i++) {
                if (!classes.contains(names[i])) {
                    return false;
                }
            }
            return true;
        }
    }
}
