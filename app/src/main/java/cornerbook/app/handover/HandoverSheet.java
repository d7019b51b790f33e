package cornerbook.app.handover;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import cornerbook.core.visit.Assessment;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;

/** The sheet that the customer takes home, as PDF/A-2a (ISO 19005-2) with tags (ISO 14289-1) and embedded fonts. */
public final class HandoverSheet {
    /** Most pages that a sheet may have. */
    private static final int MOST_PAGES = 2;
    /** Lines allowed in each list, tried in this order until the sheet has few enough pages. */
    private static final List<Integer> LINES_ALLOWED = List.of(12, 8, 5, 3, 1);

    private static final byte[] COLOUR_PROFILE =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    private static final byte[] REGULAR = font("b612-400.ttf");
    private static final byte[] BOLD = font("b612-700.ttf");

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
            for (int most : LINES_ALLOWED) {
                pdf = toPdf(new SheetPage(assessment, most).write(shopName, madeAt));
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
        try (var drawer = new BatikSVGDrawer()) {
            new PdfRendererBuilder()
                    .useFastMode()
                    .usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A)
                    .usePdfUaAccessibility(true)
                    .useColorProfile(COLOUR_PROFILE)
                    .useFont(() -> new ByteArrayInputStream(REGULAR), "B612", 400, FontStyle.NORMAL, true)
                    .useFont(() -> new ByteArrayInputStream(BOLD), "B612", 700, FontStyle.NORMAL, true)
                    .useSVGDrawer(drawer)
                    .withProducer("Cornerbook")
                    .withHtmlContent(xhtml, null)
                    .toStream(pdf)
                    .run();
        }
        return pdf.toByteArray();
    }

    private static byte[] font(String name) {
        try (var stream = HandoverSheet.class.getResourceAsStream("/cornerbook/app/fonts/" + name)) {
            return Objects.requireNonNull(stream, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
