package cornerbook.core.cost;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.cost.CostSaid.Input;

/**
 * What work at the wheels costs.
 *
 * @param price of one kWh or litre, 0 to 1 000 000
 * @param driveEfficiencyPercent of what battery or engine gives, the share that comes to the wheels, 50 to 100 %
 * @param chargingLossPercent of what is paid, the share that does not come into the battery, 0 to 50 %; no matter for fuel
 */
public record DriveEnergy(
        EnergySource source, double price, double driveEfficiencyPercent, double chargingLossPercent) {
    /** On the highway: US Department of Energy, fueleconomy.gov, "Where the energy goes: electric cars". */
    public static final double USUAL_CHARGING_LOSS_PERCENT = 10;

    static final double PERCENT = 100;

    public DriveEnergy {
        check(Input.ENERGY_PRICE, price, 0, 1_000_000, "");
        check(Input.DRIVE_EFFICIENCY, driveEfficiencyPercent, 50, 100, "%");
        check(Input.CHARGING_LOSS, chargingLossPercent, 0, 50, "%");
    }

    /** What is paid for each kWh at the wheels, in kWh or litres. */
    double perKwhAtWheels() {
        double atShaft = PERCENT / driveEfficiencyPercent;
        return source == EnergySource.ELECTRICITY
                ? atShaft / (1 - chargingLossPercent / PERCENT)
                : atShaft * source.perKwhAtShaft();
    }
}
