package org.pumpwright.host.ui;

import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pumpwright.host.ui.control.BigButton;

/** What the screen in front means, in plain words, beside it. JavaFX thread only. */
final class HelpPane extends VBox {
    private final Saying saying;
    private final Label text = new Label();

    HelpPane(Saying saying) {
        this.saying = saying;
        setId("help");
        getStyleClass().add("help");
        Label title = new Label();
        title.getStyleClass().add("help-title");
        title.setWrapText(true);
        title.textProperty().bind(saying.text("ui.help"));
        text.setWrapText(true);
        text.getStyleClass().add("help-text");
        ScrollPane scroll = new ScrollPane(text);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        BigButton close = new BigButton(saying.text("ui.help.close"), "F7");
        close.setOnAction(pressed -> toggle());
        getChildren().addAll(title, scroll, close);
        setVisible(false);
        setManaged(false);
    }

    /** Explains this from now on. */
    void explain(String key) {
        text.textProperty().bind(saying.text(key));
    }

    /** Opens it, or closes it. */
    void toggle() {
        setVisible(!isVisible());
        setManaged(isVisible());
    }
}
