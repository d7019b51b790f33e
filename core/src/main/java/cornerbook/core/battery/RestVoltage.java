package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Part;
import cornerbook.core.battery.BatterySaid.Sentence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * State of charge from the voltage at rest. Flooded and EFB: BCI table for 26.7 °C (80 °F). AGM: a vehicle maker's table,
 * 12.8 V 100 %, 12.6 V 75 %, 12.3 V 50 %, 12.0 V 25 %; its end, 11.8 V 0 %, from memory. The voltage is brought to the
 * table's temperature by 1.2 mV per kelvin (0.2 mV per cell, from memory; published corrections have the same sign and are
 * larger). Good to about ±10 % of charge after a rest of four hours and more (common practice, no source). EFB rests a little
 * higher than flooded, so its charge may be lower.
 *
 * @param atTableTemperatureV voltage brought to 26.7 °C
 * @param stateOfCharge 0 to 1
 * @param freezesAtC temperature at which its acid freezes with the least charge that the voltage may stand for
 */
public record RestVoltage(
        Chemistry chemistry,
        double volts,
        double temperatureC,
        double restHours,
        double atTableTemperatureV,
        double stateOfCharge,
        double freezesAtC,
        Explanation explanation)
        implements Explained {
    private static final double[] AGM_VOLTS = {11.8, 12.0, 12.3, 12.6, 12.8};
    private static final double TABLE_C = 26.7;
    private static final double VOLTS_PER_KELVIN = 0.0012;
    private static final double REST_ENOUGH_HOURS = 4;
    /** Flooded and EFB: charged and tested again under this (vehicle makers' and battery makers' manuals). */
    private static final double CHARGE_BELOW_V = 12.4;
    /** AGM needs a charge under this (a vehicle maker's AGM table). */
    private static final double CHARGE_AGM_BELOW_V = 12.6;
    /** How far the charge may be off, either way (common practice, no source). */
    public static final double ERROR_SHARE = 0.10;

    /**
     * The state of charge.
     *
     * @param volts above 8 V, not above {@link StateOfCharge#HELD_UP_VOLTS}
     * @param temperatureC of the battery, −40 to 60 °C
     * @param restHours since charger, converter or drive, 0 to 1000 h
     * @throws IllegalArgumentException with the reason when the voltage says nothing about the charge
     */
    public static RestVoltage of(Chemistry chemistry, double volts, double temperatureC, double restHours) {
        check(Part.TEMPERATURE, temperatureC, -40, 60, "°C");
        check(Part.REST, restHours, 0, 1000, "h");
        if (!chemistry.isLead()) {
            throw new Refused(Sentence.LITHIUM_TABLE);
        }
        if (volts > StateOfCharge.HELD_UP_VOLTS) {
            throw new Refused(new BatterySaid.HeldUp(
                    Amount.significant(volts, "V", 4), Amount.significant(StateOfCharge.HELD_UP_VOLTS, "V", 4)));
        }
        check(Part.VOLTAGE, volts, 8, StateOfCharge.HELD_UP_VOLTS, "V");
        double atTableV = Math.min(atTableTemperatureV(volts, temperatureC), StateOfCharge.HELD_UP_VOLTS);
        double charge = chargeAtTableTemperature(chemistry, atTableV);
        var cautions = new ArrayList<Said>();
        if (restHours < REST_ENOUGH_HOURS) {
            cautions.add(Sentence.RESTED_TOO_SHORT);
        }
        double freezesAtC = freezesAtC(charge);
        if (temperatureC <= freezesAtC) {
            cautions.add(Sentence.NEVER_CHARGE_FROZEN);
        }
        if (atTableV < chargeBelowV(chemistry)) {
            cautions.add(new BatterySaid.ChargeAndTest(Amount.exact(chargeBelowV(chemistry), "V")));
        }
        return new RestVoltage(
                chemistry,
                volts,
                temperatureC,
                restHours,
                atTableV,
                charge,
                freezesAtC,
                new Explanation(
                        cautions,
                        List.of(
                                new Step(
                                        Label.VOLTAGE_AT_TABLE,
                                        Formula.of(
                                                "U − 1.2 mV/K × ({} − 26.7) K",
                                                Amount.significant(temperatureC, "", 4)),
                                        atTableV,
                                        "V",
                                        Label.PER_CELL),
                                new Step(
                                        Label.STATE_OF_CHARGE,
                                        Label.TABLE_LINEAR,
                                        charge * 100,
                                        "%",
                                        chemistry == Chemistry.AGM ? Label.AGM_TABLE : Label.FLOODED_TABLE),
                                new Step(
                                        Label.SPECIFIC_GRAVITY,
                                        Label.LEAST_CHARGE,
                                        Electrolyte.specificGravity(leastCharge(charge)),
                                        "",
                                        Label.GRAVITY_TABLE),
                                new Step(
                                        Label.FREEZES_AT,
                                        Label.TABLE_LINEAR,
                                        freezesAtC,
                                        "°C",
                                        Label.FREEZING_TABLE))));
    }

    /**
     * The voltage at 26.7 °C under which a lead-acid battery is charged before anything else is said of it. The limits stand in
     * manuals beside tables for 80 °F, so that the voltage is brought there before it is compared: read in the cold it is too low.
     */
    public static double chargeBelowV(Chemistry chemistry) {
        return chemistry == Chemistry.AGM ? CHARGE_AGM_BELOW_V : CHARGE_BELOW_V;
    }

    /** Temperature at which the acid freezes with the least charge that a charge found by voltage, 0 to 1, may be. */
    public static double freezesAtC(double charge) {
        return Electrolyte.freezesAtC(Electrolyte.specificGravity(leastCharge(charge)));
    }

    private static double leastCharge(double charge) {
        return Math.max(0, charge - ERROR_SHARE);
    }

    /** The voltage that a battery of {@code temperatureC} would have at 26.7 °C. */
    public static double atTableTemperatureV(double volts, double temperatureC) {
        return volts - VOLTS_PER_KELVIN * (temperatureC - TABLE_C);
    }

    /**
     * State of charge by the table of a lead-acid chemistry, at 26.7 °C.
     *
     * @param volts at rest, 0 to {@link StateOfCharge#HELD_UP_VOLTS}
     * @return 0 to 1
     */
    public static double chargeAtTableTemperature(Chemistry chemistry, double volts) {
        return chemistry == Chemistry.AGM
                ? StateOfCharge.interpolate(AGM_VOLTS, volts)
                : StateOfCharge.ofFloodedLeadAcid(volts);
    }
}
