package org.pumpwright.host.ui.control;

import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import javafx.scene.transform.Scale;
import org.pumpwright.host.grade.Verdict;

/**
 * The sign of a verdict, as on the papers: one outline each, so that it is known without colour and without reading. It fills the square
 * that it is given. JavaFX thread only.
 */
public final class VerdictSign extends Region {
    private static final double FULL = 100;

    private final Group drawing = new Group();
    private final Scale scale = new Scale();

    /** Nothing yet. */
    public VerdictSign() {
        getStyleClass().add("verdict-sign");
        drawing.setManaged(false);
        drawing.getTransforms().add(scale);
        getChildren().add(drawing);
    }

    /** Shows this verdict. */
    public void show(Verdict verdict) {
        for (Verdict each : Verdict.values()) {
            pseudoClassStateChanged(pseudoClass(each), each == verdict);
        }
        drawing.getChildren().setAll(parts(verdict));
    }

    /** The name under which style sheets know a verdict. */
    static PseudoClass pseudoClass(Verdict verdict) {
        return PseudoClass.getPseudoClass(
                verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    private static Node[] parts(Verdict verdict) {
        return switch (verdict) {
            case PASS -> new Node[] {body(new Circle(50, 50, 46)), stroke(26, 52, 43, 69, 75, 33)};
            case FAIL ->
                new Node[] {
                    body(new Polygon(31, 4, 69, 4, 96, 31, 96, 69, 69, 96, 31, 96, 4, 69, 4, 31)),
                    stroke(32, 32, 68, 68),
                    stroke(68, 32, 32, 68)
                };
            case INCONCLUSIVE ->
                new Node[] {
                    body(new Polygon(50, 2, 98, 50, 50, 98, 2, 50)),
                    stroke(37, 40, 39, 31, 50, 25, 61, 31, 62, 41, 50, 52, 50, 60),
                    stroke(50, 74, 50, 74.5)
                };
            case INVALID ->
                new Node[] {open(new Polygon(7, 7, 93, 7, 93, 93, 7, 93)), bar(10, 90, 90, 10), bar(10, 10, 90, 90)};
            case NOT_TESTED -> new Node[] {open(new Circle(50, 50, 43)), bar(30, 50, 70, 50)};
        };
    }

    private static Shape body(Shape shape) {
        shape.getStyleClass().add("verdict-body");
        return shape;
    }

    private static Shape open(Shape shape) {
        shape.getStyleClass().add("verdict-open");
        return shape;
    }

    private static Shape stroke(double... points) {
        Polyline line = new Polyline(points);
        line.getStyleClass().add("verdict-stroke");
        return line;
    }

    private static Shape bar(double... points) {
        Polyline line = new Polyline(points);
        line.getStyleClass().add("verdict-bar");
        return line;
    }

    @Override
    protected void layoutChildren() {
        double side = Math.min(getWidth(), getHeight());
        scale.setX(side / FULL);
        scale.setY(side / FULL);
        drawing.setLayoutX((getWidth() - side) / 2);
        drawing.setLayoutY((getHeight() - side) / 2);
    }
}
