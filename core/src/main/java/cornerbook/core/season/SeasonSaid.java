package cornerbook.core.season;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What is said of a place's climate and of the distance that a car runs. */
public interface SeasonSaid extends Said {
    /** Numbers of a climate that have a range. */
    enum ClimateNumber implements SeasonSaid {
        COLDEST_MORNING,
        MEAN_DAILY_MINIMUM,
        MEAN_DAILY_MAXIMUM
    }

    /** Texts of a climate. */
    enum ClimateText implements SeasonSaid {
        PLACE,
        SOURCE
    }

    record TextMissingOrLong(ClimateText text, int longest) implements SeasonSaid {}

    record NotAllMonths(int months) implements SeasonSaid {}

    /**
     * What an odometer can be expected to read.
     *
     * @param before what it read on {@code since}
     */
    record OdometerExpected(Amount before, LocalDate since, Amount most) implements SeasonSaid {}
}
