package cornerbook.app.sheet;

import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** A paper with prices: an estimate, a bill, a credit note. What stands on it comes in the words of who takes it home. */
public final class PricedSheet {
    private PricedSheet() {}

    /**
     * One line of it.
     *
     * @param detail how the amount comes about, and what it means; may be empty
     */
    public record Row(String words, String detail, String amount) {}

    /**
     * What stands on it.
     *
     * @param facts on top, as who and when
     * @param totals below the rows, the last one largest
     * @param notes sentences at the end
     * @param signature path of what was drawn, on a plane of 1000 by 300; empty where nothing was
     */
    public record Content(
            String title,
            List<SheetPage.Fact> facts,
            List<Row> rows,
            List<SheetPage.Fact> totals,
            List<String> notes,
            String signature) {
        public Content {
            facts = List.copyOf(facts);
            rows = List.copyOf(rows);
            totals = List.copyOf(totals);
            notes = List.copyOf(notes);
        }
    }

    /** What its template takes. */
    public record Page(Letterhead letterhead, Content content, String language, String css, String invented) {}

    /** The paper as PDF. */
    public static byte[] render(Letterhead letterhead, Content content, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        var page = new Page(
                letterhead, content, reader.language().tag(), SheetStyle.css(labels), labels.of("invented"));
        try {
            return SheetPdf.of(SheetTemplates.fill("priced", page));
        } catch (IOException e) {
            throw new UncheckedIOException("the paper could not be made", e);
        }
    }
}
