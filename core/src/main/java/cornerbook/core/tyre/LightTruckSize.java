package cornerbook.core.tyre;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is published of one light-truck size: rims, load and the pressure for that load. Light-truck tyres carry their load at
 * far higher pressures than passenger tyres, and less than the load index says (120 is 1400 kg, the sidewall has 3042 lb).
 * Source: two data sheets of a tyre maker; where they differ, the narrower range of rims. The sidewall outranks it.
 *
 * @param loadIndex of the load range that is listed, for single fitting
 * @param lowestRimCode in inches, as the other rim codes
 * @param singleLb load printed for one tyre
 * @param twinLb for each of two side by side; null when it is not printed
 * @param psi gauge pressure for these loads
 */
record LightTruckSize(
        String designation,
        int loadIndex,
        double lowestRimCode,
        double measuringRimCode,
        double highestRimCode,
        int singleLb,
        @Nullable Integer twinLb,
        int psi) {
    private static final double KG_PER_LB = 0.45359237;
    private static final double KPA_PER_PSI = 6.894757293168;

    private static final List<LightTruckSize> LISTED = List.of(
            new LightTruckSize("LT235/85R16", 120, 6, 6.5, 7.5, 3042, 2778, 80),
            new LightTruckSize("LT245/75R16", 120, 6.5, 7, 8, 3042, 2778, 80),
            new LightTruckSize("LT255/85R16", 123, 6.5, 7, 8, 3415, 3085, 80),
            new LightTruckSize("LT265/75R16", 123, 7, 7.5, 8, 3415, 3085, 80),
            new LightTruckSize("LT285/75R16", 126, 7.5, 8, 9, 3750, 3415, 80),
            new LightTruckSize("LT305/70R16", 124, 8, 9, 9.5, 3525, 3195, 65),
            new LightTruckSize("LT315/75R16", 127, 8, 8.5, 10, 3860, 3525, 65),
            new LightTruckSize("LT385/70R16", 130, 10, 11, 12, 4190, null, 50),
            new LightTruckSize("LT255/75R17", 111, 6.5, 7, 8.5, 2405, 2205, 50));

    /** The row of a size, whatever its load range: rims do not depend on it. */
    static Optional<LightTruckSize> find(TyreSize size) {
        return LISTED.stream()
                .filter(row -> row.designation.equals(size.designation()))
                .findFirst();
    }

    /** The row of a size in the load range of an index; another range carries another load. */
    static Optional<LightTruckSize> find(TyreSize size, LoadIndex index) {
        return find(size).filter(row -> row.loadIndex == index.number());
    }

    double capacityKg() {
        return singleLb * KG_PER_LB;
    }

    @Nullable
    Double twinCapacityKg() {
        return twinLb == null ? null : twinLb * KG_PER_LB;
    }

    double pressureKpa() {
        return psi * KPA_PER_PSI;
    }
}
