package cornerbook.app.sheet;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Assessment;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;

/** The sheet that the customer takes home: the first page is the customer's own and whole, then comes the record. */
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
        try {
            for (var first : SheetRoom.TRIED) {
                var sheet = made(assessment, letterhead, madeAt, notes, first, reader);
                if (sheet.keepsItsPages) {
                    return sheet.pdf;
                }
                if (sheet.firstPageHolds) {
                    return withLessRecord(assessment, letterhead, madeAt, notes, first, reader);
                }
            }
            return withLessRecord(assessment, letterhead, madeAt, notes, SheetRoom.TRIED.getLast(), reader);
        } catch (IOException e) {
            throw new UncheckedIOException("the handover sheet could not be made", e);
        }
    }

    private static byte[] withLessRecord(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            SheetRoom first,
            Reader reader)
            throws IOException {
        byte[] pdf = {};
        for (var room : first.withLessRecord()) {
            var sheet = made(assessment, letterhead, madeAt, notes, room, reader);
            pdf = sheet.pdf;
            if (sheet.keepsItsPages) {
                return pdf;
            }
        }
        return pdf;
    }

    /** A sheet that was made, and whether it keeps to its pages. */
    private static final class Made {
        private final byte[] pdf;
        private final boolean firstPageHolds;
        private final boolean keepsItsPages;

        Made(byte[] pdf, boolean firstPageHolds, boolean keepsItsPages) {
            this.pdf = pdf;
            this.firstPageHolds = firstPageHolds;
            this.keepsItsPages = keepsItsPages;
        }
    }

    private static Made made(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            SheetRoom room,
            Reader reader)
            throws IOException {
        var page = new SheetPage(assessment, letterhead, madeAt, notes, room, reader);
        byte[] pdf = SheetPdf.of(page.write());
        try (var document = Loader.loadPDF(pdf)) {
            var second = new PDFTextStripper();
            second.setStartPage(2);
            second.setEndPage(2);
            boolean holds = plain(second.getText(document)).contains(plain(page.recordHeading()));
            return new Made(pdf, holds, holds && document.getNumberOfPages() <= mostPages(room, notes));
        }
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\u00a0\u202f]+", " ").strip();
    }

    /** Photos may have a page more; no picture is drawn for the sake of filling it. */
    private static int mostPages(SheetRoom room, VisitNotes notes) {
        return notes.photosOnSheet().isEmpty() || room.record().pictures() ? MOST_PAGES : MOST_PAGES + 1;
    }
}
