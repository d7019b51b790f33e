package cornerbook.app.sheet;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.core.assess.Assessment;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;

/** The sheet that the customer takes home: the first page is the customer's own and whole, then comes the record. */
public final class HandoverSheet {
    /** Most pages of a sheet without photos. */
    private static final int MOST_PAGES = 2;

    /** The record's heading in the template. */
    private static final String RECORD = "record";

    private HandoverSheet() {}

    /**
     * The sheet of one visit with what was noted beside its readings: the cautions that the car left with open, and the
     * photos that were chosen for the sheet, which may have a page more.
     *
     * @param agreed what was agreed of it, done without charge, and declined beside what the findings asked for; in sentences
     * @param madeAt when the sheet is made, as it is printed at its foot
     * @param reader who takes it home
     */
    public static byte[] render(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            List<Said> agreed,
            Reader reader) {
        try {
            for (var first : SheetRoom.TRIED) {
                try (var sheet = layOut(assessment, letterhead, madeAt, notes, agreed, first, reader)) {
                    if (keepsItsPages(sheet, first, notes)) {
                        return sheet.draw();
                    }
                    if (firstPageHolds(sheet)) {
                        return withLessRecord(assessment, letterhead, madeAt, notes, agreed, first, reader);
                    }
                }
            }
            return withLessRecord(assessment, letterhead, madeAt, notes, agreed, SheetRoom.TRIED.getLast(), reader);
        } catch (IOException e) {
            throw new UncheckedIOException("the handover sheet could not be made", e);
        }
    }

    private static byte[] withLessRecord(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            List<Said> agreed,
            SheetRoom first,
            Reader reader)
            throws IOException {
        var rooms = first.withLessRecord();
        for (var room : rooms.subList(0, rooms.size() - 1)) {
            try (var sheet = layOut(assessment, letterhead, madeAt, notes, agreed, room, reader)) {
                if (keepsItsPages(sheet, room, notes)) {
                    return sheet.draw();
                }
            }
        }
        try (var sheet = layOut(assessment, letterhead, madeAt, notes, agreed, rooms.getLast(), reader)) {
            return sheet.draw();
        }
    }

    private static LaidOutSheet layOut(
            Assessment assessment,
            Letterhead letterhead,
            Instant madeAt,
            VisitNotes notes,
            List<Said> agreed,
            SheetRoom room,
            Reader reader) {
        return SheetPdf.layOut(new SheetPage(assessment, letterhead, madeAt, notes, agreed, room, reader).write());
    }

    /** Whether what is the customer's own is one page: the record begins on the second. */
    private static boolean firstPageHolds(LaidOutSheet sheet) {
        return sheet.pageOf(RECORD).orElse(0) == 2;
    }

    private static boolean keepsItsPages(LaidOutSheet sheet, SheetRoom room, VisitNotes notes) {
        return firstPageHolds(sheet) && sheet.pages() <= mostPages(room, notes);
    }

    /** Photos may have a page more; no picture is drawn for the sake of filling it. */
    private static int mostPages(SheetRoom room, VisitNotes notes) {
        return notes.photosOnSheet().isEmpty() || room.record().pictures() ? MOST_PAGES : MOST_PAGES + 1;
    }
}
