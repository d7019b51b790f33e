package cornerbook.app.sheet;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Subject.Part;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was read at a visit as the car came in, beside how it was left. */
final class FoundAndLeft {
    private static final String NOT_READ = "–";
    private static final int LONGEST_TAG = 20;
    private static final Set<Measure> IN_TABLES = EnumSet.of(
            Measure.TREAD_DEPTH,
            Measure.PRESSURE_FOUND,
            Measure.PRESSURE_SET,
            Measure.WHEEL_TORQUE,
            Measure.PAD_THICKNESS,
            Measure.PAD_MOVEMENT,
            Measure.PAD_MOVEMENT_AFTER_SERVICE,
            Measure.SLIDE_PIN_MOVEMENT,
            Measure.RETAINING_PIN_MOVEMENT,
            Measure.DISC_THICKNESS);

    private final List<Visit> before;
    private final Visit visit;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;
    private final Reader reader;
    private final Labels labels;

    /**
     * Of one visit.
     *
     * @param before the visits before it, earliest first
     * @param wheelAt the wheels that the car leaves on
     */
    FoundAndLeft(
            List<Visit> before, Visit visit, StandingReadings readings, Map<Corner, String> wheelAt, Reader reader) {
        this.before = before;
        this.visit = visit;
        this.readings = readings;
        this.wheelAt = wheelAt;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
    }

    /** The wheels that it leaves on, then those that came off. */
    SheetTable wheels(CarHistory history) {
        var rows = new ArrayList<List<String>>();
        wheelAt.forEach((corner, tag) -> rows.add(wheel(reader.say(corner), tag, history)));
        visit.arrivedOn().forEach((corner, tag) -> {
            if (!wheelAt.containsValue(tag)) {
                rows.add(wheel(labels.of("came-off-corner", "corner", corner), tag, history));
            }
        });
        return SheetTable.of(
                labels,
                List.of("corner", "wheel", "tread-before", "tread-now", "air-found", "air-set", "torque"),
                rows);
    }

    private List<String> wheel(String where, String tag, CarHistory history) {
        return List.of(
                where,
                SheetText.shorten(tag, LONGEST_TAG)
                        + history.findWheel(tag)
                                .map(wheel -> ", " + wheel.tyre().size())
                                .orElse(""),
                before.reversed().stream()
                        .filter(earlier ->
                                !treads(new StandingReadings(earlier), tag).isEmpty())
                        .findFirst()
                        .map(earlier -> tread(new StandingReadings(earlier), tag) + ", " + reader.day(earlier.date()))
                        .orElse(NOT_READ),
                tread(readings, tag),
                told(readings.ofWheel(Measure.PRESSURE_FOUND, tag)),
                told(readings.ofWheel(Measure.PRESSURE_SET, tag)),
                torque(tag));
    }

    /** A wheel whose fasteners were ticked is tight, and its torque is not known. */
    private String torque(String tag) {
        return readings.ofWheel(Measure.WHEEL_TORQUE, tag)
                .filter(reading -> wheelAt.containsValue(tag))
                .map(reading -> ReadValue.of(reading, reader))
                .orElseGet(() -> wheelAt.entrySet().stream()
                                .anyMatch(at -> at.getValue().equals(tag)
                                        && visit.tightened().contains(at.getKey()))
                        ? labels.of("ticked")
                        : NOT_READ);
    }

    private String tread(StandingReadings of, String tag) {
        return treads(of, tag).isEmpty()
                ? NOT_READ
                : TreadAcross.words(
                        Stream.of(Spot.OUTER, Spot.CENTRE, Spot.INNER)
                                .map(spot -> of.ofWheel(Measure.TREAD_DEPTH, tag, spot)
                                        .map(reading -> OptionalDouble.of(reading.value()))
                                        .orElseGet(OptionalDouble::empty))
                                .toList(),
                        reader);
    }

    private static List<Reading> treads(StandingReadings of, String tag) {
        return of.all(Measure.TREAD_DEPTH).stream()
                .filter(reading -> tag.equals(reading.wheelTag()))
                .toList();
    }

    /** Empty when no brake was looked at. */
    SheetTable brakes() {
        var rows = Arrays.stream(Corner.values())
                .map(this::brake)
                .filter(row -> row.stream().skip(1).anyMatch(cell -> !cell.equals(NOT_READ)))
                .toList();
        return SheetTable.of(
                labels,
                List.of(
                        "corner",
                        "pads-found",
                        "pads-left",
                        "movement-found",
                        "movement-left",
                        "pins",
                        "disc-found",
                        "disc-left"),
                rows);
    }

    private List<String> brake(Corner corner) {
        var pads = sides(Measure.PAD_THICKNESS, corner);
        var movement = sides(Measure.PAD_MOVEMENT, corner);
        var disc = told(readings.ofCorner(Measure.DISC_THICKNESS, corner, null));
        return List.of(
                reader.say(corner),
                pads,
                left(pads, Measure.PADS_REPLACED, Part.PAD, corner),
                movement,
                told(readings.ofCorner(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null)),
                told(readings.ofCorner(Measure.SLIDE_PIN_MOVEMENT, corner, null)
                        .or(() -> readings.ofCorner(Measure.RETAINING_PIN_MOVEMENT, corner, null))),
                disc,
                left(disc, Measure.DISC_REPLACED, Part.DISC, corner));
    }

    /** Nobody reads a new part: it is said to be new, and no thickness is claimed. */
    private String left(String found, Measure replaced, Part part, Corner corner) {
        return readings.ofCorner(replaced, corner, null)
                        .filter(reading -> Math.round(reading.value()) == 1)
                        .isPresent()
                ? labels.of("new", "part", part)
                : found.equals(NOT_READ) ? NOT_READ : labels.of("as-found", "part", part);
    }

    /** Outer first, with the unit once; one word where both sides have the same. */
    private String sides(Measure measure, Corner corner) {
        var outer = readings.ofCorner(measure, corner, Spot.OUTER);
        var inner = readings.ofCorner(measure, corner, Spot.INNER);
        if (outer.isEmpty() && inner.isEmpty()) {
            return NOT_READ;
        }
        if (measure.scale() != null && told(outer).equals(told(inner))) {
            return told(outer);
        }
        return measure.scale() == null && outer.isPresent()
                ? reader.number(ReadValue.amount(outer.get())) + " / " + told(inner)
                : told(outer) + " / " + told(inner);
    }

    private String told(Optional<Reading> reading) {
        return reading.map(each -> ReadValue.of(each, reader)).orElse(NOT_READ);
    }

    /** What was read of the whole car: "12 V battery at rest: 12.73 V". */
    List<String> ofCar() {
        return others(Measure.Carrier.VEHICLE, true);
    }

    /**
     * What else was read of corners and wheels, alike values together: "Runout: 0.02 mm (LF, RF), 0.03 mm (LR)".
     *
     * @param soundToo whether what was looked at and is sound is told as well
     */
    List<String> ofCorners(boolean soundToo) {
        return Stream.of(Measure.Carrier.CORNER, Measure.Carrier.WHEEL)
                .flatMap(carrier -> others(carrier, soundToo).stream())
                .toList();
    }

    /** Words are listed mildest first. */
    private static boolean isMild(Reading reading) {
        return reading.measure().scale() != null && Math.round(reading.value()) == 0;
    }

    /** Work is told by what was done. */
    private List<String> others(Measure.Carrier carrier, boolean soundToo) {
        return Arrays.stream(Measure.values())
                .filter(measure -> measure.carrier() == carrier && !IN_TABLES.contains(measure))
                .filter(measure -> carrier == Measure.Carrier.VEHICLE || measure.scale() != Scale.DONE)
                .map(measure -> readings.all(measure).stream()
                        .filter(reading -> soundToo || !isMild(reading))
                        .toList())
                .filter(all -> !all.isEmpty())
                .map(all -> labels.of(
                        "read-of-car",
                        "what",
                        reader.begin(new MeasureName(all.getFirst().measure())),
                        "value",
                        values(all)))
                .toList();
    }

    private String values(List<Reading> all) {
        return all.stream()
                .collect(Collectors.groupingBy(
                        reading -> ReadValue.of(reading, reader), LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(alike -> {
                    var corners = alike.getValue().stream()
                            .map(Reading::corner)
                            .filter(Objects::nonNull)
                            .distinct()
                            .sorted()
                            .toList();
                    return corners.isEmpty()
                            ? alike.getKey()
                            : labels.of("read-at", "value", alike.getKey(), "corners", corners);
                })
                .collect(Collectors.joining(", "));
    }
}
