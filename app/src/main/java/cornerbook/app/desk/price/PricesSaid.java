package cornerbook.app.desk.price;

import cornerbook.core.say.Said;

/** What the page of prices refuses. */
sealed interface PricesSaid extends Said {
    record NoCurrency(String typed) implements PricesSaid {}

    record NoPercent(String typed) implements PricesSaid {}

    record NoMinutes(String typed) implements PricesSaid {}

    record NoTread(String typed) implements PricesSaid {}

    record NoTyreSize(String typed) implements PricesSaid {}

    record NoDay() implements PricesSaid {}

    record NoSeason() implements PricesSaid {}

    /** A tax has a name and no rate, or a rate and no name. */
    record HalfATax() implements PricesSaid {}
}
