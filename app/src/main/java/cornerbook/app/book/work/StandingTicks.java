package cornerbook.app.book.work;

import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the ticks of a visit come to: of each step the last one that counts stands, in the order in which the book took them. */
public final class StandingTicks {
    private record Place(String tick, @Nullable String wheelTag) {}

    /** The one that stands is the last; before it those that said the same of the step, as by two people. */
    private final Map<Place, List<WorkTick>> inForce = new LinkedHashMap<>();

    private StandingTicks() {}

    /**
     * Of the ticks of one visit.
     *
     * @param ticks in the order in which the book took them
     */
    public static StandingTicks of(List<WorkTick> ticks) {
        var standing = new StandingTicks();
        ticks.stream().filter(WorkTick::counts).forEach(standing::take);
        return standing;
    }

    private void take(WorkTick tick) {
        var said = inForce.computeIfAbsent(new Place(tick.tick(), tick.wheelTag()), place -> new ArrayList<>());
        if (!said.isEmpty() && said.getLast().done() != tick.done()) {
            said.clear();
        }
        said.add(tick);
    }

    /**
     * The tick that stands; empty while the step was never ticked.
     *
     * @param wheelTag null for a step that is no wheel's
     */
    public Optional<WorkTick> find(String tick, @Nullable String wheelTag) {
        return Optional.ofNullable(inForce.get(new Place(tick, wheelTag))).map(List::getLast);
    }

    /** The ticks that stand, each of a step of its own, of the steps of no wheel and of these wheels. */
    public List<WorkTick> on(Map<Corner, String> wheelAt) {
        return inForce.values().stream()
                .map(List::getLast)
                .filter(tick -> isOn(tick, wheelAt))
                .toList();
    }

    /** Everything that stands of the fasteners of these wheels, with what another person said of the same fastener. */
    public List<WorkTick> fasteners(Map<Corner, String> wheelAt) {
        return inForce.values().stream()
                .flatMap(List::stream)
                .filter(tick -> tick.tick().startsWith(WorkTick.FASTENER) && isOn(tick, wheelAt))
                .toList();
    }

    private static boolean isOn(WorkTick tick, Map<Corner, String> wheelAt) {
        return !tick.tick().startsWith(WorkTick.FASTENER)
                || (tick.wheelTag() != null
                        && tick.corner() != null
                        && tick.wheelTag().equals(wheelAt.get(tick.corner())));
    }

    /** What is left open, in the order in which it was first said; whether it was read since is not looked at. */
    public List<WorkTick> leftOpen() {
        return inForce.values().stream()
                .map(List::getLast)
                .filter(tick -> tick.reason() != null)
                .toList();
    }

    /** Where every fastener of the wheel is ticked. */
    public Set<Corner> tightened(int fastenerCount, Map<Corner, String> wheelAt) {
        var done = on(wheelAt).stream()
                .filter(tick -> tick.done() && tick.tick().startsWith(WorkTick.FASTENER))
                .map(WorkTick::corner)
                .toList();
        var tightened = EnumSet.noneOf(Corner.class);
        wheelAt.keySet().stream()
                .filter(corner -> done.stream().filter(corner::equals).count() == fastenerCount)
                .forEach(tightened::add);
        return tightened;
    }

    /** Where a fastener's tick was taken back. */
    public Set<Corner> loosened(Map<Corner, String> wheelAt) {
        var loosened = EnumSet.noneOf(Corner.class);
        on(wheelAt).stream()
                .filter(tick -> !tick.done() && tick.tick().startsWith(WorkTick.FASTENER))
                .map(WorkTick::corner)
                .filter(Objects::nonNull)
                .forEach(loosened::add);
        return loosened;
    }
}
