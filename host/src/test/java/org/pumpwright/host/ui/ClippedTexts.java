package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.text.Text;

/**
 * Finds text that does not fit: a label that shows less than it says, text that reaches out of its node, and a node that reaches out of
 * the window. What lies in a scrolled pane may reach out of its bottom. JavaFX thread only.
 */
public final class ClippedTexts {
    private static final double TOLERANCE = 1.5;

    private final List<String> found = new ArrayList<>();
    private final Bounds window;

    private ClippedTexts(Parent root) {
        window = root.localToScene(root.getLayoutBounds());
    }

    /** One line for each text that is clipped, below this node; it must be laid out. */
    public static List<String> under(Parent root) {
        ClippedTexts search = new ClippedTexts(root);
        root.applyCss();
        root.layout();
        search.walk(root, false);
        return search.found;
    }

    private void walk(Node node, boolean scrolled) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled
                && labeled.getText() != null
                && !labeled.getText().isEmpty()) {
            check(labeled, scrolled);
        }
        if (node instanceof Parent parent && !(node instanceof ScrollBar)) {
            boolean inside =
                    scrolled || node instanceof ScrollPane || node instanceof ListView || node instanceof TableView;
            parent.getChildrenUnmodifiable().forEach(child -> walk(child, inside));
        }
    }

    private void check(Labeled labeled, boolean scrolled) {
        Text shown = text(labeled);
        if (shown == null) {
            tell(labeled, "shows no text");
            return;
        }
        if (!shown.getText().equals(labeled.getText())) {
            tell(labeled, "shows only '" + shown.getText() + "'");
        }
        Bounds text = shown.localToScene(shown.getLayoutBounds());
        Bounds box = labeled.localToScene(labeled.getLayoutBounds());
        double height = text.getHeight();
        checkWords(labeled, shown);
        if (text.getWidth() > box.getWidth() + TOLERANCE || height > box.getHeight() + TOLERANCE) {
            tell(
                    labeled,
                    String.format(
                            Locale.ROOT,
                            "needs %.0f x %.0f and has %.0f x %.0f",
                            text.getWidth(),
                            height,
                            box.getWidth(),
                            box.getHeight()));
        }
        if (!scrolled && !window.contains(text)) {
            tell(labeled, "reaches out of the window");
        }
        for (Parent outer = labeled.getParent(); outer != null && !scrolled; outer = outer.getParent()) {
            Bounds around = outer.localToScene(outer.getLayoutBounds());
            if (text.getMaxX() > around.getMaxX() + TOLERANCE || text.getMaxY() > around.getMaxY() + TOLERANCE + 4) {
                tell(labeled, "reaches out of " + outer.getClass().getSimpleName() + " " + outer.getStyleClass());
                return;
            }
        }
    }

    /** A word wider than its line is broken inside the word, which reads as badly as one that is cut off. */
    private void checkWords(Labeled labeled, Text shown) {
        if (shown.getWrappingWidth() <= 0) {
            return;
        }
        for (String word : labeled.getText().split("\\s+")) {
            Text alone = new Text(word);
            alone.setFont(shown.getFont());
            if (alone.getLayoutBounds().getWidth() > shown.getWrappingWidth() + TOLERANCE) {
                tell(labeled, "breaks the word '" + word + "'");
            }
        }
    }

    private static Text text(Labeled labeled) {
        return (Text) labeled.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .findFirst()
                .orElse(null);
    }

    private void tell(Labeled labeled, String how) {
        found.add("'" + labeled.getText() + "' " + labeled.getStyleClass() + " " + how);
    }
}
