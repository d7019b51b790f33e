package cornerbook.app.sheet;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Assessment;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import org.apache.pdfbox.Loader;

/** The sheet that the customer takes home. */
public final class HandoverSheet {
    /** Most pages of a sheet without photos. */
    private static final int MOST_PAGES = 2;

    private HandoverSheet() {}

    /**
     * The sheet of one visit with what was noted beside its readings: the cautions that the car left with open, and the
     * photos that were chosen for the sheet, which may have a page more.
     *
     * @param madeAt when the sheet is made, as it is printed at its foot
     * @param reader who takes it home
     */
    public static byte[] render(
            Assessment assessment, Letterhead letterhead, Instant madeAt, VisitNotes notes, Reader reader) {
        byte[] pdf = {};
        try {
            for (var room : SheetRoom.TRIED) {
                var page = new SheetPage(assessment, letterhead, madeAt, notes, room, reader);
                pdf = SheetPdf.of(page.write());
                try (var document = Loader.loadPDF(pdf)) {
                    if (document.getNumberOfPages() <= mostPages(room, notes)) {
                        return pdf;
                    }
                }
            }
            return pdf;
        } catch (IOException e) {
            throw new UncheckedIOException("the handover sheet could not be made", e);
        }
    }

    /** Photos may have a page more; no picture is drawn for the sake of filling it. */
    private static int mostPages(SheetRoom room, VisitNotes notes) {
        return notes.photosOnSheet().isEmpty() || room.pictures() ? MOST_PAGES : MOST_PAGES + 1;
    }
}
