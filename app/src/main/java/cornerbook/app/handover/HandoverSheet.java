package cornerbook.app.handover;

import cornerbook.core.visit.Assessment;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import org.apache.pdfbox.Loader;

/** The sheet that the customer takes home. */
public final class HandoverSheet {
    /** Most pages that a sheet may have. */
    private static final int MOST_PAGES = 2;

    private HandoverSheet() {}

    /**
     * The sheet of one visit.
     *
     * @param shopName may be blank; a name with the word "invented" marks the whole sheet as invented
     * @param madeAt when the sheet is made, as it is printed at its foot
     */
    public static byte[] render(Assessment assessment, String shopName, Instant madeAt) {
        return render(assessment, shopName, madeAt, List.of());
    }

    /**
     * The sheet of one visit that the car left with cautions open.
     *
     * @param leftOpen each of them with the reason that was given, one sentence each
     */
    public static byte[] render(Assessment assessment, String shopName, Instant madeAt, List<String> leftOpen) {
        byte[] pdf = {};
        try {
            for (var room : SheetRoom.TRIED) {
                pdf = SheetPdf.of(new SheetPage(assessment, room, leftOpen).write(shopName, madeAt));
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
}
