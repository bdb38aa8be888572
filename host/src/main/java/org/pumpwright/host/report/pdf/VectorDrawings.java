package org.pumpwright.host.report.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** Places the drawings of one page, each as large as the style sheet says. Confined to one thread. */
final class VectorDrawings implements SVGDrawer {
    private final DocumentFonts fonts;
    private final DrawingRules rules;

    VectorDrawings(DocumentFonts fonts, DrawingRules rules) {
        this.fonts = fonts;
        this.rules = rules;
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new VectorDrawing(svg, box, dotsPerPixel, fonts, rules);
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        // The fonts are those of the document.
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        throw new IllegalStateException("no font comes from a file of the machine: " + file);
    }

    @Override
    public void close() {
        // Holds nothing open.
    }
}
