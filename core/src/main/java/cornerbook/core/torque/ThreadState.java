package cornerbook.core.torque;

import cornerbook.core.say.Said;

import cornerbook.core.say.Refused;

import cornerbook.core.quantity.Quoted;
import java.util.Arrays;
import java.util.Locale;

/**
 * What is on a thread, and the nut factor K of the short form T = K F d with it (handbook values: dry 0.20 to 0.25, oiled
 * 0.15 to 0.20, anti-seize 0.12 to 0.16).
 */
public enum ThreadState implements Said {
    DRY(0.20, 0.25),
    OILED(0.15, 0.20),
    ANTI_SEIZE(0.12, 0.16);

    private final double lowestFactor;
    private final double highestFactor;

    ThreadState(double lowestFactor, double highestFactor) {
        this.lowestFactor = lowestFactor;
        this.highestFactor = highestFactor;
    }

    /**
     * The state by its word.
     *
     * @throws IllegalArgumentException with one sentence when it is not one of these
     */
    public static ThreadState parse(String text) {
        return Arrays.stream(values())
                .filter(state -> state.word().equals(text.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Refused(new TorqueSaid.NoThreadState(Quoted.of(text))));
    }

    /** Smallest K: the most clamp load. */
    public double lowestFactor() {
        return lowestFactor;
    }

    /** Largest K: the least clamp load. */
    public double highestFactor() {
        return highestFactor;
    }

    /** Its name in files and addresses: "anti-seize". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
