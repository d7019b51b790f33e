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
        CHARGE_WHEN_PARKED
    }

    /** Names of steps and evidence, and where they come from. */
    enum Label implements BatterySaid {
        SHARE_OF_POWER,
        TOLD_TEMPERATURE,
        WIDELY_PRINTED,
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
        AGM_TABLE,
        FLOODED_TABLE,
        VOLTAGE_AT_REST,
        AGM_TABLE_AT_27,
        EFB_BY_FLOODED_TABLE,
        FLOODED_TABLE_AT_27,
        CRANKING_CURRENT,
        CRANKING_SOURCE,
        BATTERY_TEMPERATURE,
        TEMPERATURE_SOURCE,
        TREND,
        PARKED_FROM_FULL,
        PARKED_FROM_THIS,
        PARKED_FORMULA,
        FINDING_SOURCE
    }

    /** What to mind, and what is told the customer. */
    enum Sentence implements BatterySaid {
        REPEAT_LOAD_TEST,
        AT_THE_RESERVE,
        RANGE_NO_RATING,
        RESTED_TOO_SHORT,
        CHARGE_AND_TEST,
        LITHIUM_LOAD_TEST,
        LITHIUM_TABLE,
        VOLTAGE_NOT_MEASURED,
        LITHIUM_NOT_JUDGED,
        HEALTH_NOT_JUDGED,
        NEEDS_STANDARD,
        END_OF_LIFE,
        GETTING_WEAK,
        LOW,
        IN_ORDER
    }

    record ChargeBeforeCondemned(RatingStandard standard) implements BatterySaid {}

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

    record AtRest(Amount volts, Amount charge) implements BatterySaid {}

    record ChangeAYear(Margin change, Amount error) implements BatterySaid {}

    record TrendBasis(@Nullable LocalDate end) implements BatterySaid {}
}
