package cornerbook.app.picture.tyre;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.Svg.Anchor;
import cornerbook.core.reread.PersonReads;
import cornerbook.core.reread.ReadingStudy;
import cornerbook.words.Reader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What each person reads more or less than the others, and within which limits it lies, against what matters. */
public final class ReadsMore {
    private static final int WIDTH = 440;
    private static final double LEFT_X = 14;
    private static final double RIGHT_X = 426;
    private static final double TOP_Y = 30;
    private static final double ROW = 44;
    private static final int TICKS = 6;

    private record Row(String person, PersonReads.Offset offset) {}

    private ReadsMore() {}

    /** Empty where nobody was compared with another. */
    public static Optional<String> find(ReadingStudy study, Reader reader) {
        var rows = study.persons().stream()
                .flatMap(each -> Stream.ofNullable(each.offset()).map(offset -> new Row(each.person(), offset)))
                .toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(svg(rows, reader));
    }

    private static String svg(List<Row> rows, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        double most = rows.stream()
                .mapToDouble(row -> Math.max(
                        Math.abs(row.offset().lowMm()), Math.abs(row.offset().highMm())))
                .max()
                .orElseThrow();
        double endMm = Math.max(1.5 * PersonReads.MATTERS_FROM_MM, Math.min(1.1 * most, ReadingStudy.SLIP_FROM_MM));
        var axis = new Axis(LEFT_X, RIGHT_X, -endMm, endMm, "mm", reader);
        double bottomY = TOP_Y + rows.size() * ROW;
        var svg = new Svg(WIDTH, (int) bottomY + 40, labels.of("reads-more"));
        svg.line(axis.place(0), TOP_Y, axis.place(0), bottomY, Palette.SLATE, 1.5, "");
        svg.words(LEFT_X, 18, 12, Anchor.START, Palette.INK, false, labels.of("reads-less-side"));
        svg.words(RIGHT_X, 18, 12, Anchor.END, Palette.INK, false, labels.of("reads-more-side"));
        for (int i = 0; i < rows.size(); i++) {
            row(svg, axis, rows.get(i), TOP_Y + i * ROW, labels.of("nobody"));
        }
        for (var tick : axis.ticks(TICKS)) {
            svg.line(tick.place(), bottomY, tick.place(), bottomY + 5, Palette.SLATE, 1, "");
            svg.words(tick.place(), bottomY + 19, 12, Anchor.MIDDLE, Palette.INK, false, tick.words());
        }
        svg.words(RIGHT_X, bottomY + 35, 12, Anchor.END, Palette.INK, false, axis.unit());
        return svg.close();
    }

    private static void row(Svg svg, Axis axis, Row row, double y, String nobody) {
        var colour = row.offset().matters() ? Palette.PLUM : Palette.SLATE;
        svg.words(
                LEFT_X,
                y + 15,
                13,
                Anchor.START,
                Palette.INK,
                true,
                row.person().isEmpty() ? nobody : row.person());
        double lineY = y + 30;
        for (double limitMm : List.of(-PersonReads.MATTERS_FROM_MM, PersonReads.MATTERS_FROM_MM)) {
            svg.line(axis.place(limitMm), lineY - 9, axis.place(limitMm), lineY + 9, Palette.OCHRE, 1.5, "4 3");
        }
        svg.line(
                axis.place(row.offset().lowMm()), lineY, axis.place(row.offset().highMm()), lineY, colour, 3, "");
        svg.circle(axis.place(row.offset().mm()), lineY, 5.5, colour, colour, 1, "");
    }
}
