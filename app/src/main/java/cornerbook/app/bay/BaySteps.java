package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Group;
import cornerbook.app.bay.BaySheet.Kind;
import cornerbook.app.bay.BaySheet.Mind;
import cornerbook.app.bay.BaySheet.Step;
import cornerbook.app.bay.BaySheet.Tick;
import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.shop.StepOrder;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.asked.AskedStep;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.core.car.Caution;
import cornerbook.core.car.DataGap;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.words.Labels;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The steps of a visit in the order that the shop has, by the car's configuration. Each place for a reading stands in exactly one
 * of them.
 */
final class BaySteps {
    private final Vehicle vehicle;
    private final List<DataGap> gaps;
    private final List<String> hoists;
    private final VisitSlots slots;
    private final FieldMaker fields;
    private final StepOrder order;
    private final BayReader bay;
    private final Labels words;

    /**
     * The steps of a visit.
     *
     * @param gaps what nobody has looked up of the car: each is asked for at the step where it is met
     * @param hoists what there is to say of this car on each hoist of the shop
     * @param slots of the visit as if it left on the wheels that are planned
     * @param order as the shop has it for this car
     */
    BaySteps(
            Vehicle vehicle,
            List<DataGap> gaps,
            List<String> hoists,
            VisitSlots slots,
            FieldMaker fields,
            StepOrder order) {
        this.vehicle = vehicle;
        this.gaps = List.copyOf(gaps);
        this.hoists = List.copyOf(hoists);
        this.slots = slots;
        this.fields = fields;
        this.order = order;
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
        return order.steps().stream().flatMap(this::of).toList();
    }

    private Stream<Step> of(SheetStep which) {
        return switch (which) {
            case RECEIVE ->
                Stream.of(step(
                        which,
                        Kind.CAR,
                        cautions(WorkStep.RECEIVE),
                        List.of(ofWheels(WorkStep.RECEIVE, false)),
                        WorkTick.RECEIVED));
            case LIFT ->
                Stream.of(step(
                        which,
                        Kind.FIELDS,
                        Stream.concat(hoists.stream().map(said -> new Mind(said, "")), cautions(WorkStep.LIFT).stream())
                                .toList(),
                        ofVehicle(which.work()),
                        WorkTick.ROCKED));
            case OFF ->
                Stream.of(step(
                        which, Kind.CAR, cautions(WorkStep.WHEELS_OFF), List.of(ofWheels(WorkStep.WHEELS_OFF, false))));
            case BRAKES -> Arrays.stream(Corner.values()).map(this::brake);
            case PEDAL -> Stream.of(step(which, Kind.FIELDS, List.of(), ofVehicle(which.work())));
            case ON ->
                Stream.of(step(
                        which,
                        Kind.WHEELS,
                        cautions(WorkStep.WHEELS_ON),
                        List.of(
                                ofWheels(WorkStep.WHEELS_ON, true),
                                folded(WorkStep.LOOK_OVER_STORED),
                                folded(WorkStep.SIDEWALLS))));
            case PRESSURE ->
                Stream.of(step(
                        which,
                        Kind.CAR,
                        cautions(WorkStep.PRESSURE),
                        List.of(
                                ofVehicle(WorkStep.TEMPERATURES),
                                ofWheels(WorkStep.PRESSURE, true),
                                ofWheels(WorkStep.SENSORS, true))));
            case TORQUE -> Stream.of(torque());
            case BATTERY ->
                Stream.of(step(
                        which,
                        Kind.FIELDS,
                        cautions(WorkStep.BATTERY),
                        Stream.concat(
                                        Stream.of(ofVehicle(WorkStep.BATTERY)),
                                        ofVehicle(EnumSet.of(WorkStep.BATTERY_CHARGED)).stream())
                                .toList()));
            case BURNISH ->
                Stream.of(step(
                        which,
                        Kind.CAR,
                        cautions(WorkStep.AFTER_THE_DRIVE),
                        List.of(afterTheDrive()),
                        WorkTick.BURNISHED));
            case DEPART -> Stream.of(step(which, Kind.DEPART, List.of(), List.of()));
        };
    }

    private Step brake(Corner corner) {
        return new Step(
                "BRAKE." + corner,
                Kind.FIELDS,
                bay.say(new BaySaid.BrakeOf(new CornerName(corner))),
                bay.say(new BaySaid.BrakeAt(corner)),
                corner,
                asked(gap -> gap.part() == DataGap.Part.BRAKE && (gap.axle() == null || gap.axle() == corner.axle())),
                atBrake(corner),
                List.of());
    }

    private Step torque() {
        return step(
                SheetStep.TORQUE,
                Kind.TORQUE,
                Stream.concat(
                                cautions(WorkStep.TORQUE).stream(),
                                Stream.ofNullable(vehicle.fastener())
                                        .flatMap(fastener -> TighteningOrder.of(fastener.count()).cautions().stream())
                                        .map(said -> new Mind(bay.say(said), "")))
                        .toList(),
                List.of(ofWheels(WorkStep.TORQUE, true)),
                WorkTick.SECOND_CHECK);
    }

    private Step step(SheetStep which, Kind kind, List<Mind> cautions, List<Group> groups, String... ticks) {
        return new Step(
                which.name(),
                kind,
                words.of("step", "step", which),
                words.of("tab", "step", which),
                null,
                cautions,
                groups,
                Arrays.stream(ticks)
                        .map(tick -> new Tick(tick, words.of("tick", "tick", tick)))
                        .toList());
    }

    private List<Mind> cautions(WorkStep step) {
        return Stream.concat(
                        minded(Caution.at(step, vehicle)).stream(),
                        asked(gap -> gap.part().step() == step).stream())
                .toList();
    }

    private List<Mind> asked(Predicate<DataGap> met) {
        return gaps.stream()
                .filter(met)
                .map(gap -> new Mind(bay.say(gap), "", CarLinks.give(vehicle.id(), gap)))
                .toList();
    }

    private List<Mind> minded(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> new Mind(bay.say(caution), bay.say(caution.source())))
                .toList();
    }

    private List<Group> ofVehicle(Set<WorkStep> shown) {
        return slots.ofVehicle().stream()
                .filter(asked -> shown.contains(asked.step()))
                .map(this::group)
                .toList();
    }

    private List<Group> atBrake(Corner corner) {
        var shown = SheetStep.BRAKES.work();
        return slots.atCorner(corner).stream()
                .filter(asked -> shown.contains(asked.step()))
                .map(this::group)
                .toList();
    }

    /** Around the car, for whoever goes round it once more. */
    private Group afterTheDrive() {
        return new Group(
                "",
                List.of(),
                Arrays.stream(Corner.values())
                        .flatMap(corner -> slots.atCorner(corner).stream())
                        .filter(asked -> asked.step() == WorkStep.AFTER_THE_DRIVE)
                        .flatMap(asked -> asked.slots().stream())
                        .map(slot -> fields.make(slot, false))
                        .toList(),
                WorkStep.AFTER_THE_DRIVE.rare(),
                List.of());
    }

    private Group group(AskedStep asked) {
        var lubricants = asked.of().lubricants().stream()
                .map(each -> new Mind(
                        bay.reader().begin(new BaySaid.Lubricate(each.place(), each.kind(), each.reason())), ""));
        return new Group(
                bay.say(asked.step()),
                Stream.concat(minded(asked.of().cautions()).stream(), lubricants)
                        .toList(),
                asked.slots().stream().map(slot -> fields.make(slot, false)).toList(),
                asked.step().rare(),
                soundAtOnce(asked.slots()));
    }

    /** The measures whose first word is that all is sound. */
    private static List<Measure> soundAtOnce(List<Slot> shown) {
        return shown.stream()
                .map(Slot::measure)
                .distinct()
                .filter(measure -> measure.scale() != null && measure.scale().beginsSound())
                .toList();
    }

    /** The only group of its kind in a step that says what it is about. */
    private Group ofVehicle(WorkStep step) {
        return untitled(
                slots.ofVehicle().stream()
                        .filter(asked -> asked.step() == step)
                        .flatMap(asked -> asked.slots().stream()),
                false);
    }

    private Group ofWheels(WorkStep step, boolean goesOn) {
        return untitled(slots.ofWheels(step), goesOn);
    }

    /** What is seen of the wheels that go on: most of it stays as it is from visit to visit, or is sound. */
    private Group folded(WorkStep step) {
        var shown = slots.ofWheels(step).toList();
        return new Group(
                bay.say(step),
                List.of(),
                shown.stream().map(slot -> fields.make(slot, true)).toList(),
                step.rare(),
                soundAtOnce(shown));
    }

    private Group untitled(Stream<Slot> shown, boolean goesOn) {
        return new Group(
                "", List.of(), shown.map(slot -> fields.make(slot, goesOn)).toList(), false, List.of());
    }
}
