package cornerbook.core.air.judge;

import cornerbook.core.air.AirSaid;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about the pressure of a car's tyres and about its sensors. */
public interface PressureSaid extends Said {
    /** Names of evidence. */
    enum Label implements PressureSaid {
        AIR_LOSS,
        FOUND,
        WARNING_AT,
        WARNING_ABOUT,
        SET,
        PLACARD_COLD,
        TO_BE_SET,
        ABOVE_WARNING,
        BATTERY_SINCE,
        GAUGE,
        SENSOR,
        SENSOR_AT_TYRES,
        WARNING_WOULD_COME
    }

    /** How it was come by, and where limits come from. */
    enum Ground implements PressureSaid {
        PLACARD_FOR_COLD_TYRES,
        QUARTER_BELOW_COLD,
        QUARTER_BELOW,
        QUARTER_BELOW_RULE,
        SET_NOW,
        SPECIFICATION,
        TEMPERATURE_NOT_READ,
        COLD_MORNING
    }

    record LossWithError(Amount loss, Amount error) implements PressureSaid {}

    record LossBetween(Amount set, LocalDate since, Amount found, Amount comparedAt, Amount usual)
            implements PressureSaid {}

    record FromTemperatures(Amount placard, Amount outside, Amount tyres) implements PressureSaid {}

    record SetTo(Amount gauge, Said from) implements PressureSaid {}

    record SetToByGauge(Amount gauge, Said from, Amount offset, boolean tooMuch) implements PressureSaid {}

    /** While the gauge is in the hand. */
    record SetAgain(Amount gauge) implements PressureSaid {}

    record NotSet(Corner corner, String tag) implements PressureSaid {}

    record CameLow(String tag, Amount found, Amount placard) implements PressureSaid {}

    record CameLowPlain(Corner corner) implements PressureSaid {}

    record SlowLeak(String tag, Amount loss) implements PressureSaid {}

    record SlowLeakPlain(Corner corner) implements PressureSaid {}

    record LeakSource(Amount usual) implements PressureSaid {}

    record SetFor(Corner corner, Amount set, Amount asked, Amount placard) implements PressureSaid {}

    record SetAgainst(Corner corner, Amount set, Amount placard) implements PressureSaid {}

    record SetRight(Corner corner) implements PressureSaid {}

    record SetWrong(Corner corner) implements PressureSaid {}

    record SetSource(Amount tolerance) implements PressureSaid {}

    record ByGas(Said from) implements PressureSaid {}

    record ToExpect(Amount coldest) implements PressureSaid {}

    record GasFrom(Amount set, Said coldest) implements PressureSaid {}

    record ColdestOf(String place) implements PressureSaid {}

    record HasToLearn(AirSaid.ToLearn toDo) implements PressureSaid {}

    record BatteryAge(String tag, Amount years) implements PressureSaid {}

    record BatteryEnds(Corner corner) implements PressureSaid {}

    record BatteryHolds(Corner corner) implements PressureSaid {}

    /** What is known of a sensor; null where its identity or its type is not. */
    record SensorOf(@Nullable String id, @Nullable String type) implements PressureSaid {}

    record GasBetween(Amount from, Amount to) implements PressureSaid {}

    record QuarterBelowLess(Amount placard) implements PressureSaid {}

    record SensorAgainstGauge(String tag, Margin difference) implements PressureSaid {}

    record SensorRight(Corner corner) implements PressureSaid {}

    record SensorOff(Corner corner) implements PressureSaid {}

    record SensorUseless(Corner corner) implements PressureSaid {}

    record SensorSource(Said accuracy) implements PressureSaid {}
}
