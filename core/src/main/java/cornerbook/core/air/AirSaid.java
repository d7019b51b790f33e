package cornerbook.core.air;

import cornerbook.core.quantity.AboutPart;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.Month;

/** What is said about the air in tyres and its sensors. */
public interface AirSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements AirSaid {
        ALTITUDE,
        PRESSURE_READ,
        TYRE_TEMPERATURE,
        DAYS_BETWEEN,
        GAUGE_ERROR,
        GAUGE_OFFSET,
        AXLE_LOAD,
        HEAVIER_SHARE,
        REFERENCE_PRESSURE,
        LOAD_EXPONENT,
        PLACARD_PRESSURE,
        COLDEST_MORNING,
        STANDING_TEMPERATURE,
        MAXIMUM_PRESSURE,
        PRESSURE_TO_SET,
        PRESSURE_SET,
        MONTHS_AHEAD,
        MONTH_MEAN,
        MONTH_MORNING_MEAN,
        SENSOR_PRESSURE,
        GAUGE_PRESSURE,
        SENSOR_TEMPERATURE,
        SENSOR_BATTERY
    }

    /** What is computed. */
    enum Computed implements AirSaid {
        LOSS_IN_30_DAYS,
        LOAD_ON_HEAVIER_TYRE,
        PRESSURE_NEEDED,
        CAPACITY_AT_PLACARD,
        AIR_HERE,
        AIR_THERE,
        PRESSURE_NOW,
        SHOWN_BY_GAUGE,
        COLDEST_MORNING,
        WARNING_BELOW,
        WARNING_MARGIN,
        MARGIN_ERROR,
        SENSOR_BATTERY_AGE,
        SENSOR_AT_TYRE_TEMPERATURE,
        SENSOR_LESS_GAUGE,
        SENSORS_TO_LEARN
    }

    /** How it is computed, where no number goes in. */
    enum Way implements AirSaid {
        COLDEST_LESS_WARNING,
        NO_SENSOR,
        A_SENSOR_IN_EACH
    }

    /** Where it comes from. */
    enum Origin implements AirSaid {
        IDEAL_GAS,
        IDEAL_GAS_AND_AIR,
        STANDARD_AIR,
        GAUGE_AGAINST_MASTER,
        DIFFERENCE,
        AS_TYPED,
        SENSOR_LIFE,
        MAKERS_PROCEDURE
    }

    /** What to mind. */
    enum Caution implements AirSaid {
        SLOW_LEAK,
        NOT_TOLD_APART,
        PLACARD_UNDER_NEED,
        WARM_TYRE,
        WARNING_WILL_COME,
        WARNING_MAY_COME,
        SENSOR_ENDS,
        SENSOR_OFF,
        SENSOR_USELESS
    }

    /** What a car needs after other wheels went on. */
    enum ToLearn implements AirSaid {
        RESET,
        LOOK_UP,
        BY_ITSELF,
        BY_TOOL,
        BY_DRIVING
    }

    record ComparedReading(boolean second, Amount at) implements AirSaid {}

    record LossFormula(Amount days, Amount error) implements AirSaid {}

    record UsualLoss(Amount usual) implements AirSaid {}

    record AxleShare(Amount axle, Amount share) implements AirSaid {}

    record CapacityOfIndex(int index) implements AirSaid {}

    record CapacityFormula(Amount pressure) implements AirSaid {}

    record LoadRelation(Amount exponent) implements AirSaid {}

    record LoadAboveIndex(Amount load, Amount capacity, int index) implements AirSaid, AboutPart {
        @Override
        public Said what() {
            return Input.AXLE_LOAD;
        }
    }

    record AtAltitude(Amount altitude) implements AirSaid {}

    /** Where {@code zero} is that of the Celsius scale, K, as in the other formulas. */
    record PressureNowFormula(Amount placard, Amount tyre, Amount standing, Amount zero) implements AirSaid {}

    record ShownFormula(Amount offset, Amount error) implements AirSaid {}

    /** Where {@code room} is the temperature of a room in which the tyre would have that pressure. */
    record AboveMaximum(Amount pressure, Amount room, Amount maximum) implements AirSaid, AboutPart {
        @Override
        public Said what() {
            return Input.PRESSURE_TO_SET;
        }
    }

    record MonthName(Month month) implements AirSaid {}

    record MonthReading(MonthName month, boolean morning) implements AirSaid {}

    record ReadingAt(Amount temperature) implements AirSaid {}

    record SeasonFormula(Amount set, Amount there, Amount then, Amount zero, Amount altitude) implements AirSaid {}

    record WarningFormula(Amount share, Amount placard) implements AirSaid {}

    record MarginErrorFormula(Amount error) implements AirSaid {}

    record UnderPlacard(Amount under) implements AirSaid {}

    record BatteryOfLaterDay(LocalDate since, LocalDate day) implements AirSaid, AboutPart {
        @Override
        public Said what() {
            return Input.SENSOR_BATTERY;
        }
    }

    record DaysSince(LocalDate since) implements AirSaid {}

    record SensorAccuracy(Between accurate) implements AirSaid {}

    record SensorWarningFormula(Amount share, Amount placard) implements AirSaid {}
}
