package cornerbook.app.sheet.label;

import cornerbook.app.picture.Palette;
import cornerbook.app.sheet.SheetPdf;
import cornerbook.app.sheet.SheetTemplates;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Labels of any kind on their paper, each with a QR code in its upper right corner.
 *
 * @param css of the paper and of the words
 * @param none what the page says when there is none
 */
public record LabelSheets(String language, String title, String css, List<Sheet> sheets, String none) {
    private static final String CSS = """
            body { font: 8pt/1.2 B612, 'DejaVu Sans'; color: INK; margin: 0; }
            .wide { font-family: 'DejaVu Sans', B612; }
            .sheet { position: relative; page-break-after: always; overflow: hidden; }
            .sheet.last { page-break-after: auto; }
            .label { position: absolute; box-sizing: border-box; padding: 3.5mm 5mm 1mm 5mm; overflow: hidden; }
            h1 { font-size: 13pt; line-height: 1.1; margin: 0 0 1mm 0; word-wrap: break-word; }
            p { margin: 0 0 0.5mm 0; }
            .code { float: right; width: 18mm; margin: -1.5mm -2mm 0 1mm; }
            .code svg { width: 18mm; height: 18mm; }
            .plate { font-weight: 700; }
            """.replace("INK", Palette.INK);

    public LabelSheets {
        sheets = List.copyOf(sheets);
    }

    /**
     * One label.
     *
     * @param code the picture of its QR code
     * @param longHeading whether its heading needs small letters to stand on a line
     */
    public record Label(String code, String heading, boolean longHeading, List<Line> lines) {
        public Label {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line under the heading.
     *
     * @param kind how it looks, empty for a plain one
     * @param large stands before the words in large letters, may be empty
     */
    public record Line(String kind, String large, String words) {
        static Line of(String words) {
            return new Line("", "", words);
        }

        static Line plate(String words) {
            return new Line("plate", "", words);
        }
    }

    /** A label with where it stands on its sheet. */
    public record Placed(Label label, double leftMm, double topMm) {}

    /** The labels of one sheet. */
    public record Sheet(List<Placed> labels, boolean last) {
        public Sheet {
            labels = List.copyOf(labels);
        }
    }

    /** All of them, in their order. */
    static LabelSheets of(String title, String css, List<Label> labels, LabelPlace from, String none, Reader reader) {
        int before = from.first() - 1;
        int count = from.paper().count();
        var sheets = new ArrayList<Sheet>();
        for (int first = 0; first < labels.size(); ) {
            int place = (before + first) % count;
            int end = Math.min(labels.size(), first + count - place);
            var placed = new ArrayList<Placed>();
            for (int at = first; at < end; at++) {
                int on = (before + at) % count;
                placed.add(new Placed(
                        labels.get(at),
                        from.paper().leftOfMm(on) + from.rightMm(),
                        from.paper().topOfMm(on) + from.downMm()));
            }
            sheets.add(new Sheet(placed, end == labels.size()));
            first = end;
        }
        return new LabelSheets(reader.language().tag(), title, from.paper().css() + CSS + css, sheets, none);
    }

    byte[] render() {
        try {
            return SheetPdf.of(SheetTemplates.fill("labels", this));
        } catch (IOException e) {
            throw new UncheckedIOException("the labels could not be made", e);
        }
    }

    public String code(Label label) {
        return SheetTemplates.described(label.code());
    }
}
