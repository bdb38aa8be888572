package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.TextPatterns;

/**
 * Finds visible text that does not follow the language: everything that is shown must be a text of the file of texts, first in English, and
 * after the switch the same one in Spanish. Exempt are figures, names of keys, and labels of style {@code data}. JavaFX thread only.
 */
public final class SpokenTexts {
    private static final String FIGURES =
            "(F\\d+|Esc|Pause|[0-9.,:\\-/%·  ]|gal/min|gal|psi|kPa|L/min|°[CF]|[VA](?![A-Za-z]))*";

    private SpokenTexts() {}

    /** One line for each text that does not follow. The window speaks English afterwards. */
    public static List<String> deaf(BenchWindow window) {
        Parent root = window.scene().getRoot();
        window.saying().languageProperty().set(Language.EN);
        Map<Labeled, String> english = new LinkedHashMap<>();
        collect(root, english);
        window.saying().languageProperty().set(Language.ES);
        List<String> deaf = new ArrayList<>();
        english.forEach((labeled, before) -> {
            if (!follows(before, labeled.getText())) {
                deaf.add("'" + before + "' becomes '" + labeled.getText() + "' " + labeled.getStyleClass());
            }
        });
        window.saying().languageProperty().set(Language.EN);
        return deaf;
    }

    private static boolean follows(String english, String spanish) {
        return english.matches(FIGURES)
                || TextPatterns.keysOf(Language.EN, english).stream()
                        .anyMatch(key -> TextPatterns.matches(Language.ES, key, spanish));
    }

    private static void collect(Node node, Map<Labeled, String> into) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled
                && labeled.getText() != null
                && !labeled.getText().isEmpty()
                && !labeled.getStyleClass().contains("data")) {
            into.put(labeled, labeled.getText());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, into));
        }
    }
}
