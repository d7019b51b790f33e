package cornerbook.core.order.judge;

import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.order.Article;
import cornerbook.core.order.Need;
import cornerbook.core.order.OrderPart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All but tyres, from what the findings say. A finding with a chance that the part holds until the coming visit needs it with
 * the rest; one that asks for another part now, or by a day before that visit, needs it for certain; any other needs none. Parts
 * of an axle are ordered for the axle; of two findings on it the graver counts, as both sides wear together (common practice, no
 * source).
 */
final class PartNeeds {
    private static final Map<Subject.Part, OrderPart> OF_AN_AXLE = Map.of(
            Subject.Part.PAD, OrderPart.PADS,
            Subject.Part.DISC, OrderPart.DISCS,
            Subject.Part.SHOE, OrderPart.SHOES,
            Subject.Part.DRUM, OrderPart.DRUMS);

    private static final Set<Todo.Action> OTHER_PART =
            EnumSet.of(Todo.Action.REPLACE, Todo.Action.REPLACE_PAIR, Todo.Action.ORDER);

    private static final int WORDS_OF_KIND = 2;

    private final Vehicle vehicle;
    private final LocalDate due;
    private final List<Finding> findings;
    private final List<CarNeed> needs = new ArrayList<>();

    private PartNeeds(Case given, List<Finding> findings) {
        vehicle = given.vehicle();
        due = given.nextVisit();
        this.findings = findings;
    }

    static List<CarNeed> of(Case given, List<Finding> findings) {
        var parts = new PartNeeds(given, findings);
        for (var axle : Axle.values()) {
            parts.brakes(axle);
        }
        parts.battery();
        parts.sensors();
        parts.fasteners();
        parts.fluid();
        return parts.needs;
    }

    private void add(OrderPart part, String kind, String text, Need need) {
        needs.add(new CarNeed(new Article(part, kind, text), need, due));
    }

    private void addOfNoKind(OrderPart part, String text, Need need) {
        needs.add(new CarNeed(new Article(part, null, text), need, due));
    }

    /** The chance that a part is needed by the coming visit. */
    private double chance(Finding finding) {
        var todo = finding.todo();
        boolean asks = todo != null && OTHER_PART.contains(todo.action());
        if (asks && finding.verdict().compareTo(Verdict.SPENT) >= 0) {
            return 1;
        }
        var holds = finding.probability();
        if (holds != null) {
            return 1 - holds;
        }
        var horizon = finding.horizon();
        return asks && horizon != null && !horizon.isAfter(due) ? 1 : 0;
    }

    private void brakes(Axle axle) {
        var kind = kindOfCar(vehicle.name());
        double discs = chance(Subject.Part.DISC, axle);
        OF_AN_AXLE.forEach((subject, part) -> {
            double chance = chance(subject, axle);
            // New discs take new pads. Common practice, no source.
            add(part, axle.name(), kind, Need.of(1, part == OrderPart.PADS ? Math.max(chance, discs) : chance));
        });
    }

    private double chance(Subject.Part part, Axle axle) {
        return findings.stream()
                .filter(finding -> finding.subject().part() == part)
                .filter(finding -> {
                    var corner = finding.subject().corner();
                    return corner != null && corner.axle() == axle;
                })
                .mapToDouble(this::chance)
                .max()
                .orElse(0);
    }

    /** "Fjordling Volta, blue" is a Fjordling Volta: parts are listed by make and model, its first two words. */
    private static String kindOfCar(String name) {
        return Arrays.stream(name.split("[\\s,;]+", -1))
                .filter(word -> !word.isEmpty())
                .limit(WORDS_OF_KIND)
                .collect(Collectors.joining(" "));
    }

    private void battery() {
        var battery = vehicle.battery();
        if (battery != null) {
            findings.stream()
                    .filter(finding -> finding.subject().part() == Subject.Part.BATTERY)
                    .mapToDouble(this::chance)
                    .max()
                    .ifPresent(chance -> add(
                            OrderPart.BATTERY,
                            battery.chemistry().name(),
                            Math.round(battery.ratedCapacityAh()) + " A·h",
                            Need.of(1, chance)));
        }
    }

    private void sensors() {
        long count = findings.stream()
                .filter(finding -> finding.subject().part() == Subject.Part.PRESSURE_SENSOR)
                .filter(finding -> chance(finding) == 1)
                .map(finding -> finding.subject().corner())
                .distinct()
                .count();
        if (count > 0) {
            addOfNoKind(OrderPart.SENSOR, "", Need.of((int) count, 1));
        }
    }

    /** Studs that are torn, pulled or missing: those of a wheel, as its others have carried the load. Common practice, no source. */
    private void fasteners() {
        var fastener = vehicle.fastener();
        boolean torn = findings.stream()
                .filter(finding -> finding.subject().part() == Subject.Part.WHEEL_FASTENERS)
                .anyMatch(finding -> {
                    var todo = finding.todo();
                    return todo != null && todo.action() == Todo.Action.REPAIR;
                });
        if (torn && fastener != null) {
            add(OrderPart.FASTENER, fastener.seat().name(), fastener.thread(), Need.of(fastener.count(), 1));
        }
    }

    private void fluid() {
        var grade = vehicle.brakeFluid();
        findings.stream()
                .filter(finding -> finding.subject().part() == Subject.Part.BRAKE_FLUID)
                .mapToDouble(this::chance)
                .max()
                .ifPresent(chance ->
                        addOfNoKind(OrderPart.BRAKE_FLUID, grade == null ? "" : grade.label(), Need.of(1, chance)));
    }
}
