package cornerbook.core.assess;

import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Says once what is said alike of different corners and wheels: a caution read four times is not read. Alike are sentences of one
 * kind whose facts differ in nothing but a corner or the tag of a wheel.
 */
public final class SaidOnce {
    private static final Object PLACE = "place";

    private final Set<String> tags;

    public SaidOnce(CarHistory history) {
        tags = history.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .map(wheel -> wheel.tag())
                .collect(Collectors.toSet());
    }

    /** The sentence without its corners and wheels: equal for those that say the same. */
    public record Shape(@Nullable Object kind, List<Shape> facts) {
        public Shape {
            facts = List.copyOf(facts);
        }
    }

    public Shape shape(@Nullable Object fact) {
        if (isPlace(fact)) {
            return new Shape(PLACE, List.of());
        }
        if (fact instanceof List<?> list) {
            return new Shape(List.class, list.stream().map(this::shape).toList());
        }
        return fact instanceof Record said
                ? new Shape(said.getClass(), factsOf(said).map(this::shape).toList())
                : new Shape(fact, List.of());
    }

    /** Each sentence once, with the places of those that are like it, in the order of the first. */
    public List<Said> join(List<Said> sentences) {
        var alike = new LinkedHashMap<Shape, List<Said>>();
        for (var sentence : sentences) {
            alike.computeIfAbsent(shape(sentence), unused -> new ArrayList<>()).add(sentence);
        }
        return alike.values().stream().map(this::once).toList();
    }

    private Said once(List<Said> alike) {
        var first = places(alike.getFirst()).collect(Collectors.toSet());
        var others = alike.stream()
                .skip(1)
                .flatMap(this::places)
                .filter(place -> !first.contains(place))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return others.isEmpty() ? alike.getFirst() : new AssessSaid.Likewise(alike.getFirst(), List.copyOf(others));
    }

    /** The corners and wheels that a sentence speaks of. */
    private Stream<Said> places(@Nullable Object fact) {
        return switch (fact) {
            case null -> Stream.empty();
            case Corner corner -> Stream.of(corner);
            case CornerName name -> Stream.of(name.corner());
            case Verbatim words -> isPlace(words) ? Stream.of(words) : Stream.empty();
            case String tag -> isPlace(tag) ? Stream.of(Said.verbatim(tag)) : Stream.empty();
            case List<?> list -> list.stream().flatMap(this::places);
            case Record said -> factsOf(said).flatMap(this::places);
            default -> Stream.empty();
        };
    }

    private boolean isPlace(@Nullable Object fact) {
        return fact instanceof Corner
                || fact instanceof CornerName
                || (fact instanceof Verbatim words && tags.contains(words.text()))
                || (fact instanceof String tag && tags.contains(tag));
    }

    private static Stream<@Nullable Object> factsOf(Record said) {
        return Arrays.stream(said.getClass().getRecordComponents()).map(component -> factOf(said, component));
    }

    private static @Nullable Object factOf(Record said, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(said);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the fact %s of %s cannot be read".formatted(component.getName(), said), e);
        }
    }
}
