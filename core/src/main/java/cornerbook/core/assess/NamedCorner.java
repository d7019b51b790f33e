package cornerbook.core.assess;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whether a sentence names a corner: whether it, or a sentence inside it, has that corner among its facts. */
public final class NamedCorner {
    private NamedCorner() {}

    public static boolean isNamed(Corner corner, @Nullable Object fact) {
        if (fact instanceof List<?> facts) {
            return facts.stream().anyMatch(each -> isNamed(corner, each));
        }
        return fact == corner
                || (fact instanceof Said && fact instanceof Record sentence && isAmongFacts(corner, sentence));
    }

    private static boolean isAmongFacts(Corner corner, Record sentence) {
        return Arrays.stream(sentence.getClass().getRecordComponents())
                .anyMatch(component -> isNamed(corner, value(sentence, component)));
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
