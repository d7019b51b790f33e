package cornerbook.app.sheet;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a sentence names a corner: whether it, or a sentence inside it, has that corner among its facts. */
final class NamedCorner {
    private NamedCorner() {}

    static boolean isNamed(Corner corner, @Nullable Object fact) {
        return switch (fact) {
            case Corner named -> named == corner;
            case List<?> facts -> facts.stream().anyMatch(each -> isNamed(corner, each));
            case Record sentence when sentence instanceof Said ->
                Arrays.stream(sentence.getClass().getRecordComponents())
                        .anyMatch(component -> isNamed(corner, value(sentence, component)));
            case null, default -> false;
        };
    }

    private static @Nullable Object value(Record sentence, RecordComponent component) {
        try {
            var accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(sentence);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the fact %s of %s cannot be read".formatted(component, sentence), e);
        }
    }
}
