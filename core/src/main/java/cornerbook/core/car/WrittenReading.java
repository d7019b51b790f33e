package cornerbook.core.car;

import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Refused;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a person writes for a reading, as its value. All edges read by it. A measure with a scale is written as a word. The
 * variation of a disc and a runout may be written as their points around the disc, four or more, parted by spaces or
 * semicolons, with one unit at the end: "27.31 27.30 27.30 27.32 mm"; the value is then the highest less the lowest. The points
 * of a runout begin at stud 1, or at the stud that stands before them: "stud 3: 0 12 30 11 µm", in French
 * "goujon 3 : 0 12 30 11 µm".
 */
public final class WrittenReading {
    /** Points that tell a variation from a tilt; makers' manuals ask for 4 to 12. */
    public static final int FEWEST_POINTS = 4;

    private static final Pattern FIRST_STUD = Pattern.compile("(?i)(?:stud|goujon)\\s*([1-9]\\d?)\\s*:\\s*");
    private static final Pattern BETWEEN_POINTS = Pattern.compile("[;\\s]+");
    private static final Pattern UNIT = Pattern.compile("[^0-9.,+−-].*");
    private static final int MOST_POINTS = 36;
    /** A difference of decimal readings is a decimal again, to a nanometre. */
    private static final double NANOMETRES_PER_MM = 1e6;

    private WrittenReading() {}

    /**
     * The value in the measure's unit, or the place of the word on its scale.
     *
     * @throws Refused with one sentence when it cannot be read
     */
    public static double valueOf(Measure measure, String written) {
        var scale = measure.scale();
        return scale != null
                ? scale.parse(written)
                : findPoints(measure, written)
                        .map(points -> Math.round(spread(points) * NANOMETRES_PER_MM) / NANOMETRES_PER_MM)
                        .orElseGet(() -> Quantities.parse(written, measure.unit()));
    }

    /**
     * The points that a value was written as, in the measure's unit and in their order; empty when it was written as one
     * value.
     *
     * @throws Refused with one sentence when they are too few or too many, or one cannot be read
     */
    public static Optional<List<Double>> findPoints(Measure measure, String written) {
        if (!measure.mayBePoints()) {
            return Optional.empty();
        }
        boolean namesStud = measure != Measure.DISC_THICKNESS_VARIATION && written.indexOf(':') >= 0;
        var dial = namesStud ? FIRST_STUD.matcher(written.strip()).replaceFirst("") : written.strip();
        var parts = parts(dial);
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        boolean hasUnit = parts.getLast().equals(measure.unit())
                || UNIT.matcher(parts.getLast()).matches();
        var unit = hasUnit ? parts.getLast() : measure.unit();
        var points = hasUnit ? parts.subList(0, parts.size() - 1) : parts;
        if (points.size() <= 1) {
            return Optional.empty();
        }
        if (points.size() < FEWEST_POINTS || points.size() > MOST_POINTS) {
            throw new Refused(new CarSaid.PointsAroundDisc(points.size(), FEWEST_POINTS, MOST_POINTS));
        }
        return Optional.of(points.stream()
                .map(point -> Quantities.parse(point + " " + unit, measure.unit()))
                .toList());
    }

    /** The readings of each disc of each visit are parted so, and nearly all by one blank. */
    private static List<String> parts(String dial) {
        boolean byOneBlank = dial.indexOf("  ") < 0 && dial.chars().noneMatch(WrittenReading::isOtherSeparator);
        return byOneBlank
                ? Arrays.asList(dial.split(" "))
                : BETWEEN_POINTS.splitAsStream(dial).toList();
    }

    private static boolean isOtherSeparator(int character) {
        return character == ';' || (character < ' ');
    }

    /** The stud at which the first of the points was read, 1 where none is named; the car has fewer than 11. */
    public static int firstStud(String written) {
        var first = FIRST_STUD.matcher(written.strip());
        return first.lookingAt() ? Integer.parseInt(first.group(1)) : 1;
    }

    private static double spread(List<Double> points) {
        return Collections.max(points) - Collections.min(points);
    }
}
