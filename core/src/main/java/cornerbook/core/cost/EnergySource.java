package cornerbook.core.cost;

import cornerbook.core.say.Said;

/**
 * What a car takes its energy from.
 *
 * <p>What more work of an engine takes in fuel is what counts here, not what its idling takes: the litres for each kWh more at the
 * shaft of Commission Implementing Decision (EU) 2020/728, Annex, Table 2.
 */
public enum EnergySource implements Said {
    ELECTRICITY("kWh", 1, 83),
    PETROL("L", 0.264, 90),
    TURBO("L", 0.280, 90),
    DIESEL("L", 0.220, 90);

    private final String unit;
    private final double perKwhAtShaft;
    private final double usualDriveEfficiencyPercent;

    EnergySource(String unit, double perKwhAtShaft, double usualDriveEfficiencyPercent) {
        this.unit = unit;
        this.perKwhAtShaft = perKwhAtShaft;
        this.usualDriveEfficiencyPercent = usualDriveEfficiencyPercent;
    }

    /** In which it is sold. */
    public String unit() {
        return unit;
    }

    double perKwhAtShaft() {
        return perKwhAtShaft;
    }

    /**
     * What of the energy of the battery, or of the work of the engine, comes to the wheels where it is not known: of a battery
     * car 75 of the 90 parts that charging leaves, on the highway (US Department of Energy, fueleconomy.gov, "Where the energy
     * goes: electric cars"); of gears and shafts behind an engine 90 %, common practice, no source.
     */
    public double usualDriveEfficiencyPercent() {
        return usualDriveEfficiencyPercent;
    }
}
