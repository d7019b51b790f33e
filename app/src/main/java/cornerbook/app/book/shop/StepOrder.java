package cornerbook.app.book.shop;

import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * In which order the steps of a visit stand: every step once, and no {@link StepRule} broken that holds for every car.
 *
 * @param steps from the first to the last
 */
public record StepOrder(List<SheetStep> steps) {
    /** Of a shop that never said otherwise. */
    public static final StepOrder USUAL = new StepOrder(List.of(SheetStep.values()));

    private static final String BETWEEN = " ";

    public StepOrder {
        steps = List.copyOf(steps);
        if (steps.size() != SheetStep.values().length || EnumSet.copyOf(steps).size() != steps.size()) {
            throw new IllegalArgumentException("the steps are %s, expected every step once".formatted(steps));
        }
        if (steps.getFirst() != SheetStep.RECEIVE || steps.getLast() != SheetStep.DEPART) {
            throw new IllegalArgumentException(
                    "the steps are %s, expected RECEIVE first and DEPART last".formatted(steps));
        }
        StepRule.brokenBy(steps, null).ifPresent(rule -> {
            throw new Refused(rule);
        });
    }

    static StepOrder parse(String words) {
        return new StepOrder(
                Arrays.stream(words.split(BETWEEN, -1)).map(SheetStep::valueOf).toList());
    }

    String words() {
        return steps.stream().map(SheetStep::name).collect(Collectors.joining(BETWEEN));
    }

    /** The same on a car that needs its wheels off before its brakes: there they come off just before. */
    public StepOrder on(Vehicle car) {
        if (StepRule.brokenBy(steps, car).isEmpty()) {
            return this;
        }
        var needed = new ArrayList<>(steps);
        needed.remove(SheetStep.OFF);
        needed.add(needed.indexOf(SheetStep.BRAKES), SheetStep.OFF);
        return new StepOrder(needed);
    }

    /**
     * What keeps a step from changing places with the one beside it; empty where nothing does.
     *
     * @param up towards the first
     * @param car null for whatever car
     */
    public Optional<StepRule> refusal(SheetStep step, boolean up, @Nullable Vehicle car) {
        return canBeBeside(step, up) ? StepRule.brokenBy(swapped(step, up), car) : Optional.empty();
    }

    /** Whether a step may change places at all with the one beside it. */
    public boolean canBeBeside(SheetStep step, boolean up) {
        return step.isMovable() && steps.get(beside(step, up)).isMovable();
    }

    /**
     * With one step moved by one place.
     *
     * @param car null for whatever car
     * @throws Refused with the rule that would be broken
     */
    public StepOrder moved(SheetStep step, boolean up, @Nullable Vehicle car) {
        if (!canBeBeside(step, up)) {
            throw new Refused(new ShopSaid.StepStays());
        }
        refusal(step, up, car).ifPresent(rule -> {
            throw new Refused(rule);
        });
        return new StepOrder(swapped(step, up));
    }

    private int beside(SheetStep step, boolean up) {
        return steps.indexOf(step) + (up ? -1 : 1);
    }

    private List<SheetStep> swapped(SheetStep step, boolean up) {
        var other = new ArrayList<>(steps);
        int at = beside(step, up);
        other.set(steps.indexOf(step), steps.get(at));
        other.set(at, step);
        return List.copyOf(other);
    }
}
