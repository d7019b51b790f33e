package cornerbook.words;

import cornerbook.core.say.Said;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which message a kind of sentence has, and how its facts are come by. */
final class Sentence {
    private static final ClassValue<Sentence> OF = new ClassValue<>() {
        @Override
        protected Sentence computeValue(Class<?> type) {
            return new Sentence(type);
        }
    };

    private final String room;
    private final String key;
    private final Map<String, RecordComponent> facts = new LinkedHashMap<>();

    private Sentence(Class<?> type) {
        room = Catalogue.roomOf(type);
        key = type.getSimpleName();
        if (type.isRecord()) {
            Arrays.stream(type.getRecordComponents()).forEach(each -> {
                each.getAccessor().setAccessible(true);
                facts.put(each.getName(), each);
            });
        }
    }

    static Sentence of(Class<?> type) {
        return OF.get(type);
    }

    String room() {
        return room;
    }

    /** The key of a record, or of a constant. */
    String keyOf(Said said) {
        return said instanceof Enum<?> constant ? key + "." + constant.name() : key;
    }

    /** The names of its facts, in their order. */
    Set<String> names() {
        return facts.keySet();
    }

    @Nullable
    Object fact(Said said, String name) {
        var component = facts.get(name);
        if (component == null) {
            throw new IllegalArgumentException("%s has no fact %s".formatted(key, name));
        }
        try {
            return component.getAccessor().invoke(said);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the fact %s of %s cannot be read".formatted(name, key), e);
        }
    }
}
