package cornerbook.core.brake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.season.DistancePerDay;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ThicknessOutlookReferenceTest {
    private static final ThicknessWear INNER =
            ThicknessWear.of(WearPrior.pad(11), List.of(new WearReading(20, 9.1), new WearReading(50, 6.0)));
    private static final ThicknessWear OUTER =
            ThicknessWear.of(WearPrior.pad(11), List.of(new WearReading(20, 9.3), new WearReading(50, 6.4)));

    private static ThicknessOutlook outlook(DistancePerDay distance) {
        return new ThicknessOutlook(
                List.of(new ThicknessOutlook.Part(INNER, 50, 3), new ThicknessOutlook.Part(OUTER, 50, 3)), distance);
    }

    /** Against sampling of both pads on the same distance: the product is never more, and close where the distance is sure. */
    @Test
    void productIsALowerBoundOfWhatSamplingFinds() {
        for (double sdKm : new double[] {0, 15}) {
            for (double days : new double[] {300, 600, 800}) {
                double sampled = sampled(days, sdKm);
                double product = outlook(new DistancePerDay(45, sdKm)).probabilityHolds(days);
                assertThat(product).isLessThanOrEqualTo(sampled + 0.005);
                if (sdKm == 0) {
                    assertThat(product).isCloseTo(sampled, within(0.01));
                }
            }
        }
    }

    /** Fréchet's bounds hold for any two events. */
    @Test
    void productLiesWithinFrechetsBounds() {
        var distance = new DistancePerDay(45, 9);
        for (double days = 0; days < 1500; days += 100) {
            double inner = INNER.probabilityHolds(50, days, distance, 3);
            double outer = OUTER.probabilityHolds(50, days, distance, 3);
            assertThat(outlook(distance).probabilityHolds(days))
                    .isBetween(Math.max(0, inner + outer - 1) - 1e-12, Math.min(inner, outer) + 1e-12);
        }
    }

    @Test
    void horizonOfBothIsNotLaterThanOfEither() {
        var distance = new DistancePerDay(45, 9);
        double both = outlook(distance).horizonDays(0.9, 5000).orElseThrow();
        assertThat(both)
                .isLessThanOrEqualTo(
                        INNER.horizonDays(50, distance, 3, 0.9, 5000).orElseThrow());
        assertThat(outlook(distance).probabilityHolds(both)).isGreaterThanOrEqualTo(0.9);
        assertThat(outlook(distance).probabilityHolds(both + 0.5)).isLessThan(0.9);
    }

    private static double sampled(double days, double sdKm) {
        var random = new Random(7);
        int holds = 0;
        int draws = 200_000;
        for (int i = 0; i < draws; i++) {
            double run = 50 + days * (45 + sdKm * random.nextGaussian()) / 1000;
            holds += draw(INNER, run, random) >= 3 && draw(OUTER, run, random) >= 3 ? 1 : 0;
        }
        return (double) holds / draws;
    }

    private static double draw(ThicknessWear wear, double run, Random random) {
        double slope = wear.covariance() / (wear.rate().sd() * wear.rate().sd());
        double rest = Math.sqrt(wear.whenNew().sd() * wear.whenNew().sd()
                - slope * slope * wear.rate().sd() * wear.rate().sd());
        double z = random.nextGaussian();
        double whenNew = wear.whenNew().mean() + slope * wear.rate().sd() * z + rest * random.nextGaussian();
        return whenNew - (wear.rate().mean() + wear.rate().sd() * z) * run;
    }
}
