package cornerbook.core.release;

import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Something that must be settled before a car leaves, or somebody says why it leaves all the same.
 *
 * @param corner null for what is about the whole car
 * @param part of the finding that is unsafe; null for work that is not ended
 * @param title of that finding, or the work that is not agreed; null for work that is not ended
 */
public record OpenPoint(
        Kind kind,
        @Nullable Corner corner,
        Subject.@Nullable Part part,
        @Nullable Said title) implements Said {
    /** What is open. */
    public enum Kind {
        SERVICE_MODE,
        CALIPER,
        DRUM,
        BRACKET,
        PEDAL,
        /** Wheels were off, and nobody recorded which are on. */
        WHEELS,
        TORQUE,
        SECOND_CHECK,
        /** The wheels still on were due to be tightened again since they were fitted. */
        RETORQUE,
        /** Work beyond what the customer agreed to, that nobody said was done without charge. */
        NOT_AGREED,
        /** A finding that nobody should drive away with: the customer has to know. */
        UNSAFE
    }

    static OpenPoint work(Kind kind, @Nullable Corner corner) {
        return new OpenPoint(kind, corner, null, null);
    }

    static OpenPoint unsafe(Subject subject, Said title) {
        return new OpenPoint(Kind.UNSAFE, subject.corner(), subject.part(), title);
    }

    static OpenPoint notAgreed(ChargedWork work) {
        return new OpenPoint(Kind.NOT_AGREED, null, null, work);
    }

    /**
     * The same work of several corners.
     *
     * @param at more than one corner
     */
    record AtCorners(Kind kind, Listed at) implements Said {}

    /** For those who only read them: what is open at several corners is told once, where the first of it stands. */
    public static List<Said> together(List<OpenPoint> open) {
        return open.stream()
                .collect(Collectors.groupingBy(
                        point -> point.corner() == null || point.title() != null ? point : point.kind(),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .map(OpenPoint::once)
                .toList();
    }

    private static Said once(List<OpenPoint> alike) {
        var first = alike.getFirst();
        return alike.size() == 1
                ? first
                : new AtCorners(
                        first.kind(),
                        Listed.and(alike.stream()
                                .map(OpenPoint::corner)
                                .filter(Objects::nonNull)
                                .toList()));
    }

    /** As the bay sheet and the book name it: "CALIPER.LF", "NOT_AGREED.PADS.FRONT", "UNSAFE.PAD.LF". */
    public String key() {
        return title instanceof ChargedWork work ? kind + "." + work.key() : keyOfPlace();
    }

    private String keyOfPlace() {
        return Stream.of(kind, part, corner)
                .filter(Objects::nonNull)
                .map(Enum::name)
                .collect(Collectors.joining("."));
    }
}
