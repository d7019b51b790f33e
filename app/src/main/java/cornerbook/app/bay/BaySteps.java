package cornerbook.app.bay;

import cornerbook.app.request.Told;

import cornerbook.app.bay.BaySheet.Group;
import cornerbook.app.bay.BaySheet.Kind;
import cornerbook.app.bay.BaySheet.Step;
import cornerbook.app.bay.BaySheet.Tick;
import cornerbook.app.desk.asked.BrakeGroups;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.Words;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.TighteningOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The steps of a visit in the order of the work, by the car's configuration. Each place for a reading stands in exactly one
 * of them.
 */
final class BaySteps {
    private static final String LIFT =
            "Lift only at the maker's points, never on the battery case; rock the car before you go under.";
    private static final String HIGH_VOLTAGE =
            "Damaged orange cable, dented pack or isolation warning: do not lift, call a high-voltage qualified person.";
    private static final String BARE = "Clamping faces bare. Start every nut by hand.";
    private static final String TORQUE =
            "On the ground, in sequence; a wrench that clicks without moving has not measured.";
    private static final String TWELVE_VOLT = "Let the car sleep first: awake, its converter holds the voltage up.";
    private static final String COLD = "The placard is for cold tyres.";
    /** What the pressure to be set depends on. */
    private static final Measure[] TEMPERATURES = {Measure.TYRE_TEMPERATURE, Measure.OUTSIDE_TEMPERATURE};

    private final Vehicle vehicle;
    private final VisitSlots slots;
    private final BrakeGroups brakes;
    private final FieldMaker fields;

    /**
     * The steps of a visit.
     *
     * @param slots of the visit as if it left on the wheels that are planned
     */
    BaySteps(Vehicle vehicle, VisitSlots slots, FieldMaker fields) {
        this.vehicle = vehicle;
        this.slots = slots;
        this.brakes = new BrakeGroups(vehicle);
        this.fields = fields;
    }

    /** The steps at which a tool of that kind is in hand. */
    static List<String> of(ShopTool.Kind kind) {
        return switch (kind) {
            case PRESSURE_GAUGE -> List.of("RECEIVE", "PRESSURE");
            case TORQUE_WRENCH -> List.of("TORQUE");
            case HOIST -> List.of("LIFT");
        };
    }

    List<Step> list() {
        var steps = new ArrayList<Step>();
        steps.add(step(
                "RECEIVE",
                Kind.CAR,
                "Receive",
                List.of(COLD),
                group(corners(slots::arrived).filter(only(Measure.PRESSURE_FOUND)), false),
                new Tick(Ticks.RECEIVED, "Damage and warning lights looked at, locking key found")));
        steps.add(new Step(
                "LIFT",
                Kind.FIELDS,
                "Lift",
                null,
                vehicle.electric() ? List.of(LIFT, HIGH_VOLTAGE) : List.of(LIFT),
                brakes.before().stream().map(this::group).toList(),
                List.of(new Tick(Ticks.ROCKED, "Rocked on the arms, and it stands"))));
        for (var corner : Corner.values()) {
            steps.add(new Step(
                    "BRAKE." + corner,
                    Kind.FIELDS,
                    "Brake " + Words.corner(corner),
                    corner,
                    List.of(),
                    brakes.at(corner).stream().map(this::group).toList(),
                    List.of()));
        }
        steps.add(new Step(
                "PEDAL",
                Kind.FIELDS,
                "Pedal, parking brake, fluid",
                null,
                List.of(),
                brakes.after().stream().map(this::group).toList(),
                List.of()));
        steps.add(step(
                "OFF",
                Kind.CAR,
                "Wheels off",
                List.of(),
                group(corners(slots::arrived).filter(not(Measure.PRESSURE_FOUND)), false)));
        steps.add(step(
                "ON",
                Kind.WHEELS,
                "Wheels on",
                List.of(BARE),
                group(
                        corners(slots::leaving)
                                .filter(not(
                                        Measure.PRESSURE_SET,
                                        Measure.SENSOR_PRESSURE,
                                        Measure.SENSOR_TEMPERATURE,
                                        Measure.WHEEL_TORQUE)),
                        true)));
        steps.add(new Step(
                "PRESSURE",
                Kind.CAR,
                "Pressures",
                null,
                List.of(COLD),
                List.of(
                        group(slots.batteryAndTyres().stream().filter(only(TEMPERATURES)), false),
                        group(corners(slots::leaving).filter(only(Measure.PRESSURE_SET)), true),
                        group(
                                corners(slots::leaving)
                                        .filter(only(Measure.SENSOR_PRESSURE, Measure.SENSOR_TEMPERATURE)),
                                true)),
                List.of()));
        steps.add(step(
                "TORQUE",
                Kind.TORQUE,
                "Torque on the ground",
                Stream.concat(
                                Stream.of(TORQUE),
                                TighteningOrder.of(vehicle.fastener().count()).cautions().stream().map(Told::say))
                        .map(fields.units()::sentence)
                        .toList(),
                group(corners(slots::leaving).filter(only(Measure.WHEEL_TORQUE)), true),
                new Tick(Ticks.SECOND_CHECK, "A second person has checked all four")));
        steps.add(step(
                "BATTERY",
                Kind.FIELDS,
                "12 V battery",
                List.of(TWELVE_VOLT),
                group(slots.batteryAndTyres().stream().filter(not(TEMPERATURES)), false)));
        steps.add(new Step(
                "BURNISH",
                Kind.FIELDS,
                "Burnish drive",
                null,
                List.of(),
                List.of(),
                List.of(new Tick(Ticks.BURNISHED, "Burnished, and the brakes pull straight"))));
        steps.add(new Step("DEPART", Kind.DEPART, "Hand over", null, List.of(), List.of(), List.of()));
        return List.copyOf(steps);
    }

    private static Step step(String id, Kind kind, String title, List<String> cautions, Group group, Tick... ticks) {
        return new Step(id, kind, title, null, cautions, List.of(group), List.of(ticks));
    }

    private List<String> said(List<String> sentences) {
        return sentences.stream().map(fields.units()::sentence).toList();
    }

    private Group group(BrakeGroups.Step step) {
        var hints = new ArrayList<>(step.hints());
        if (!step.note().isEmpty()) {
            hints.addFirst(step.note());
        }
        return new Group(
                Told.say(step.step().title()),
                said(hints),
                step.slots().stream().map(slot -> fields.make(slot, false)).toList(),
                step.step().rare());
    }

    private Group group(Stream<Slot> shown, boolean goesOn) {
        return new Group(
                "", List.of(), shown.map(slot -> fields.make(slot, goesOn)).toList(), false);
    }

    private static Stream<Slot> corners(Function<Corner, List<Slot>> at) {
        return Arrays.stream(Corner.values()).map(at).flatMap(List::stream);
    }

    private static Predicate<Slot> only(Measure... measures) {
        return slot -> List.of(measures).contains(slot.measure());
    }

    private static Predicate<Slot> not(Measure... measures) {
        return only(measures).negate();
    }
}
