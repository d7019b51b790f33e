package cornerbook.app.calibration;

import java.util.ArrayList;
import java.util.List;

/** Chances that were said, by tenths, beside how often it came true: of honest ones, as often as was said. */
final class Reliability {
    static final int TENTHS = 10;
    /** A tenth with fewer forecasts tells nothing. */
    private static final int FEWEST = 30;

    private final int[] count = new int[TENTHS];
    private final double[] said = new double[TENTHS];
    private final int[] came = new int[TENTHS];
    private final double[] ofCar = new double[TENTHS];
    private final double[] squares = new double[TENTHS];

    /**
     * One tenth.
     *
     * @param said mean of the chances
     * @param came share of those that came true
     * @param sd standard error of the difference; forecasts of one car hang together and are counted by car
     */
    record Tenth(int count, double said, double came, double sd) {
        /** Above 0 where more came true than was said. */
        double off() {
            return came - said;
        }

        /** How far it is off for sure: what chance alone may make, twice its standard error, is left out. */
        double surelyOff() {
            return Math.max(0, Math.abs(off()) - 2 * sd);
        }
    }

    void add(double chance, boolean cameTrue) {
        int tenth = Math.min(TENTHS - 1, (int) (chance * TENTHS));
        count[tenth]++;
        said[tenth] += chance;
        came[tenth] += cameTrue ? 1 : 0;
        ofCar[tenth] += (cameTrue ? 1 : 0) - chance;
    }

    void endCar() {
        for (int tenth = 0; tenth < TENTHS; tenth++) {
            squares[tenth] += ofCar[tenth] * ofCar[tenth];
            ofCar[tenth] = 0;
        }
    }

    /** Those with enough forecasts. */
    List<Tenth> tenths() {
        var tenths = new ArrayList<Tenth>();
        for (int tenth = 0; tenth < TENTHS; tenth++) {
            if (count[tenth] >= FEWEST) {
                tenths.add(new Tenth(
                        count[tenth],
                        said[tenth] / count[tenth],
                        (double) came[tenth] / count[tenth],
                        Math.sqrt(squares[tenth]) / count[tenth]));
            }
        }
        return List.copyOf(tenths);
    }

    /** The largest of {@link Tenth#off}, whichever way, as a share. */
    double worst() {
        return tenths().stream().mapToDouble(tenth -> Math.abs(tenth.off())).max().orElse(0);
    }

    /** The largest of {@link Tenth#surelyOff}. */
    double surelyWorst() {
        return tenths().stream().mapToDouble(Tenth::surelyOff).max().orElse(0);
    }
}
