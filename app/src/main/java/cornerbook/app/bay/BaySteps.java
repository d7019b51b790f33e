package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Group;
import cornerbook.app.bay.BaySheet.Kind;
import cornerbook.app.bay.BaySheet.Step;
import cornerbook.app.bay.BaySheet.Tick;
import cornerbook.app.desk.asked.BrakeGroups;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.words.Labels;
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
    /** What the pressure to be set depends on. */
    private static final Measure[] TEMPERATURES = {Measure.TYRE_TEMPERATURE, Measure.OUTSIDE_TEMPERATURE};

    private final Vehicle vehicle;
    private final VisitSlots slots;
    private final BrakeGroups brakes;
    private final FieldMaker fields;
    private final BayReader bay;
    private final Labels words;

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
        this.bay = fields.bay();
        this.words = bay.labels();
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
                said("cold"),
                List.of(group(corners(slots::arrived).filter(only(Measure.PRESSURE_FOUND)), false)),
                Ticks.RECEIVED));
        steps.add(step(
                "LIFT",
                Kind.FIELDS,
                vehicle.electric() ? said("lift-points", "high-voltage") : said("lift-points"),
                groups(brakes.before()),
                Ticks.ROCKED));
        for (var corner : Corner.values()) {
            steps.add(new Step(
                    "BRAKE." + corner,
                    Kind.FIELDS,
                    bay.say(new BaySaid.BrakeOf(new CornerName(corner))),
                    bay.say(new BaySaid.BrakeAt(corner)),
                    corner,
                    List.of(),
                    groups(brakes.at(corner)),
                    List.of()));
        }
        steps.add(step("PEDAL", Kind.FIELDS, List.of(), groups(brakes.after())));
        steps.add(step(
                "OFF",
                Kind.CAR,
                List.of(),
                List.of(group(corners(slots::arrived).filter(not(Measure.PRESSURE_FOUND)), false))));
        steps.add(step(
                "ON",
                Kind.WHEELS,
                said("bare-faces"),
                List.of(group(
                        corners(slots::leaving)
                                .filter(not(
                                        Measure.PRESSURE_SET,
                                        Measure.SENSOR_PRESSURE,
                                        Measure.SENSOR_TEMPERATURE,
                                        Measure.WHEEL_TORQUE)),
                        true))));
        steps.add(step(
                "PRESSURE",
                Kind.CAR,
                said("cold"),
                List.of(
                        group(slots.batteryAndTyres().stream().filter(only(TEMPERATURES)), false),
                        group(corners(slots::leaving).filter(only(Measure.PRESSURE_SET)), true),
                        group(
                                corners(slots::leaving)
                                        .filter(only(Measure.SENSOR_PRESSURE, Measure.SENSOR_TEMPERATURE)),
                                true))));
        steps.add(step(
                "TORQUE",
                Kind.TORQUE,
                Stream.concat(
                                said("in-sequence").stream(),
                                TighteningOrder.of(vehicle.fastener().count()).cautions().stream()
                                        .map(bay::say))
                        .toList(),
                List.of(group(corners(slots::leaving).filter(only(Measure.WHEEL_TORQUE)), true)),
                Ticks.SECOND_CHECK));
        steps.add(step(
                "BATTERY",
                Kind.FIELDS,
                said("twelve-volt"),
                List.of(group(slots.batteryAndTyres().stream().filter(not(TEMPERATURES)), false))));
        steps.add(step("BURNISH", Kind.FIELDS, List.of(), List.of(), Ticks.BURNISHED));
        steps.add(step("DEPART", Kind.DEPART, List.of(), List.of()));
        return List.copyOf(steps);
    }

    private Step step(String id, Kind kind, List<String> cautions, List<Group> groups, String... ticks) {
        return new Step(
                id,
                kind,
                words.of("step", "step", id),
                words.of("tab", "step", id),
                null,
                cautions,
                groups,
                Arrays.stream(ticks)
                        .map(tick -> new Tick(tick, words.of("tick", "tick", tick)))
                        .toList());
    }

    private List<String> said(String... labels) {
        return Arrays.stream(labels).map(words::of).toList();
    }

    private List<Group> groups(List<BrakeGroups.Step> steps) {
        return steps.stream().map(this::group).toList();
    }

    private Group group(BrakeGroups.Step work) {
        var step = work.step();
        var lubricants = step.lubricants().stream()
                .map(each -> bay.reader().begin(new BaySaid.Lubricate(each.place(), each.kind(), each.reason())));
        return new Group(
                bay.say(step.title()),
                Stream.concat(bay.say(step.cautions()).stream(), lubricants).toList(),
                work.slots().stream().map(slot -> fields.make(slot, false)).toList(),
                step.rare());
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
