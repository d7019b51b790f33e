package cornerbook.app.desk.asked;

import cornerbook.app.request.Told;
import cornerbook.core.car.Caution;
import cornerbook.core.car.ServiceStep;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One step of the work, and a slot for each reading that it has. */
public record AskedStep(ServiceStep of, List<Slot> slots) {
    public AskedStep {
        slots = List.copyOf(slots);
    }

    static List<AskedStep> of(@Nullable Corner corner, List<ServiceStep> steps) {
        return steps.stream()
                .map(step -> new AskedStep(
                        step,
                        step.measures().stream()
                                .flatMap(measure -> Slot.at(corner, null, measure))
                                .toList()))
                .toList();
    }

    public WorkStep step() {
        return of.step();
    }

    /** The same without the cautions that the page has said already; it remembers those that it says. */
    public AskedStep onceOnPage(Set<Caution> said) {
        return new AskedStep(
                new ServiceStep(
                        of.step(),
                        of.measures(),
                        of.cautions().stream().filter(said::add).toList(),
                        of.lubricants()),
                slots);
    }

    /** The first caution stands beside the title. */
    public String note() {
        return of.cautions().stream().findFirst().map(Told::say).orElse("");
    }

    /** The other cautions, then what goes where. */
    public List<String> hints() {
        return Stream.concat(
                        of.cautions().stream().skip(1).map(Told::say),
                        of.lubricants().stream()
                                .map(lubricant -> Told.labels("app/desk/asked")
                                        .of(
                                                "lubricant",
                                                "place",
                                                Told.begin(lubricant.place()),
                                                "kind",
                                                lubricant.kind(),
                                                "reason",
                                                lubricant.reason())))
                .toList();
    }
}
