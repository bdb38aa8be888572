package org.pumpwright.host.report.pdf;

import com.openhtmltopdf.pdfboxout.PdfContentStreamAdapter;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the elements that the program's charts, marks and codes are made of straight onto a page: lines, shapes and text that
 * stays text. Confined to one thread.
 */
final class VectorPen {
    private static final int ROUND = 1;

    private final PdfContentStreamAdapter page;
    private final DocumentFonts fonts;
    private final DrawingRules rules;

    VectorPen(PdfContentStreamAdapter page, DocumentFonts fonts, DrawingRules rules) {
        this.page = page;
        this.fonts = fonts;
        this.rules = rules;
    }

    /**
     * Draws an element and all within it.
     *
     * @throws IllegalArgumentException if there is an element that it does not know
     */
    void draw(Element element, DrawingStyle around) {
        DrawingStyle style = rules.style(element, around);
        switch (element.getNodeName()) {
            case "svg", "g" -> drawWithin(element, style);
            case "line" -> paint(line(element), style, false);
            case "polyline" -> paint(PathWords.corners(element.getAttribute("points"), false), style, true);
            case "polygon" -> paint(PathWords.corners(element.getAttribute("points"), true), style, true);
            case "circle" -> paint(circle(element), style, true);
            case "rect" -> paint(rectangle(element), style, true);
            case "path" -> paint(PathWords.parse(element.getAttribute("d")), style, true);
            case "text" -> write(element, style);
            case "title", "desc", "style" -> {
                // Words for those who cannot see the drawing, and the rules that it follows.
            }
            default ->
                throw new IllegalArgumentException("<" + element.getNodeName() + "> can't be drawn onto a document");
        }
    }

    private void drawWithin(Element element, DrawingStyle style) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                draw(inner, style);
            }
        }
    }

    private static Shape line(Element element) {
        return new Line2D.Double(
                number(element, "x1"), number(element, "y1"), number(element, "x2"), number(element, "y2"));
    }

    private static Shape circle(Element element) {
        double r = number(element, "r");
        return new Ellipse2D.Double(number(element, "cx") - r, number(element, "cy") - r, 2 * r, 2 * r);
    }

    private static Shape rectangle(Element element) {
        return new Rectangle2D.Double(
                number(element, "x"), number(element, "y"), number(element, "width"), number(element, "height"));
    }

    private void paint(Shape shape, DrawingStyle style, boolean area) {
        Optional<Rgb> fill = area ? style.fill() : Optional.empty();
        Optional<Rgb> stroke = style.stroke();
        fill.ifPresent(colour -> fill(shape, style, colour));
        if (stroke.isPresent()) {
            page.saveGraphics();
            outline(style, stroke.get());
            follow(shape);
            page.stroke();
            page.restoreGraphics();
        }
    }

    private void fill(Shape shape, DrawingStyle style, Rgb colour) {
        page.saveGraphics();
        ink(style, colour);
        follow(shape);
        page.fillNonZero();
        page.restoreGraphics();
    }

    private void ink(DrawingStyle style, Rgb colour) {
        page.setFillColor(colour.red(), colour.green(), colour.blue());
        if (style.fillOpacity() < 1) {
            PDExtendedGraphicsState glass = new PDExtendedGraphicsState();
            glass.setNonStrokingAlphaConstant(style.fillOpacity());
            page.setExtGState(glass);
        }
    }

    private void outline(DrawingStyle style, Rgb colour) {
        page.setStrokingColor(colour.red(), colour.green(), colour.blue());
        page.setLineWidth(style.strokeWidth());
        page.setLineDash(style.dashes(), 0);
        page.setLineCap(style.roundEnds() ? ROUND : 0);
        page.setLineJoin(style.roundCorners() ? ROUND : 0);
    }

    private void follow(Shape shape) {
        float[] at = new float[6];
        for (PathIterator path = shape.getPathIterator(null); !path.isDone(); path.next()) {
            switch (path.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> page.moveTo(at[0], at[1]);
                case PathIterator.SEG_LINETO -> page.lineTo(at[0], at[1]);
                case PathIterator.SEG_CUBICTO -> page.curveTo(at[0], at[1], at[2], at[3], at[4], at[5]);
                case PathIterator.SEG_CLOSE -> page.closeSubpath();
                default -> throw new IllegalStateException("no shape of a drawing has such a part");
            }
        }
    }

    private void write(Element element, DrawingStyle style) {
        Face face = style.face();
        String words = fonts.printable(face, element.getTextContent().strip());
        double width = fonts.width(face, words, style.fontSize());
        double x = number(element, "x")
                - switch (element.getAttribute("text-anchor")) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                };
        Rgb colour = style.fill().orElse(new Rgb(0, 0, 0));
        page.saveGraphics();
        style.stroke().ifPresent(halo -> halo(face, words, style, halo, x, number(element, "y")));
        ink(style, colour);
        letters(face, words, style.fontSize(), x, number(element, "y"));
        page.restoreGraphics();
    }

    /** A rim around the letters, below them, that keeps them apart from lines they lie on. */
    private void halo(Face face, String words, DrawingStyle style, Rgb colour, double x, double y) {
        outline(style, colour);
        page.setLineJoin(ROUND);
        page.setRenderingMode(RenderingMode.STROKE);
        letters(face, words, style.fontSize(), x, y);
        page.setRenderingMode(RenderingMode.FILL);
    }

    private void letters(Face face, String words, double size, double x, double y) {
        page.beginText();
        page.setFont(fonts.font(face), (float) size);
        // The drawing's y grows downwards, that of letters upwards.
        page.setTextMatrix(1, 0, 0, -1, (float) x, (float) y);
        page.drawString(words);
        page.endText();
    }

    private static double number(Element element, String attribute) {
        String value = element.getAttribute(attribute);
        return value.isEmpty() ? 0 : Double.parseDouble(value);
    }
}
