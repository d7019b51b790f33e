package cornerbook.core.car;

import cornerbook.core.say.Said;
import java.util.List;

/**
 * One step of the work at one car, or at one corner of it: what is read and recorded in it, and what has to be minded while hands are there.
 *
 * @param measures what is read or recorded, in the order of the work
 * @param cautions gravest first; what an earlier step of the same list says is not said again
 * @param lubricants what goes where, and why; empty for a step that lubricates nothing
 */
public record ServiceStep(WorkStep step, List<Measure> measures, List<Caution> cautions, List<Lubricant> lubricants) {
    public ServiceStep {
        measures = List.copyOf(measures);
        cautions = List.copyOf(cautions);
        lubricants = List.copyOf(lubricants);
    }

    /**
     * What goes on one place.
     *
     * @param place as "slide pins"
     * @param kind as "rubber-safe grease", or "nothing"
     * @param reason why this and no other
     */
    public record Lubricant(Said place, Said kind, Said reason) {}
}
