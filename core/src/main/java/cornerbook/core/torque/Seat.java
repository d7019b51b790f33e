package cornerbook.core.torque;

import cornerbook.core.say.Said;

import cornerbook.core.say.Refused;

import cornerbook.core.quantity.Quoted;
import java.util.Arrays;
import java.util.Locale;

/** Shape of the face between a nut or bolt and its wheel. */
public enum Seat implements Said {
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
                .orElseThrow(() -> new Refused(new TorqueSaid.NoSeat(Quoted.of(text))));
    }

    /** Its name in files and addresses: "cone". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
