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
    NO,
    EN,
    FR;

    /** As the file spells it; what is written in capitals there is a name. */
    private String inFile() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What a word of the file says to people. */
    static Said of(String written) {
        return Arrays.stream(values())
                .filter(word -> word.inFile().equals(written))
                .<Said>map(word -> word)
                .findFirst()
                .orElseGet(() -> Said.verbatim(written));
    }
}
