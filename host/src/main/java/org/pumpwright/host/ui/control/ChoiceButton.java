package org.pumpwright.host.ui.control;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A large choice: a box that gets a tick when it is chosen, and a word. JavaFX thread only. */
public final class ChoiceButton extends Button {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");

    /** 64 pixels at the smallest window. */
    private static final double LEAST_EMS = 3.56;

    private final BooleanProperty chosen = new SimpleBooleanProperty();

    /**
     * A choice that is not chosen yet.
     *
     * @param deed what a press does; whether it is chosen then is the screen's to say
     */
    public ChoiceButton(ObservableValue<String> word, Runnable deed) {
        getStyleClass().add("choice");
        Region tick = new Region();
        tick.getStyleClass().add("choice-tick");
        StackPane box = new StackPane(tick);
        box.getStyleClass().add("choice-box");
        setGraphic(box);
        setWrapText(true);
        setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        textProperty().bind(word);
        setOnAction(pressed -> deed.run());
        chosen.addListener((observed, old, now) -> pseudoClassStateChanged(CHOSEN, now));
    }

    /** As high as a glove needs, and as its words need. */
    @Override
    protected double computeMinHeight(double width) {
        return Math.max(LEAST_EMS * getFont().getSize(), computePrefHeight(width));
    }

    /** Whether it is chosen. */
    public BooleanProperty chosenProperty() {
        return chosen;
    }
}
