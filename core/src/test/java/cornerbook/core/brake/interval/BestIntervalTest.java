package cornerbook.core.brake.interval;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.interval.IntervalSaid.Caution;
import cornerbook.core.brake.seizing.SaltClock;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BestIntervalTest {
    private static final LocalDate AUTUMN = LocalDate.of(2026, 10, 20);
    private static final SeizingHazard HAZARD = SeizingHazard.learn(List.of());
    private static final double RISK = 0.2;

    private static BestInterval of(double service, double seized, double salt, @Nullable LocalDate since) {
        return BestInterval.of(
                HAZARD,
                new SeizingExposure(salt, false, 15_000, 0.3),
                8,
                new ServicePrices(service, seized),
                RISK,
                since);
    }

    private static double months(BestInterval interval) {
        return Objects.requireNonNull(interval.least().months());
    }

    @Test
    void dearerSeizingAndMoreSaltShortenIt() {
        double usual = months(of(140, 420, 0.4, null));
        assertThat(months(of(140, 900, 0.4, null))).isLessThan(usual);
        assertThat(months(of(140, 900, 0.8, null))).isLessThan(months(of(140, 900, 0.4, null)));
        assertThat(months(of(200, 420 * 200 / 140.0, 0.4, null)))
                .as("only the ratio of the prices counts")
                .isCloseTo(usual, within(1e-3));
    }

    @Test
    void noneWhereASeizedPadCostsHardlyMore() {
        var interval = of(140, 20, 0.4, AUTUMN);
        assertThat(interval.least().months()).isNull();
        assertThat(interval.least().due()).isNull();
        assertThat(interval.risk().due()).isNotNull();
    }

    @Test
    void costsLeastThere() {
        var interval = of(140, 420, 0.4, null);
        assertThat(interval.course())
                .allSatisfy(point -> assertThat(point.costPerYear())
                        .isGreaterThanOrEqualTo(interval.least().costPerYear()));
        assertThat(interval.yearlyCostPerYear())
                .isGreaterThanOrEqualTo(interval.least().costPerYear());
        assertThat(interval.least().nearFrom()).isLessThan(months(interval));
        assertThat(interval.least().nearTo()).isGreaterThan(months(interval));
    }

    /** Cleaned in autumn, a winter uses up nine tenths of a year's months. */
    @Test
    void theDayIsThatOfTheSaltClock() {
        var interval = of(140, 420, 0.4, AUTUMN);
        var due = Objects.requireNonNull(interval.least().due());
        assertThat(SaltClock.months(AUTUMN, due)).isGreaterThanOrEqualTo(months(interval));
        assertThat(SaltClock.months(AUTUMN, due.minusDays(1))).isLessThan(months(interval));
        // By hand: 12 days of October count 0.067, 9 months need 125 days of winter more.
        assertThat(BestInterval.dayAt(AUTUMN, 9)).isEqualTo(LocalDate.of(2027, 3, 7));
    }

    @Test
    void tellsWhereTheCheapestIsNotWhatTheFindingsTake() {
        var cheap = of(140, 420, 0.4, null);
        assertThat(cheap.least().chance()).isGreaterThan(RISK);
        assertThat(cheap.cautions()).contains(Caution.CHANCE_IS_HIGH);
        var dear = of(100, 2500, 0.4, null);
        assertThat(dear.least().chance()).isLessThan(RISK);
        assertThat(dear.cautions()).doesNotContain(Caution.CHANCE_IS_HIGH);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new ServicePrices(0, 10)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> BestInterval.of(
                        HAZARD,
                        new SeizingExposure(0.4, false, 15_000, 0.3),
                        17,
                        new ServicePrices(140, 420),
                        RISK,
                        null))
                .isInstanceOf(Refused.class);
    }
}
