package cornerbook.core.tread.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where the search ends does not depend on where it began, and no place beside it is likelier. */
class SearchPropertyTest {
    /** Of the parameters, in standard errors. */
    private static final double SAME = 0.005;

    private static final WearPrior PRIOR = WearPrior.about(WearParameters.defaults(DriveLayout.ALL));

    @Test
    void beginningWithFewCarsEndsWhereAllEnd() {
        var histories = cars(400, 0);
        var fromFew = WearLearner.learn(histories, PRIOR);
        var cars = AlikeCars.of(histories, PRIOR.centre());
        var learner = new WearLearner(cars, PRIOR);
        var fromAll = learner.learned(learner.maximise(learner.centre()));
        assertThat(fromFew.cars()).isEqualTo(400);
        for (var parameter : WearParameter.values()) {
            double error = Objects.requireNonNull(fromAll.standardErrors().get(parameter));
            assertThat(parameter.onScale(fromFew.parameters().of(parameter)))
                    .as(parameter.name())
                    .isCloseTo(parameter.onScale(fromAll.parameters().of(parameter)), within(SAME * error));
        }
    }

    /** Treads that wear many times slower when worn: the slowing stands at the most that it may be. */
    @Test
    void whatWouldPassItsBoundStandsThere() {
        var cars = AlikeCars.of(cars(60, 4), PRIOR.centre());
        var found = new WearLearner(cars, PRIOR).maximise().at();
        int slowing = WearParameter.SLOWING.ordinal();
        var centre = LearningScale.place(PRIOR.centre());
        assertThat(found[slowing]).isCloseTo(0.45, within(1e-9));
        double there = penalised(cars, found, centre);
        for (int i = 0; i < found.length; i++) {
            for (double step : new double[] {-0.02, 0.02}) {
                if (i == slowing && step > 0) {
                    continue;
                }
                var beside = found.clone();
                beside[i] += step;
                assertThat(penalised(cars, beside, centre))
                        .as("%s %s", LearningScale.parameter(i), step)
                        .isLessThan(there);
            }
        }
    }

    private static double penalised(AlikeCars cars, double[] at, double[] centre) {
        double log = cars.sums(at).log();
        for (int i = 0; i < at.length; i++) {
            double off = (at[i] - centre[i]) / PRIOR.spread(LearningScale.parameter(i));
            log -= off * off / 2;
        }
        return log;
    }

    /**
     * Invented cars, of which every fifth came used and every seventh was read less than whole.
     *
     * @param fading power of the depth with which wear gets less; 0 where it does not
     */
    private static List<WearHistory> cars(int count, double fading) {
        var random = new SplittableRandom(77);
        return IntStream.range(0, count)
                .mapToObj(car -> car(car, fading, random))
                .toList();
    }

    private static WearHistory car(int number, double fading, SplittableRandom random) {
        double rate = (fading > 0 ? 0.4 : 0.17) * Math.exp(0.3 * random.nextGaussian());
        var ofCorner = random.doubles(4).map(d -> rate * (1 + 0.4 * (d - 0.5))).toArray();
        var readings = new ArrayList<TreadReading>();
        for (int tyre = 0; tyre < 4; tyre++) {
            var run = CornerDistances.NONE;
            double depthMm = 8 + 0.2 * random.nextGaussian();
            for (int visit = 0; visit < 3; visit++) {
                var corner = Corner.values()[(tyre + 2 * visit) % 4];
                double thousandKm = 4 + 3 * random.nextDouble();
                run = run.plus(visit, corner, thousandKm);
                depthMm -= thousandKm * ofCorner[corner.ordinal()] * Math.pow(depthMm / 8, fading);
                for (var groove : Spot.values()) {
                    if (number % 7 == 3 && visit == 1 && groove != Spot.CENTRE) {
                        continue;
                    }
                    double readMm = depthMm + 0.3 * (random.nextDouble() - 0.5);
                    readings.add(new TreadReading(visit, tyre, groove, run, Math.clamp(readMm, 0.1, 25)));
                }
            }
        }
        var start = number % 5 == 4 ? NewDepth.unknown(8) : NewDepth.stated(8);
        return new WearHistory(
                "invented-" + number,
                DriveLayout.ALL,
                SeasonKind.WINTER,
                null,
                Collections.nCopies(4, start),
                readings);
    }
}
