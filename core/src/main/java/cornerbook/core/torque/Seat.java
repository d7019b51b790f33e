package cornerbook.core.torque;

import cornerbook.core.quantity.Quoted;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Shape of the face between a nut or bolt and its wheel. */
public enum Seat {
    CONE,
    BALL,
    FLAT;

    /**
     * The shape by its word.
     *
     * @throws IllegalArgumentException with one sentence when it is not one of these
     */
    public static Seat parse(String text) {
        return Arrays.stream(values())
                .filter(seat -> seat.word().equals(text.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("seat is %s, expected one of %s"
                        .formatted(
                                Quoted.of(text),
                                Arrays.stream(values()).map(Seat::word).collect(Collectors.joining(" ")))));
    }

    /** The word for people: "cone". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
