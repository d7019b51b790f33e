package cornerbook.app.demo;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;

/** When the invented shop changes wheels. */
final class Season {
    private static final MonthDay AUTUMN = MonthDay.of(Month.NOVEMBER, 6);
    private static final MonthDay SPRING = MonthDay.of(Month.APRIL, 20);

    private Season() {}

    static SeasonKind opposite(SeasonKind season) {
        return season == SeasonKind.WINTER ? SeasonKind.SUMMER : SeasonKind.WINTER;
    }

    /** The season that a visit on this day prepares for: winter from August to January. */
    static SeasonKind of(LocalDate date) {
        return date.getMonthValue() >= Month.AUGUST.getValue() || date.getMonth() == Month.JANUARY
                ? SeasonKind.WINTER
                : SeasonKind.SUMMER;
    }

    /** The middle of the rush for a season in a year. */
    static LocalDate rush(SeasonKind season, int year) {
        return (season == SeasonKind.WINTER ? AUTUMN : SPRING).atYear(year);
    }
}
