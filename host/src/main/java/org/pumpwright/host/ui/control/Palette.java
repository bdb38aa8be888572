package org.pumpwright.host.ui.control;

import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.scene.paint.Color;

/**
 * Colours of what is drawn and not styled: those of Okabe and Ito, which most people with a colour deficiency tell apart, on light or
 * dark ground. Nothing is told by colour alone. Thread-safe.
 *
 * @param ground behind the drawing
 * @param ink type and axes
 * @param faint lines of the grid
 * @param healthy the healthy range
 * @param measured what was measured
 * @param outside what lies outside a limit
 * @param near what lies near a limit
 */
public record Palette(Color ground, Color ink, Color faint, Color healthy, Color measured, Color outside, Color near) {
    /** The one that goes with the window's light. JavaFX thread only. */
    public static ObservableValue<Palette> of(ObservableBooleanValue dark) {
        return dark.map(now -> now ? DARK : LIGHT);
    }

    /** Dark type on light ground. */
    public static final Palette LIGHT = new Palette(
            Color.web("#ffffff"),
            Color.web("#101418"),
            Color.web("#d5d9dc"),
            Color.web("#009e73"),
            Color.web("#0072b2"),
            Color.web("#d55e00"),
            Color.web("#e69f00"));

    /** Light type on dark ground. */
    public static final Palette DARK = new Palette(
            Color.web("#14181c"),
            Color.web("#f2f4f5"),
            Color.web("#3a4147"),
            Color.web("#2fc89b"),
            Color.web("#56b4e9"),
            Color.web("#ff8a3d"),
            Color.web("#f0c040"));
}
