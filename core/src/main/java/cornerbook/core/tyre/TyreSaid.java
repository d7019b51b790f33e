package cornerbook.core.tyre;

import cornerbook.core.quantity.AboutPart;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import cornerbook.core.torque.Seat;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about a tyre's sidewall, its rim and its hub. */
public interface TyreSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements TyreSaid {
        TYRE_SIZE,
        SECTION_WIDTH,
        ASPECT_RATIO,
        RIM_DIAMETER_CODE,
        LOAD_INDEX,
        TWIN_LOAD_INDEX,
        SPEED_SYMBOL,
        TIN,
        WEEK,
        INSPECT_AGE,
        REPLACE_AGE,
        TREAD_WORN,
        TYRES,
        CIRCUMFERENCE_LIMIT,
        TREAD_LIMIT,
        SPEED_SHOWN,
        RIM_WIDTH,
        MOUNTING,
        HOLES,
        BOLT_CIRCLE,
        CENTRE_BORE,
        OFFSET,
        CALIPER_GAP
    }

    /** Parts of a size designation, with an example. */
    enum SizePart implements TyreSaid {
        SECTION_WIDTH,
        SLASH,
        ASPECT_RATIO,
        CONSTRUCTION,
        RIM_DIAMETER_CODE,
        LOAD_INDEX,
        TWIN_LOAD_INDEX
    }

    /** What is computed. */
    enum Computed implements TyreSaid {
        RIM_DIAMETER,
        SECTION_HEIGHT,
        OVERALL_DIAMETER,
        ROLLING_CIRCUMFERENCE,
        TURNS_PER_KM,
        MEASURING_RIM,
        NARROWEST_RIM,
        WIDEST_RIM,
        THEORETICAL_RIM,
        SECTION_WIDTH_ON_MEASURING_RIM,
        SECTION_WIDTH_ON_RIM,
        REFERENCE_PRESSURE,
        CAPACITY,
        TWIN_CAPACITY,
        HIGHEST_SPEED,
        CAPACITY_AT_SPEED,
        PLACARD_DIAMETER,
        OTHER_DIAMETER,
        CIRCUMFERENCE_DIFFERENCE,
        TREAD_DIFFERENCE,
        TRUE_SPEED,
        LEAST_AGE,
        WEEK_OF_MANUFACTURE,
        AGE,
        INSPECTED_FROM,
        REPLACED_AT,
        INNER_EDGE,
        OUTER_EDGE,
        HUB_RING
    }

    /** How it is computed, where no number goes in. */
    enum Way implements TyreSaid {
        LARGEST_LESS_SMALLEST,
        MOST_LESS_LEAST,
        OTHER_BY_PLACARD,
        THREE_DIGITS,
        INNER_EDGE,
        OUTER_EDGE,
        HUB_RING
    }

    /** Where it comes from. */
    enum Origin implements TyreSaid {
        GEOMETRY,
        OFFSET_GEOMETRY,
        AS_MEASURED,
        FROM_MAKER,
        ROLLING_AND_WEAR,
        ROLLING,
        ROLLING_FACTOR,
        TURNS_OF_WHEEL,
        RIM_SHARES,
        THEORETICAL_RIM,
        WIDTH_BY_RIM,
        SECTION_WIDTH_LIGHT_TRUCK,
        LIGHT_TRUCK_SHEETS,
        EXTRA_LOAD_FROM_MEMORY,
        PUBLISHED_PRESSURES,
        SPEED_SYMBOLS,
        LOAD_VARIATION,
        LOAD_VARIATION_FROM_MEMORY,
        LOAD_INDICES,
        PUBLISHED_LOAD_INDICES,
        DATE_CODE,
        FOUR_DIGITS_SINCE_2000,
        CALENDAR
    }

    /** What to mind. */
    enum Caution implements TyreSaid {
        TYRES_DIFFER,
        RIM_COMES_NEARER,
        SPEEDOMETER_SHOWS_LESS,
        SERVICE_NOT_JUDGED,
        SERVICE_NOT_KNOWN,
        OTHER_TABLES,
        REPLACE,
        LOOK_FOR_CRACKS,
        MADE_BEFORE_2000
    }

    /** A size, and what of it cannot be read. */
    record SizeUnread(Quoted written, Said why) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TYRE_SIZE;
        }
    }

    /** What stands where another part is needed; null where the size ends. */
    record SizeNeeds(@Nullable Quoted found, SizePart needed) implements TyreSaid {}

    record ExtraLoadBeside(String mark) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TYRE_SIZE;
        }
    }

    record CommercialBeside(String use) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TYRE_SIZE;
        }
    }

    record SecondIndexBeside(int index, String mark) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TYRE_SIZE;
        }
    }

    record TwinAboveSingle(int twin, int single) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TWIN_LOAD_INDEX;
        }
    }

    record NoSpeedSymbol(Quoted written, String known) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.SPEED_SYMBOL;
        }
    }

    record NoTin(Quoted written, int longest) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TIN;
        }
    }

    record TinWithoutDate(Quoted written) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TIN;
        }
    }

    record NoDateCode(Quoted written) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TIN;
        }
    }

    /** No week of a year, in two digits as it is moulded. */
    record NoWeek(String week) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.WEEK;
        }
    }

    record MadeLater(String code, LocalDate week, LocalDate day) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TIN;
        }
    }

    record NoMounting(Quoted written) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.MOUNTING;
        }
    }

    record OtherSizes(String first, String last) implements TyreSaid, AboutPart {
        @Override
        public Said what() {
            return Input.TREAD_LIMIT;
        }
    }

    record CircumferenceOf(String size) implements TyreSaid {}

    record BoltCircleDiffers(int wheelHoles, Amount wheelCircle, int hubHoles, Amount hubCircle) implements TyreSaid {}

    record BoreTooSmall(Amount wheel, Amount hub) implements TyreSaid {}

    record ThreadDiffers(String wheel, String hub) implements TyreSaid {}

    record CaliperTooNear(Amount gap, Amount least) implements TyreSaid {}

    record SeatDiffers(Seat wheel, Seat hub) implements TyreSaid {}

    record NeedsHubRing(Between ring) implements TyreSaid {}

    record LoadIndexBelow(int other, int placard) implements TyreSaid {}

    record SpeedSymbolBelow(String other, String placard) implements TyreSaid {}

    record RimOutside(Amount rim, Between permitted) implements TyreSaid {}

    /** What makers ask of temporary spares. */
    record TemporarySpare(Amount pressure, Amount speed) implements TyreSaid {}

    record LightTruckNotListed(String size) implements TyreSaid {}

    record OtherLoadRange(String size, int index) implements TyreSaid {}

    record UnusualLetters(String letters) implements TyreSaid {}

    record ShareToHalfInch(Amount share) implements TyreSaid {}

    record SymbolIs(String symbol) implements TyreSaid {}

    record LoadIndexIs(int index) implements TyreSaid {}

    record CapacityTimes(Amount share) implements TyreSaid {}

    record ShownTimes(Amount shown) implements TyreSaid {}

    /** A date code read; the year as it is written, for nobody parts its thousands. */
    record WeekOfYear(String code, int week, String year) implements TyreSaid {}

    record DaysBetween(LocalDate from, LocalDate until) implements TyreSaid {}

    record HouseRule(Said citation) implements TyreSaid {}
}
