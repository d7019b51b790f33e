package cornerbook.app.calibration;

import cornerbook.core.say.Said;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the forecasts are scored by, in percent or points, and between what bounds it is asked to be: on cars that live as a
 * textbook has it, and on all others.
 */
@SuppressWarnings("ImmutableEnumChecker") // functions without state, and records
enum Figure implements Said {
    BANDS(scores -> scores.bands.percent(), new Bounds(88, 92), new Bounds(85, 94)),
    /** Points by which chances are off, where they are off most. */
    CHANCES(scores -> points(scores.holds), Bounds.upTo(5), Bounds.upTo(8)),
    HORIZONS(scores -> scores.horizons.percent(), new Bounds(87, 93), new Bounds(85, 96)),
    FIRST_HORIZONS(scores -> scores.firstHorizons.percent(), new Bounds(87, 93), new Bounds(85, 96)),
    HOLDS_FAILED(scores -> scores.holdsFailed.percent(), Bounds.upTo(3), Bounds.upTo(3)),
    UNLIKELY_HELD(scores -> scores.unlikelyHeld.percent(), Bounds.upTo(20), Bounds.upTo(20)),
    SPENT_HELD(scores -> scores.spentHeld.percent(), Bounds.upTo(20), Bounds.upTo(20)),
    PADS(scores -> scores.pads.percent(), new Bounds(86, 94), new Bounds(85, 95)),
    SEIZING(scores -> points(scores.seizing), Bounds.upTo(5), Bounds.upTo(8)),
    DISTANCES(scores -> scores.distances.percent(), new Bounds(86, 94), new Bounds(85, 95)),
    UNEVEN_WEAR(scores -> scores.unevenWear.percent(), Bounds.upTo(5), Bounds.upTo(5));

    /** Before anything was learned, bands may be off by so much more: of a textbook's cars, and of others. */
    private static final Bounds BANDS_BY_DEFAULT = new Bounds(86, 94);

    private static final Bounds BANDS_BY_DEFAULT_ELSEWHERE = new Bounds(80, 96);
    private final Function<ForecastScores, Optional<Measured>> value;
    private final Bounds byTheBook;
    private final Bounds elsewhere;

    Figure(Function<ForecastScores, Optional<Measured>> value, Bounds byTheBook, Bounds elsewhere) {
        this.value = value;
        this.byTheBook = byTheBook;
        this.elsewhere = elsewhere;
    }

    /** Both ends in percent or points, and within. */
    record Bounds(double low, double high) {
        static Bounds upTo(double high) {
            return new Bounds(0, high);
        }

        /** Whether a figure may lie within: it is not outside for sure. */
        boolean hold(Measured measured) {
            return !measured.isBelow(low) && !measured.isAbove(high);
        }
    }

    /** Empty when too little was forecast. */
    Optional<Measured> of(ForecastScores scores) {
        return value.apply(scores);
    }

    /**
     * What is asked.
     *
     * @param control cars that live as a textbook has it
     * @param learned from other cars, and not from the defaults
     */
    Bounds asked(boolean control, boolean learned) {
        if (this == BANDS && !learned) {
            return control ? BANDS_BY_DEFAULT : BANDS_BY_DEFAULT_ELSEWHERE;
        }
        return control ? byTheBook : elsewhere;
    }

    private static Optional<Measured> points(Reliability reliability) {
        return reliability.worst().map(Reliability.Stretch::points);
    }
}
