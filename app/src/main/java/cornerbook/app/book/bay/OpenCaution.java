package cornerbook.app.book.bay;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Something that must be closed before a car leaves.
 *
 * @param corner null for what is about the whole car
 */
public record OpenCaution(Kind kind, @Nullable Corner corner) implements Said {
    /** What is open. */
    public enum Kind {
        SERVICE_MODE,
        CALIPER,
        BRACKET,
        PEDAL,
        TORQUE,
        SECOND_CHECK
    }

    /** As the bay sheet and the book name it: "CALIPER.LF". */
    public String key() {
        return corner == null ? kind.name() : kind + "." + corner;
    }

    /** By that name; empty for one that is no longer known. */
    public static Optional<OpenCaution> find(String key) {
        return Arrays.stream(Kind.values())
                .flatMap(kind -> Stream.concat(
                        Stream.of(new OpenCaution(kind, null)),
                        Arrays.stream(Corner.values()).map(corner -> new OpenCaution(kind, corner))))
                .filter(caution -> caution.key().equals(key))
                .findFirst();
    }
}
