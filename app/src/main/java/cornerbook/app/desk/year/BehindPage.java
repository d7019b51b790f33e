package cornerbook.app.desk.year;

import cornerbook.app.request.Told;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A list that stands behind a picture.
 *
 * @param columns labels, of which the first is that of the cell that leads on
 */
public record BehindPage(Behind behind, List<Column> columns, List<Line> lines) {
    /** On a page; the file has all. */
    private static final int MOST = 200;

    public BehindPage {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    /** A column by the words of its head. */
    public record Column(String said, boolean number) {}

    /**
     * A line.
     *
     * @param link where its first cell leads; null where it leads nowhere
     */
    public record Line(List<Cell> cells, @Nullable String link) {
        public Line {
            cells = List.copyOf(cells);
        }
    }

    /**
     * What stands in a cell.
     *
     * @param said as people of this language read it
     * @param written as a file has it: days by ISO 8601, numbers with a point
     */
    public record Cell(String said, String written) {
        static Cell of(String text) {
            return new Cell(text, text);
        }

        static Cell of(LocalDate day) {
            return new Cell(Told.day(day), day.toString());
        }

        static Cell of(Said said) {
            return of(Told.say(said));
        }

        static Cell of(int count) {
            return of(String.valueOf(count));
        }

        /** In the unit that stands at the head of its column. */
        static Cell of(double value, int decimals) {
            return new Cell(
                    Told.say(new Amount(value, "", decimals)),
                    String.format(Locale.ROOT, "%." + decimals + "f", value));
        }
    }

    public String title() {
        return Told.labels("app/desk/year").of(behind.label());
    }

    /** The first of them. */
    public List<Line> shown() {
        return lines.stream().limit(MOST).toList();
    }

    public int notShown() {
        return lines.size() - shown().size();
    }
}
