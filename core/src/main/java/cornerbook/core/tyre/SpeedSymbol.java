package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Speed symbol of a tyre: the speed up to which it may be used, and the share of its load capacity that remains near that
 * speed. Source: UN R30, tables of speed symbols and of load variation; the row of Y is from memory.
 */
public enum SpeedSymbol {
    L(120),
    M(130),
    N(140),
    P(150),
    Q(160),
    R(170),
    S(180),
    T(190),
    U(200),
    H(210),
    V(240, 210, 0.91),
    W(270, 240, 0.85),
    Y(300, 270, 0.85);

    private final double highestKmh;
    private final double fullLoadUpToKmh;
    private final double loadShareAtHighest;

    SpeedSymbol(double highestKmh) {
        this(highestKmh, highestKmh, 1);
    }

    SpeedSymbol(double highestKmh, double fullLoadUpToKmh, double loadShareAtHighest) {
        this.highestKmh = highestKmh;
        this.fullLoadUpToKmh = fullLoadUpToKmh;
        this.loadShareAtHighest = loadShareAtHighest;
    }

    /**
     * The symbol as written, small or capital.
     *
     * @throws IllegalArgumentException with one sentence when there is no such symbol
     */
    public static SpeedSymbol parse(String text) {
        var wanted = text.strip().toUpperCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(symbol -> symbol.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new Refused(new TyreSaid.NoSpeedSymbol(
                        Quoted.of(text),
                        Arrays.stream(values()).map(SpeedSymbol::name).collect(Collectors.joining(" ")))));
    }

    /** Highest speed, km/h. */
    public double highestKmh() {
        return highestKmh;
    }

    /**
     * Share of the load capacity that holds at a speed: 1 up to the full-load speed, then linear down to the highest.
     *
     * @param speedKmh 0 to the symbol's highest speed
     * @return 0.85 to 1
     * @throws IllegalArgumentException above the highest speed, where the tyre may not be used
     */
    public double loadShare(double speedKmh) {
        if (!(speedKmh >= 0 && speedKmh <= highestKmh)) {
            throw new IllegalArgumentException("speed is %s km/h, expected 0 to %s km/h for speed symbol %s"
                    .formatted(speedKmh, highestKmh, this));
        }
        if (speedKmh <= fullLoadUpToKmh) {
            return 1;
        }
        return 1 - (1 - loadShareAtHighest) * (speedKmh - fullLoadUpToKmh) / (highestKmh - fullLoadUpToKmh);
    }
}
