package cornerbook.core.brake.pads;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.why.Basis;
import java.util.List;

/**
 * What a look at the brake of one corner can show, and how often each cause shows it: a table, a column for each part. Each row gives, in percent, the
 * frequency of the sign under {@link BrakeCause}'s constants in their order; the signs of one look add up to 100 for each
 * cause. The percentages are common practice, no source; the source of a row is for its direction: which causes it speaks
 * for.
 */
@SuppressWarnings("ImmutableEnumChecker") // the lists are made by List.of, the sources are records
public enum BrakeSign implements Said {
    OUTER_PAD_THINNER(Look.INNER_AGAINST_OUTER, Source.SERVICE, 60, 5, 35, 5, 5, 10, 5),
    PADS_EVEN(Look.INNER_AGAINST_OUTER, Source.SERVICE, 15, 25, 30, 60, 40, 75, 88),
    INNER_PAD_THINNER(Look.INNER_AGAINST_OUTER, Source.SERVICE, 25, 70, 35, 35, 55, 15, 7),

    PAD_TAPERED(Look.TAPER, Source.SERVICE, 45, 15, 40, 10, 10, 10, 7),
    PAD_NOT_TAPERED(Look.TAPER, Source.SERVICE, 55, 85, 60, 90, 90, 90, 93),

    WORN_FASTER_THAN_OTHER_SIDE(Look.LEFT_AGAINST_RIGHT, Source.PRACTICE, 45, 50, 40, 60, 60, 10, 10),
    SIDES_EVEN(Look.LEFT_AGAINST_RIGHT, Source.PRACTICE, 35, 30, 40, 25, 30, 70, 80),
    WORN_SLOWER_THAN_OTHER_SIDE(Look.LEFT_AGAINST_RIGHT, Source.PRACTICE, 20, 20, 20, 15, 10, 20, 10),

    SLIDE_PINS_FREE(Look.SLIDE_PINS, Source.PRACTICE, 3, 80, 65, 85, 85, 80, 90),
    SLIDE_PINS_TIGHT(Look.SLIDE_PINS, Source.PRACTICE, 37, 15, 25, 11, 11, 15, 9),
    SLIDE_PINS_STUCK(Look.SLIDE_PINS, Source.PRACTICE, 60, 5, 10, 4, 4, 5, 1),

    PAD_FREE(Look.PAD_BY_HAND, Source.PRACTICE, 50, 70, 2, 80, 75, 65, 88),
    PAD_TIGHT(Look.PAD_BY_HAND, Source.PRACTICE, 35, 24, 38, 16, 20, 27, 11),
    PAD_STUCK(Look.PAD_BY_HAND, Source.PRACTICE, 15, 6, 60, 4, 5, 8, 1),

    PISTON_FREE(Look.PISTON_BY_HAND, Source.PRACTICE, 85, 5, 85, 60, 75, 82, 92),
    PISTON_TIGHT(Look.PISTON_BY_HAND, Source.PRACTICE, 13, 45, 12, 33, 20, 15, 7),
    PISTON_STUCK(Look.PISTON_BY_HAND, Source.PRACTICE, 2, 50, 3, 7, 5, 3, 1),

    PISTON_RETURNS(Look.PISTON_RETURN, Source.RETRACTION, 80, 10, 80, 30, 45, 88, 95),
    PISTON_STAYS(Look.PISTON_RETURN, Source.RETRACTION, 20, 90, 20, 70, 55, 12, 5),

    FACES_CLEAN(Look.RUST, Source.PRACTICE, 40, 50, 35, 60, 70, 5, 92),
    ONE_FACE_RUSTIER(Look.RUST, Source.PRACTICE, 40, 25, 50, 10, 10, 30, 5),
    BOTH_FACES_RUSTY(Look.RUST, Source.PRACTICE, 20, 25, 15, 30, 20, 65, 3);

    /** One way to look; it shows one of its signs. */
    public enum Look {
        INNER_AGAINST_OUTER,
        TAPER,
        LEFT_AGAINST_RIGHT,
        SLIDE_PINS,
        PAD_BY_HAND,
        PISTON_BY_HAND,
        PISTON_RETURN,
        RUST
    }

    private final Look look;
    private final Said source;
    private final List<Double> percentUnder;

    BrakeSign(
            Look look,
            Said source,
            double slidePins,
            double piston,
            double pad,
            double hose,
            double parkingBrake,
            double littleUsed,
            double nothing) {
        this.look = look;
        this.source = source;
        this.percentUnder = List.of(slidePins, piston, pad, hose, parkingBrake, littleUsed, nothing);
    }

    public Look look() {
        return look;
    }

    /** Where the direction of the row comes from. */
    public Said source() {
        return source;
    }

    /** How often this cause shows this sign, among the signs of the same look, in percent. */
    public double percentUnder(BrakeCause cause) {
        return percentUnder.get(cause.ordinal());
    }

    private static final class Source {
        static final Said SERVICE = new SignSource.UnevenWearLiterature();
        static final Said RETRACTION = new SignSource.PistonReturnAdvice(new Amount(0.5, "mm", 2));
        static final Said PRACTICE = Basis.COMMON_PRACTICE;
    }
}
