package cornerbook.app.sheet;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.car.CarFromAbove;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The four corners, as a picture and as a table of what was measured and set. */
public final class CornersSection {
    private static final int LONGEST_TAG_IN_PICTURE = 12;
    private static final int LONGEST_MODEL = 30;
    private static final String NOT_MEASURED = "–";
    private static final List<String> COLUMNS =
            List.of("corner", "tyre", "lowest-tread", "pressure-set", "wheel-torque", "thinnest-pad", "disc");

    private final Assessment assessment;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;
    private final Reader reader;
    private final Labels labels;

    CornersSection(Assessment assessment, StandingReadings readings, Map<Corner, String> wheelAt, Reader reader) {
        this.assessment = assessment;
        this.readings = readings;
        this.wheelAt = wheelAt;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
    }

    /** One corner in the table. */
    public record Row(String corner, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public String picture() {
        return SheetTemplates.described(CarFromAbove.svg(pictureLabels(), reader));
    }

    public List<String> columns() {
        return COLUMNS.stream().map(labels::of).toList();
    }

    public List<Row> rows() {
        return Arrays.stream(Corner.values())
                .map(corner -> new Row(name(corner, reader), cells(corner)))
                .toList();
    }

    /** In full with its letters, as "Left front (LF)". */
    static String name(Corner corner, Reader reader) {
        return "%s (%s)".formatted(reader.begin(new CornerName(corner)), reader.say(corner));
    }

    public boolean ticked() {
        return !assessment.visit().tightened().isEmpty();
    }

    private List<String> cells(Corner corner) {
        var tag = Optional.ofNullable(wheelAt.get(corner));
        return List.of(
                tag.flatMap(assessment.history()::findWheel)
                        .map(CornersSection::tyreWords)
                        .orElse(NOT_MEASURED),
                lowestDepthMm(corner).map(this::millimetres).orElse(NOT_MEASURED),
                tag.flatMap(wheel -> readings.ofWheel(Measure.PRESSURE_SET, wheel))
                        .map(reading -> pressure(Amount.of(reading.value(), "kPa")))
                        .orElse(NOT_MEASURED),
                torque(corner, tag),
                thinnest(Measure.PAD_THICKNESS, corner),
                thinnest(Measure.DISC_THICKNESS, corner));
    }

    private String thinnest(Measure measure, Corner corner) {
        return lowest(measure, reading -> reading.corner() == corner)
                .map(reading -> millimetres(reading.value()))
                .orElse(NOT_MEASURED);
    }

    private String millimetres(double valueMm) {
        return reader.say(new Amount(valueMm, "mm", 1));
    }

    /** As the gauges of both kinds show it, for who reads metric. */
    private String pressure(Amount pressure) {
        return reader.units() == UnitSystem.METRIC
                ? "%s (%s)"
                        .formatted(
                                reader.say(pressure), reader.in(UnitSystem.US).say(pressure))
                : reader.say(pressure);
    }

    /** A wheel whose fasteners were ticked is tight, and its torque is not known. */
    private String torque(Corner corner, Optional<String> tag) {
        return tag.flatMap(wheel -> readings.ofWheel(Measure.WHEEL_TORQUE, wheel))
                .map(reading -> reader.say(Amount.of(reading.value(), "N·m")))
                .orElseGet(() -> assessment.visit().tightened().contains(corner) ? labels.of("ticked") : NOT_MEASURED);
    }

    private static String tyreWords(Wheel wheel) {
        return "%s, %s %s"
                .formatted(
                        wheel.tag(),
                        SheetText.shorten(wheel.tyre().model(), LONGEST_MODEL),
                        wheel.tyre().size());
    }

    private Map<Corner, CornerLabel> pictureLabels() {
        var pictureLabels = new EnumMap<Corner, CornerLabel>(Corner.class);
        wheelAt.forEach((corner, tag) -> pictureLabels.put(
                corner,
                lowestDepthMm(corner)
                        .map(depthMm -> label(corner, depthMm))
                        .orElseGet(() -> CornerLabel.ofWheel(
                                SheetFonts.forPicture(SheetText.shorten(tag, LONGEST_TAG_IN_PICTURE)),
                                labels.of("not-measured")))));
        return pictureLabels;
    }

    /** The lowest depth, and the gravest of what was found at this corner; that of the set counts where its lowest groove is. */
    private CornerLabel label(Corner corner, double depthMm) {
        boolean lowestOfAll = wheelAt.keySet().stream()
                .flatMap(other -> lowestDepthMm(other).stream())
                .allMatch(otherMm -> otherMm >= depthMm);
        return assessment.ofCar().stream()
                .filter(finding -> isAt(finding.subject(), corner, lowestOfAll))
                .max(Comparator.comparing(Finding::verdict))
                .map(gravest -> CornerLabel.ofDepth(gravest, depthMm, reader))
                .orElseGet(() -> CornerLabel.ofWheel(reader.say(new Amount(depthMm, "mm", 1)), ""));
    }

    /** A wheel that came off says nothing about the corner that it left. */
    private boolean isAt(Subject subject, Corner corner, boolean lowestOfAll) {
        if (subject.part() == Subject.Part.WHEEL_SET) {
            return lowestOfAll
                    && assessment.forecasts().stream()
                            .filter(forecast -> forecast.role() == SetSpan.Role.GOING_ON)
                            .anyMatch(forecast -> forecast.set().id().equals(subject.setId()));
        }
        return subject.corner() == corner
                && (subject.wheelTag() == null || subject.wheelTag().equals(wheelAt.get(corner)));
    }

    private Optional<Double> lowestDepthMm(Corner corner) {
        return Optional.ofNullable(wheelAt.get(corner))
                .flatMap(tag -> lowest(Measure.TREAD_DEPTH, reading -> tag.equals(reading.wheelTag())))
                .map(Reading::value);
    }

    private Optional<Reading> lowest(Measure measure, Predicate<Reading> wanted) {
        return readings.all(measure).stream().filter(wanted).min(Comparator.comparingDouble(Reading::value));
    }
}
