package cornerbook.core.air.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What to set at a visit. */
class AirToSetTest {
    private static Visit visit(String tyre, String outside) {
        return Cars.visit(List.of(
                Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, Quantities.parse(tyre, "°C")),
                Cars.reading(Measure.OUTSIDE_TEMPERATURE, null, null, null, Quantities.parse(outside, "°C"))));
    }

    /**
     * Ideal gas: 35 psi gauge at 70 °F are 0.938 psi less at 60 °F (absolute pressure in proportion to absolute temperature,
     * standard atmosphere).
     */
    @Test
    void warmTyresAreSetHigher() {
        var air = AirToSet.of(Quantities.parse("34.062 psi", "kPa"), visit("70 °F", "60 °F"));
        assertThat(air.trueKpa()).isCloseTo(Quantities.parse("35 psi", "kPa"), within(0.01));
        assertThat(air.sentence()).isInstanceOfSatisfying(PressureSaid.SetTo.class, said -> {
            assertThat(said.gauge().value()).isCloseTo(241.3, within(0.05));
            assertThat(said.from()).isInstanceOfSatisfying(PressureSaid.FromTemperatures.class, from -> {
                assertThat(from.placard().value()).isCloseTo(234.8, within(0.1));
                assertThat(from.outside().value()).isCloseTo(15.6, within(0.05));
                assertThat(from.tyres().value()).isCloseTo(21.1, within(0.05));
            });
        });
    }

    @Test
    void theGaugeOfTheVisitIsCountedIn() {
        var gauge = new ShopTool("G-9", ShopTool.Kind.PRESSURE_GAUGE, "invented", 0, 700, -4, LocalDate.of(2030, 1, 1));
        var plain = visit("5 °C", "5 °C");
        var air = AirToSet.of(
                240,
                new Visit(
                        "v",
                        plain.date(),
                        plain.odometerKm(),
                        plain.arrivedOn(),
                        plain.leftOn(),
                        plain.readings(),
                        new JobCard(null, List.of(), null, null, List.of(gauge)),
                        Set.of()));
        assertThat(air.trueKpa()).isEqualTo(240);
        assertThat(air.gaugeKpa()).isEqualTo(236);
        assertThat(air.sentence())
                .isEqualTo(new PressureSaid.SetToByGauge(
                        Amount.of(236, "kPa"),
                        new PressureSaid.FromTemperatures(
                                Amount.of(240, "kPa"), Amount.of(5, "°C"), Amount.of(5, "°C")),
                        Amount.of(4, "kPa"),
                        false));
    }

    @Test
    void withoutTheTemperaturesItIsThePlacards() {
        assertThat(AirToSet.of(240, Cars.visit(List.of())).sentence())
                .isEqualTo(new PressureSaid.SetTo(Amount.of(240, "kPa"), PressureSaid.Ground.PLACARD_FOR_COLD_TYRES));
    }

    @ParameterizedTest
    @ValueSource(ints = {-40, -25, -10, 0, 15, 30})
    void theColderOutsideTheHigher(int outsideC) {
        double here = AirToSet.of(250, visit("18 °C", outsideC + " °C")).trueKpa();
        assertThat(here)
                .isGreaterThan(
                        AirToSet.of(250, visit("18 °C", (outsideC + 1) + " °C")).trueKpa());
    }
}
