package cornerbook.app.handover;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import cornerbook.core.visit.Assessment;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import org.apache.pdfbox.Loader;

/** The sheet that the customer takes home, as PDF/A-2a (ISO 19005-2) with tags (ISO 14289-1) and embedded fonts. */
public final class HandoverSheet {
    /** Most pages that a sheet may have. */
    private static final int MOST_PAGES = 2;

    private static final byte[] COLOUR_PROFILE =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    private HandoverSheet() {}

    /**
     * The sheet of one visit.
     *
     * @param shopName may be blank; a name with the word "invented" marks the whole sheet as invented
     * @param madeAt when the sheet is made, as it is printed at its foot
     */
    public static byte[] render(Assessment assessment, String shopName, Instant madeAt) {
        XRLog.setLoggingEnabled(false);
        byte[] pdf = {};
        try {
            for (var room : SheetRoom.TRIED) {
                pdf = toPdf(new SheetPage(assessment, room).write(shopName, madeAt));
                try (var document = Loader.loadPDF(pdf)) {
                    if (document.getNumberOfPages() <= MOST_PAGES) {
                        return pdf;
                    }
                }
            }
            return pdf;
        } catch (IOException e) {
            throw new UncheckedIOException("the handover sheet could not be made", e);
        }
    }

    private static byte[] toPdf(String xhtml) throws IOException {
        var pdf = new ByteArrayOutputStream(128 * 1024);
        try (var drawer = SheetFonts.pictureDrawer()) {
            var builder = new PdfRendererBuilder()
                    .useFastMode()
                    .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A)
                    .usePdfUaAccessibility(true)
                    .useColorProfile(COLOUR_PROFILE)
                    .useSVGDrawer(drawer)
                    .withProducer("Cornerbook")
                    .withHtmlContent(xhtml, null);
            SheetFonts.addTo(builder);
            builder.toStream(pdf).run();
        }
        return pdf.toByteArray();
    }
}
