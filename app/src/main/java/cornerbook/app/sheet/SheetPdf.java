package cornerbook.app.sheet;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** Makes PDF/A-2a (ISO 19005-2) with tags (ISO 14289-1) and embedded fonts out of XHTML. */
public final class SheetPdf {
    private static final byte[] COLOUR_PROFILE =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        FontMappers.set(new NoOtherFonts());
    }

    private SheetPdf() {}

    public static byte[] of(String xhtml) throws IOException {
        try (var sheet = layOut(xhtml)) {
            return sheet.draw();
        }
    }

    /** The same before it is drawn. */
    static LaidOutSheet layOut(String xhtml) {
        XRLog.setLoggingEnabled(false);
        var drawer = SheetFonts.pictureDrawer();
        var builder = new PdfRendererBuilder()
                .useFastMode()
                .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A)
                .usePdfUaAccessibility(true)
                .useUnicodeLineBreaker(new LineBreaks())
                .useColorProfile(COLOUR_PROFILE)
                .useSVGDrawer(drawer)
                .withProducer("Cornerbook")
                .withHtmlContent(xhtml, null);
        SheetFonts.addTo(builder);
        return new LaidOutSheet(builder, drawer);
    }
}
