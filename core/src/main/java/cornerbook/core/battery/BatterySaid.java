package cornerbook.core.battery;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about the 12 V battery. */
public interface BatterySaid extends Said {
    /** Parts of an input, as a refusal names them. */
    enum Part implements BatterySaid {
        MEASURED_CURRENT,
        RATED_CURRENT,
        TEMPERATURE,
        VOLTAGE_UNDER_LOAD,
        VOLTAGE,
        REST,
        CAPACITY,
        HEALTH,
        STANDBY,
        CHARGE_WHEN_PARKED,
        CHARGE_BELOW,
        DISCHARGED
    }

    /** Names of steps and evidence, and where they come from. */
    enum Label implements BatterySaid {
        SHARE_OF_POWER,
        TOLD_TEMPERATURE,
        POWER_SOURCE,
        SHARE_OF_RATING,
        HEALTH_SOURCE,
        LOAD_FOR_15_S,
        HALF_OF_RATED,
        SERVICE_LITERATURE,
        TABLE_LINEAR,
        LOAD_TEST_SOURCE,
        DAYS_TO_HALF,
        PARKED_SOURCE,
        LABEL,
        CONVERSION_SOURCE,
        CONVERSION_FORMULA,
        VOLTAGE_AT_TABLE,
        PER_CELL,
        STATE_OF_CHARGE,
        SPECIFIC_GRAVITY,
        LEAST_CHARGE,
        GRAVITY_TABLE,
        FREEZES_AT,
        FREEZING_TABLE,
        AGM_TABLE,
        FLOODED_TABLE,
        VOLTAGE_AT_REST,
        AGM_TABLE_AT_27,
        EFB_BY_FLOODED_TABLE,
        FLOODED_TABLE_AT_27,
        CRANKING_CURRENT,
        CRANKING_SOURCE,
        CRANKING_WHILE_LOW,
        CRANKING_CHARGED,
        CAPACITY,
        CAPACITY_SOURCE,
        SHARE_OF_CAPACITY,
        VOLTAGE_CHARGED,
        CHARGED_SOURCE,
        STANDBY,
        BATTERY_TEMPERATURE,
        TEMPERATURE_SOURCE,
        TREND,
        PARKED_FROM_FULL,
        PARKED_FROM_THIS,
        AGE,
        AGE_SOURCE,
        FINDING_SOURCE,
        MAKERS_SOURCE
    }

    /** What to mind, and what is told the customer. */
    enum Sentence implements BatterySaid {
        REPEAT_LOAD_TEST,
        AT_THE_RESERVE,
        RANGE_NO_RATING,
        RESTED_TOO_SHORT,
        NEVER_CHARGE_FROZEN,
        DISCHARGED_FROM_FULL,
        LITHIUM_LOAD_TEST,
        LITHIUM_TABLE,
        VOLTAGE_NOT_MEASURED,
        LITHIUM_NOT_JUDGED,
        HEALTH_NOT_JUDGED,
        CAPACITY_NOT_TESTED,
        AGE_NOT_KNOWN,
        NEEDS_STANDARD,
        LOW,
        LOW_AND_WEAK,
        LOW_LITHIUM_COLD,
        TEST_AGAIN,
        TEST_WARM,
        IN_ORDER
    }

    record ChargeBeforeCondemned(RatingStandard standard) implements BatterySaid {}

    record ChargeAndTest(Amount below) implements BatterySaid {}

    record PowerAt(Amount temperature) implements BatterySaid {}

    record ShareFormula(Amount measured, Amount rated, RatingStandard standard) implements BatterySaid {}

    record LeastVoltageAt(Amount temperature) implements BatterySaid {}

    /** Conditions of the test of a standard. */
    record TestOf(RatingStandard standard) implements BatterySaid {}

    record TestAndFormula(Said test, Said formula) implements BatterySaid {}

    record RatingBy(RatingStandard standard) implements BatterySaid {}

    record LowEndBy(RatingStandard standard) implements BatterySaid {}

    record HighEndBy(RatingStandard standard) implements BatterySaid {}

    record SameStandard(RatingStandard standard) implements BatterySaid {}

    record NoConversion(RatingStandard standard, TestOf test) implements BatterySaid {}

    record HeldUp(Amount volts, Amount above) implements BatterySaid {}

    record HeldUpNow(Amount volts) implements BatterySaid {}

    record WrittenAsRested(String written) implements BatterySaid {}

    record About(Amount charge) implements BatterySaid {}

    record Cranking(Amount measured, Amount rated, RatingStandard standard, Amount health) implements BatterySaid {}

    /** The battery by what was measured of it: nothing, its voltage at rest, or the charge that this stands for too. */
    record AtRest(@Nullable Amount volts, @Nullable Amount charge) implements BatterySaid {}

    record Years(int years) implements BatterySaid {}

    record ParkedBasis(boolean electric, Amount standby, boolean measured) implements BatterySaid {}

    record MayBeFrozen(Amount freezesAt) implements BatterySaid {}

    /** Its own temperature was not read. */
    record MayBeCold(Amount outside, boolean lithium) implements BatterySaid {}

    record Capacity(Amount measured, Amount rated, Amount health) implements BatterySaid {}

    record UsualStandby(boolean electric) implements BatterySaid {}

    record DoesNotHold(boolean electric) implements BatterySaid {}

    /** The most that is usual, and the days from full to half charge. */
    record Drained(Amount current, Amount usual, int days) implements BatterySaid {}

    record LowAndDrained(Amount current, Amount usual) implements BatterySaid {}

    record EndOfLife(boolean electric) implements BatterySaid {}

    /**
     * It is to be replaced by a day.
     *
     * @param trend whether the trend says when, or the next visit
     */
    record GettingWeak(LocalDate by, boolean trend) implements BatterySaid {}

    record TestCapacity(LocalDate by) implements BatterySaid {}

    record Old(int years, LocalDate by) implements BatterySaid {}

    record ChangeAYear(Margin change, Amount error) implements BatterySaid {}

    record TrendBasis(Amount least, @Nullable LocalDate end) implements BatterySaid {}
}
