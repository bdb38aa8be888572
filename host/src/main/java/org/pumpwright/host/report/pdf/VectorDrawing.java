package org.pumpwright.host.report.pdf;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfContentStreamAdapter;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import org.w3c.dom.Element;

/** One drawing, scaled to the box that the page has for it without being distorted. Confined to one thread. */
final class VectorDrawing implements SVGImage {
    private final Element svg;
    private final Box box;
    private final double dotsPerPixel;
    private final DocumentFonts fonts;
    private final DrawingRules rules;
    private final double left;
    private final double top;
    private final double width;
    private final double height;

    VectorDrawing(Element svg, Box box, double dotsPerPixel, DocumentFonts fonts, DrawingRules rules) {
        this.svg = svg;
        this.box = box;
        this.dotsPerPixel = dotsPerPixel;
        this.fonts = fonts;
        this.rules = rules;
        String[] view = svg.getAttribute("viewBox").strip().split("\\s+", -1);
        if (view.length != 4) {
            throw new IllegalArgumentException(
                    "a drawing has no viewBox of four numbers: '" + svg.getAttribute("viewBox") + "'");
        }
        left = Double.parseDouble(view[0]);
        top = Double.parseDouble(view[1]);
        width = Double.parseDouble(view[2]);
        height = Double.parseDouble(view[3]);
    }

    @Override
    public int getIntrinsicWidth() {
        return (int) Math.round(width * dotsPerPixel);
    }

    @Override
    public int getIntrinsicHeight() {
        return (int) Math.round(height * dotsPerPixel);
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
        PdfBoxOutputDevice pdf = (PdfBoxOutputDevice) device;
        Rectangle room = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
        double perDot = 1 / pdf.getDotsPerPoint();
        double scale = Math.min(room.width / width, room.height / height) * perDot;
        double pageHeight = pdf.getPage().getMediaBox().getHeight();
        PageBox paper = context.getPage();
        double down = paper.getMarginBorderPadding(context, CalculatedStyle.TOP) - paper.getPaintingTop();
        double indentX = (room.width * perDot - width * scale) / 2;
        double indentY = (room.height * perDot - height * scale) / 2;
        PdfContentStreamAdapter page = pdf.getCurrentPage();
        page.saveGraphics();
        page.applyPdfMatrix(new AffineTransform(
                scale,
                0,
                0,
                -scale,
                (x + paper.getMarginBorderPadding(context, CalculatedStyle.LEFT)) * perDot + indentX - left * scale,
                pageHeight - (y + down) * perDot - indentY + top * scale));
        new VectorPen(page, fonts, rules).draw(svg, DrawingStyle.INITIAL);
        page.restoreGraphics();
    }
}
