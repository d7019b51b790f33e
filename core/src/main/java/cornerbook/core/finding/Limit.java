package cornerbook.core.finding;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One row of the limits file.
 *
 * @param jurisdiction code of the place, or "*" for the house rule that serves where no row names the place
 * @param season the season kind that it is for; null for all
 * @param value in the unit of the kind (mm for tread, mm for pads, years, or a chance)
 * @param from first day of the year on which it binds; null when all year
 * @param until last day of the year on which it binds; null with {@code from}
 * @param citation the text of law or the practice that it comes from
 */
public record Limit(
        String jurisdiction,
        Kind kind,
        @Nullable SeasonKind season,
        double value,
        @Nullable MonthDay from,
        @Nullable MonthDay until,
        Said citation) {
    /** Whether it is our own rule, and no law of the place. */
    public boolean isHouseRule() {
        return jurisdiction.equals(LimitTable.ANYWHERE);
    }

    /** Whether it binds on any day from {@code first} to {@code last}, both counted. */
    boolean bindsWithin(LocalDate first, LocalDate last) {
        return bindsFrom(first, last).isPresent();
    }

    /** The first day from {@code first} to {@code last}, both counted, on which it binds; empty when it binds on none. */
    public Optional<LocalDate> bindsFrom(LocalDate first, LocalDate last) {
        if (from == null || until == null) {
            return Optional.of(first);
        }
        for (int year = first.getYear() - 1; year <= last.getYear(); year++) {
            var begins = from.atYear(year);
            var ends = until.atYear(until.isBefore(from) ? year + 1 : year);
            if (!begins.isAfter(last) && !ends.isBefore(first)) {
                return Optional.of(begins.isAfter(first) ? begins : first);
            }
        }
        return Optional.empty();
    }

    /** The days in a row on which it binds, both counted. */
    public record Stretch(LocalDate first, LocalDate last) {}

    /** The days in a row around {@code day} on which it binds; empty when it binds all year, or not on that day. */
    public Optional<Stretch> stretchAround(LocalDate day) {
        if (from == null || until == null) {
            return Optional.empty();
        }
        for (int year = day.getYear() - 1; year <= day.getYear(); year++) {
            var stretch = new Stretch(from.atYear(year), until.atYear(until.isBefore(from) ? year + 1 : year));
            if (!stretch.first().isAfter(day) && !stretch.last().isBefore(day)) {
                return Optional.of(stretch);
            }
        }
        return Optional.empty();
    }

    /** What the limit binds. */
    public enum Kind {
        /** Below this the car may not be driven. */
        TREAD_LEGAL,
        /** Below this the set is spent for the season. */
        TREAD_SEASON,
        /** Wise depth at fitting. */
        TREAD_AT_FITTING,
        /** How far the two wheels of an axle may differ in depth. */
        TREAD_SAME_AXLE,
        /** How far the four wheels of an all-wheel-drive car may differ in depth where its maker says nothing. */
        TREAD_ALL_WHEEL,
        /** Difference of the axles' depths beyond which the deeper pair belongs at the rear. */
        TREAD_DEEPER_PAIR,
        /** Below this a pad may not be driven on. */
        PAD_LEGAL,
        /** The same of riveted lining, over the rivet heads. */
        RIVETED_LINING_LEGAL,
        /** Chance, above 0 and below 1, that a pad of the car seizes until the next visit, which is still taken. */
        SEIZING_RISK,
        /** Age of a tyre, in years, from which it is inspected. */
        TYRE_AGE_INSPECT,
        /** Age of a tyre, in years, at which it is replaced. */
        TYRE_AGE_REPLACE,
        /**
         * The law asks for winter tyres on any road: 1 where they carry the mountain and snowflake, 2 where M+S is enough. Studded
         * tyres are winter tyres.
         */
        WINTER_TYRES,
        /** The same only in wintry conditions, or on the roads that signs name. */
        WINTER_TYRES_IN_WINTER_CONDITIONS,
        /** The law forbids studs; the value says nothing. */
        STUDS_FORBIDDEN,
        /** The law forbids studs in one part of the place and not in another, as its citation says; the value says nothing. */
        STUDS_FORBIDDEN_IN_PART,
        /** The law sets studs no days; the value says nothing. */
        STUDS_ALLOWED;

        private static final Set<Kind> ONLY_BY_LAW = EnumSet.of(
                WINTER_TYRES,
                WINTER_TYRES_IN_WINTER_CONDITIONS,
                STUDS_FORBIDDEN,
                STUDS_FORBIDDEN_IN_PART,
                STUDS_ALLOWED);

        /** Whether only a law sets it, so that the house has no rule of its own. */
        public boolean onlyByLaw() {
            return ONLY_BY_LAW.contains(this);
        }
    }
}
