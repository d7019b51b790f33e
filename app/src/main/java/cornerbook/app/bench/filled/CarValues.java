package cornerbook.app.bench.filled;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.brake.burnish.judge.BurnishPlanning;
import cornerbook.core.brake.seizing.judge.PadClock;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.cost.EnergySource;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.lift.CarMass;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.why.Step;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a car's own data answer of a calculator's questions, as a person of these units would write it. */
public final class CarValues {
    private static final double METRIC_REFERENCE_KPA = 250;

    private final CarHistory history;
    private final UnitSystem system;
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private CarValues(CarHistory history, UnitSystem system) {
        this.history = history;
        this.system = system;
    }

    /**
     * The values by name of the question; what the book does not know is left out.
     *
     * @param question name of the calculator
     * @param axle whose tyres are meant
     */
    public static Map<String, List<String>> of(String question, CarHistory history, Axle axle, UnitSystem system) {
        var car = new CarValues(history, system);
        switch (question) {
            case "torque" -> car.torque();
            case "pressure" -> car.pressure(axle);
            case "tyre" -> car.tyre(axle);
            case "battery" -> car.battery();
            case "cost" -> car.cost();
            case "renew" -> car.values.putAll(PairsOfCar.of(history, system));
            case "lift" -> car.lift();
            case "burnish" -> car.burnish(axle);
            case "drag" -> car.drag();
            case "guides" -> car.guides();
            case "changeover" -> car.putLaw();
            default -> throw new IllegalArgumentException("no calculator is called " + question);
        }
        return car.values;
    }

    private void torque() {
        var fastener = history.vehicle().fastener();
        if (fastener == null) {
            return;
        }
        put("torque", fastener.torqueNm(), "N·m");
        put("count", String.valueOf(fastener.count()));
        put("thread", fastener.thread());
    }

    private void pressure(Axle axle) {
        var data = history.vehicle().axle(axle);
        putKnown("placard", data.placardPressureKpa(), "kPa");
        putKnown("at-pressure", data.placardPressureKpa(), "kPa");
        putKnown("axle-load", data.axleLoadKg(), "kg");
        if (data.loadIndex() != null) {
            put("load-index", String.valueOf(data.loadIndex()));
        }
        put("reference", METRIC_REFERENCE_KPA, "kPa");
        putLast("tyre-at", Measure.TYRE_TEMPERATURE);
        putLast("stands-at", Measure.OUTSIDE_TEMPERATURE);
        putKnown("sensor-placard", data.placardPressureKpa(), "kPa");
        put("learning", learning(history.vehicle().details().pressureWarning()));
        history.visits().stream()
                .map(Visit::leftOn)
                .filter(leftOn -> !leftOn.isEmpty())
                .reduce((earlier, later) -> later)
                .ifPresent(leftOn -> sensor(axle, leftOn));
    }

    /** The wheel of the axle whose sensor's battery is oldest. */
    private void sensor(Axle axle, Map<Corner, String> leftOn) {
        history.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .filter(wheel -> leftOn.entrySet().stream()
                        .anyMatch(at ->
                                at.getKey().axle() == axle && at.getValue().equals(wheel.tag())))
                .flatMap(wheel -> Stream.ofNullable(wheel.details().sensorBatteryOn()))
                .min(Comparator.naturalOrder())
                .ifPresent(since -> put("sensor-since", since.toString()));
    }

    private void tyre(Axle axle) {
        var data = history.vehicle().axle(axle);
        var size = data.loadIndex() == null || data.speedSymbol() == null
                ? data.tyreSize()
                : "%s %s%s".formatted(data.tyreSize(), data.loadIndex(), data.speedSymbol());
        put("placard", size);
        put("size", size);
        var details = history.vehicle().details();
        var mounting = details.mounting();
        if (mounting != null) {
            put("hub", mounting.written());
            put("rim", Step.digits(mounting.rimCode()));
        }
        var limit = details.differences().allWheel();
        if (limit != null) {
            put(
                    limit.kind() == AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE ? "circumference-limit" : "tread-limit",
                    limit.valueMm(),
                    "mm");
        }
        values.putAll(TyresOfCar.of(history, axle, limit != null, system));
    }

    private void battery() {
        var battery = history.vehicle().battery();
        if (battery == null) {
            return;
        }
        put("chemistry", word(battery.chemistry()));
        put("capacity", battery.ratedCapacityAh(), "A·h");
        var rated = battery.ratedCrankingCurrentA();
        var standard = battery.ratingStandard();
        if (rated != null && standard != null) {
            put("rated", rated, "A");
            put("standard", word(standard));
        }
        putLast("volts", Measure.BATTERY_VOLTAGE);
        putLast("measured", Measure.BATTERY_CRANKING_CURRENT);
        putLast("temperature", Measure.BATTERY_TEMPERATURE);
        // Read at the clamp in milliamperes, computed with in amperes.
        findLast(Measure.STANDBY_CURRENT).ifPresent(reading -> put("standby", reading.value() / 1000, "A"));
        putLast("discharged", Measure.BATTERY_CAPACITY);
    }

    /** The mass as it stands on the hoist; the permitted axle loads only when nothing lighter is known. */
    private void lift() {
        var vehicle = history.vehicle();
        var body = vehicle.details().body();
        var mass = body.findMassOnAxles();
        putKnown("front", mass.map(CarMass::frontKg).orElse(vehicle.front().axleLoadKg()), "kg");
        putKnown("rear", mass.map(CarMass::rearKg).orElse(vehicle.rear().axleLoadKg()), "kg");
        putKnown("wheelbase", body.wheelbaseMm(), "mm");
        putKnown("track", body.trackMm(), "mm");
        putKnown("point-height", body.heights().liftPointMm(), "mm");
        putKnown("clearance", body.heights().groundClearanceMm(), "mm");
        putKnown("car-height", body.heights().roofMm(), "mm");
        var points = body.liftPoints();
        if (points != null) {
            put(
                    "points",
                    Arrays.stream(Corner.values())
                            .map(corner -> "%s %s %s"
                                    .formatted(
                                            corner,
                                            system.field(points.get(corner).behindFrontAxleMm(), "mm"),
                                            system.field(points.get(corner).leftOfCentreMm(), "mm")))
                            .collect(Collectors.joining("; ")));
        }
    }

    /** What the car's four tyres carry as it is driven, and what it is driven by where it is a battery car. */
    private void cost() {
        putKnown("carried", BurnishPlanning.of(history.vehicle(), 0).drivenMassKg(), "kg");
        if (history.vehicle().highVoltage()) {
            put("energy", word(EnergySource.ELECTRICITY));
        }
    }

    private void burnish(Axle axle) {
        var planning = BurnishPlanning.of(history.vehicle(), 0);
        putKnown("mass", planning.drivenMassKg(), "kg");
        putKnown("disc-mass", planning.discMassKg(axle), "kg");
        putKnown("disc-diameter", planning.discDiameterMm(axle), "mm");
        var share = planning.frontBrakingShare();
        if (share != null) {
            put("front-share", String.valueOf(Math.round(100 * share)));
        }
        put("axle", word(axle));
        put("tyre", history.vehicle().axle(axle).tyreSize());
    }

    /** Data of the discs; how warm they were is typed, as each drive has its own. */
    private void drag() {
        var planning = BurnishPlanning.of(history.vehicle(), 0);
        for (var axle : Axle.values()) {
            putKnown(word(axle) + "-disc-mass", planning.discMassKg(axle), "kg");
            putKnown(word(axle) + "-disc-diameter", planning.discDiameterMm(axle), "mm");
            var brake = history.vehicle().axle(axle).brake();
            if (brake.hasDisc() && brake.discNewMm() < DiscBody.VENTED_FROM_MM) {
                put(word(axle) + "-solid", "yes");
            }
        }
        put("tyre", history.vehicle().front().tyreSize());
    }

    /** What the car's pads are exposed to, and when they were last cleaned. */
    private void guides() {
        var visits = history.visits();
        double kmPerYear = 365.25
                * new RunHistory(history, visits, Knowledge.NONE)
                        .next(SeasonKind.ALL_SEASON)
                        .meanKm();
        var vehicle = history.vehicle();
        var exposure = vehicle.details().use().exposure(kmPerYear, vehicle.highVoltage());
        put("distance", 100 * Math.rint(kmPerYear / 100), "km");
        put("salt-share", String.valueOf(Math.round(100 * exposure.saltShare())));
        put("friction-share", String.valueOf(Math.round(100 * exposure.frictionBrakeShare())));
        if (exposure.garaged()) {
            put("garaged", "yes");
        }
        var clocks = PadClock.of(vehicle, visits);
        put("pads", String.valueOf(clocks.size()));
        clocks.stream()
                .flatMap(clock -> Stream.ofNullable(clock.running()))
                .min(Comparator.naturalOrder())
                .ifPresent(day -> put("cleaned", day.toString()));
    }

    /** The place whose law holds for the car. */
    private void putLaw() {
        put("place", history.vehicle().jurisdiction());
    }

    private void putKnown(String name, @Nullable Double value, String bookUnit) {
        if (value != null) {
            put(name, value, bookUnit);
        }
    }

    private void put(String name, double value, String bookUnit) {
        put(name, system.field(value, bookUnit));
    }

    private void put(String name, String text) {
        values.put(name, List.of(text));
    }

    private void putLast(String name, Measure measure) {
        findLast(measure).ifPresent(reading -> put(name, reading.value(), measure.unit()));
    }

    /** The last reading that stands, of whatever visit. */
    private Optional<Reading> findLast(Measure measure) {
        return history.visits().reversed().stream()
                .flatMap(visit -> new StandingReadings(visit).all(measure).reversed().stream())
                .findFirst();
    }

    /** The word of the choice for a car; empty where it is not known. */
    private static String learning(PressureWarning warning) {
        var learning = warning.learning();
        if (warning.kind() == PressureWarning.Kind.INDIRECT) {
            return "indirect";
        }
        return learning == null
                ? ""
                : switch (learning) {
                    case BY_ITSELF -> "itself";
                    case BY_TOOL -> "tool";
                    case BY_DRIVING -> "driving";
                };
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
