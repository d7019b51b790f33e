package cornerbook.app.exchange;

import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.Locale;

/** A word of the visit file that a field of a car may have. Names, as those of standards, are the same for everybody. */
enum CarWord implements Said {
    FRONT,
    REAR,
    ALL,
    SLIDING,
    FIXED,
    NONE,
    CABLE,
    DRUM_IN_DISC,
    MOTOR_ON_CALIPER,
    MOTOR_PULLING_CABLES,
    CONE,
    BALL,
    FLAT,
    FLOODED,
    LITHIUM,
    TREAD_DEPTH,
    ROLLING_CIRCUMFERENCE,
    DIRECT,
    INDIRECT,
    BY_ITSELF,
    BY_TOOL,
    BY_DRIVING,
    SUMMER,
    WINTER,
    ALL_SEASON,
    YES,
    NO;

    /** What a word of the file says to people. */
    static Said of(String written) {
        var constant = written.toUpperCase(Locale.ROOT).replace(' ', '_');
        return Arrays.stream(values())
                .filter(word -> word.name().equals(constant))
                .<Said>map(word -> word)
                .findFirst()
                .orElseGet(() -> Said.verbatim(written));
    }
}
