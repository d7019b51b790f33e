package cornerbook.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.solvers.BisectionSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TyreCostsReferenceTest {
    private static final DriveEnergy PETROL = new DriveEnergy(EnergySource.PETROL, 1, 90, 0);

    private static TyreCost cost(double coefficient, double carriedKg, DriveEnergy energy) {
        return TyreCosts.of(
                        new TyreOffer(0, 8, 0.1, new RollingResistance(coefficient, coefficient)),
                        null,
                        new TyreUse(carriedKg, 4, 1.6),
                        energy)
                .first();
    }

    /**
     * A tenth less rolling resistance takes 1 to 2 % less fuel: Transportation Research Board, Special Report 286 (2006), of
     * passenger vehicles of which the average tyre had 10 kg/t. The car: 1600 kg and 8.5 L in 100 km, about the new cars
     * of that report's years (from memory).
     */
    @ParameterizedTest
    @CsvSource({"10, 1600, 8.5", "10, 1400, 8", "10, 2000, 11"})
    void aTenthLessRollingTakesOneToTwoPercentLessFuel(double coefficient, double carriedKg, double litresPer100Km) {
        double saved = cost(coefficient, carriedKg, PETROL).per100Km().most()
                - cost(0.9 * coefficient, carriedKg, PETROL).per100Km().most();
        assertThat(saved / litresPer100Km).isBetween(0.01, 0.02);
    }

    /**
     * By hand, with the constants of the source file: 1000 kg on 10 N/kN is 98.0665 N, along 100 km 9.80665 MJ or 2.72407 kWh at
     * the wheels; of a battery car 2.72407 / 0.8 / 0.9 = 3.78343 kWh, of petrol 2.72407 / 0.9 × 0.264 = 0.79906 L, of diesel
     * 0.66588 L.
     */
    @Test
    void energyByHand() {
        assertThat(cost(10, 1000, new DriveEnergy(EnergySource.ELECTRICITY, 1, 80, 10))
                        .per100Km()
                        .most())
                .isCloseTo(3.78343, within(1e-5));
        assertThat(cost(10, 1000, PETROL).per100Km().most()).isCloseTo(0.79906, within(1e-5));
        assertThat(cost(10, 1000, new DriveEnergy(EnergySource.DIESEL, 1, 90, 0))
                        .per100Km()
                        .most())
                .isCloseTo(0.66588, within(1e-5));
    }

    /** Commission Implementing Decision (EU) 2020/728, Annex, Table 2, litres for each kWh at the shaft. */
    @ParameterizedTest
    @CsvSource({"PETROL,0.264", "TURBO,0.280", "DIESEL,0.220"})
    void fuelForEngineWork(EnergySource source, double litres) {
        assertThat(new DriveEnergy(source, 1, 100, 0).perKwhAtWheels()).isEqualTo(litres);
    }

    /**
     * The table of Regulation (EC) 1222/2009, Annex I, part A, of whose classes 2020/740 keeps A to C; D of C1 is E there, of
     * C3 it is D. The others from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "C1,B,6.6,7.7", "C1,C,7.8,9.0", "C1,D,9.1,10.5",
        "C2,B,5.6,6.7", "C2,C,6.8,8.0", "C2,D,8.1,9.0",
        "C3,B,4.1,5.0", "C3,C,5.1,6.0", "C3,D,6.1,7.0"
    })
    void classesOfTheLabel(TyreClass tyreClass, String letter, double lowest, double highest) {
        var rolling = RollingResistance.parse(letter, tyreClass);
        assertThat(rolling.lowest()).isCloseTo(lowest, within(1e-9));
        assertThat(rolling.highest()).isEqualTo(highest);
    }

    /** Ends of A and beginnings of E, from the same table. */
    @ParameterizedTest
    @CsvSource({"C1,6.5,10.6", "C2,5.5,9.1", "C3,4.0,7.1"})
    void openClasses(TyreClass tyreClass, double endOfA, double beginningOfE) {
        assertThat(RollingResistance.parse("A", tyreClass).highest()).isEqualTo(endOfA);
        assertThat(RollingResistance.parse("E", tyreClass).lowest()).isCloseTo(beginningOfE, within(1e-9));
    }

    /** Where the two straight lines of the first tyres meet, by bisection (hipparchus-core 4.0.3). */
    @Test
    void paidBackWhereBothHaveCostAsMuch() {
        var costs = TyreCosts.of(
                new TyreOffer(150, 8, 0.13, new RollingResistance(7, 7)),
                new TyreOffer(110, 8, 0.17, new RollingResistance(10, 10)),
                new TyreUse(2100, 4, 1.6),
                new DriveEnergy(EnergySource.ELECTRICITY, 0.35, 83, 10));
        double perKm = 2100 * 9.80665 * 0.001 * 1000 / 3.6e6 / 0.83 / 0.9 * 0.35;
        double root = new BisectionSolver(1e-6)
                .solve(100, km -> 4 * 150 + 7 * perKm * km - 4 * 110 - 10 * perKm * km, 0, 37_000);
        assertThat(costs.cheaper()).isEqualTo(TyreCosts.Cheaper.FIRST);
        assertThat(costs.paidBackKm()).isCloseTo(root, within(1e-3));
    }
}
