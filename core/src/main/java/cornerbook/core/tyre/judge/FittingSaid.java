package cornerbook.core.tyre.judge;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Side;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about the tyres that a car leaves on together: whether they go together, stand as they have to, and are lawful. */
public interface FittingSaid extends Said {
    /** Names of evidence. */
    enum Aspect implements FittingSaid {
        WHEELS_ON_CAR,
        MODELS,
        HOW_IT_STANDS,
        SPARE,
        DRIVEN_AXLE,
        LAW_ASKS,
        WE_ADVISE,
        ON_THE_TYRES
    }

    /** How it was come by, and where rules come from. */
    enum Rule implements FittingSaid {
        AS_RECORDED,
        SIDEWALLS,
        ONE_KIND,
        SIZE_ON_AXLE,
        MODEL_ON_AXLE,
        SIZES_OF_PLACARD,
        SIDEWALL_INSTRUCTIONS,
        SPARE_MANUALS,
        STUDS_ON_ALL
    }

    /** What is advised, or holds, whatever the law asks. */
    enum Advice implements FittingSaid {
        WINTER_TYRES_WHEN_COLD,
        SPARE_OFF_DRIVEN_AXLE,
        MIXED_SEASONS,
        MIXED_SETS,
        SWAPPED_AXLES,
        STUDS_ON_SOME
    }

    record StandsAt(Corner corner, String tag, SetOf set) implements FittingSaid {}

    record WheelsOfSets(int sets, Listed wheels) implements FittingSaid {}

    record SizesDiffer(Axle axle, String left, String right) implements FittingSaid {}

    /**
     * Two sizes on one axle, for the customer.
     *
     * @param apart whether their overall diameters differ by more than makers' tyres of one size do
     */
    record SizesDifferPlain(Axle axle, boolean apart) implements FittingSaid {}

    record Both(Said left, Said right) implements FittingSaid {}

    record SizesSwapped(String front, String rear) implements FittingSaid {}

    record ModelsDiffer(Axle axle, String left, String right) implements FittingSaid {}

    record ModelsDifferPlain(Axle axle) implements FittingSaid {}

    /**
     * A tyre that does not stand as its sidewall asks.
     *
     * @param insideOut else it rolls against its arrow
     */
    record StandsWrong(Corner corner, String tag, boolean insideOut) implements FittingSaid {}

    record StandsWrongPlain(Corner corner, boolean insideOut) implements FittingSaid {}

    record ChangedSide(Corner corner, String tag, Side before) implements FittingSaid {}

    record ChangedSidePlain(Corner corner) implements FittingSaid {}

    record SpareFitted(Corner corner, String tag, Amount highest) implements FittingSaid {}

    /**
     * A spare, for the customer.
     *
     * @param several whether there is more than one on the car
     */
    record SpareFittedPlain(Corner corner, Amount highest, boolean several) implements FittingSaid {}

    /**
     * Tyres that are not winter tyres as the law wants them.
     *
     * @param days on which it asks for them; null when all year
     * @param always whether it asks on any road, else in wintry conditions or where signs say so
     */
    record NoWinterTyres(String tags, @Nullable LawfulDays days, boolean always) implements FittingSaid {}

    /**
     * The same for the customer.
     *
     * @param snowflake whether only the mountain and snowflake counts, else M+S is enough
     */
    record NoWinterTyresPlain(@Nullable LawfulDays days, boolean always, boolean snowflake) implements FittingSaid {}

    /** The days, both counted, of one winter or summer on which a law binds. */
    record LawfulDays(LocalDate first, LocalDate last) implements FittingSaid {}

    record MarkOf(String tag, Said mark) implements FittingSaid {}

    /** A set whose mark nobody read, and that the book has as a summer set. */
    record SummerTyre(SeasonKind season) implements FittingSaid {}

    /**
     * Studs while the law forbids them.
     *
     * @param days on which it forbids them; null when all year
     */
    record StudsOutOfSeason(String tags, @Nullable LawfulDays days) implements FittingSaid {}

    /**
     * The same for the customer.
     *
     * @param now whether it forbids them today
     */
    record StudsOutOfSeasonPlain(@Nullable LawfulDays days, boolean now) implements FittingSaid {}

    record StudsOnSomeWheels(String tags) implements FittingSaid {}

    record MarkNotRead(String tags, LocalDate from) implements FittingSaid {}

    /** The law lets studs in one part of the place and forbids them in another, as its text says. */
    record StudsNotEverywhere(String tags, PlaceOfLaw place, Said law) implements FittingSaid {}

    record NoLawOnFile(PlaceOfLaw place, Listed laws) implements FittingSaid {}

    /** Laws that the limits may not have for a place. */
    enum Law implements FittingSaid {
        TREAD_DEPTH,
        WINTER_TYRES,
        STUDS
    }
}
