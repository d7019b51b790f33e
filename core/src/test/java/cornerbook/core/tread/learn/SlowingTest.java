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
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On invented cars that slow down by what is known: it is found, whatever else they do that the model does not know. */
class SlowingTest {
    private static final double NEW_MM = 8.5;
    private static final WearParameters START = WearParameters.defaults(DriveLayout.ALL);
    private static final WearPrior PRIOR = WearPrior.about(START);

    /** Within three standard errors; with a factor on each later season that differs by car as well. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.3, 0", "-0.2, 0", "0, 0.35", "0.3, 0.35"})
    void isFoundWhereverDriversChange(double slowing, double change) {
        var found = find(cars(150, slowing, change, 1));
        assertThat(found.value()).isCloseTo(slowing, within(3 * found.standardError()));
        assertThat(found.standardError()).isBetween(0.005, 0.1);
    }

    /** What the likelihood of the effective depths makes of the same cars: it asks for readings that scatter alike. */
    @Test
    void theLikelihoodIsLedAstrayByWhatScattersMoreOnWornTreads() {
        var cars = AlikeCars.of(cars(150, 0.3, 0.35, 1), START);
        var likeliest =
                LearningScale.parameters(new WearLearner(cars, PRIOR).maximise().at());
        assertThat(likeliest.of(WearParameter.SLOWING)).isLessThan(0.22);
    }

    @Test
    void ofFewCarsThePriorStands() {
        var found = find(cars(9, 0.3, 0, 2));
        assertThat(found.value()).isEqualTo(START.of(WearParameter.SLOWING));
        assertThat(found.standardError()).isEqualTo(PRIOR.spread(WearParameter.SLOWING));
    }

    /** Cars of two kinds are added up. */
    @Test
    void isOneOfAllKinds() {
        var slowing = new Slowing();
        for (var few : List.of(cars(9, 0.3, 0, 4), cars(9, 0.3, 0, 5))) {
            var cars = AlikeCars.of(few, START);
            slowing.add(cars, PRIOR, new WearLearner(cars, PRIOR).centre());
        }
        // The nine cars of each kind have the same names: they are the same cars with two sets each.
        assertThat(slowing.find().standardError()).isEqualTo(PRIOR.spread(WearParameter.SLOWING));
        var others = AlikeCars.of(cars(12, 0.3, 0, 6), START);
        slowing.add(others, PRIOR, new WearLearner(others, PRIOR).centre());
        var found = slowing.find();
        assertThat(found.value()).isCloseTo(0.3, within(3 * found.standardError()));
    }

    /** So that few cars do not outweigh it. */
    @Test
    void isWeighedWithThePrior() {
        var few = find(cars(10, 0.3, 0.35, 3));
        var many = find(cars(100, 0.3, 0.35, 3));
        assertThat(few.standardError()).isBetween(many.standardError(), PRIOR.spread(WearParameter.SLOWING));
    }

    private static Slowing.Found find(List<WearHistory> histories) {
        var cars = AlikeCars.of(histories, START);
        var slowing = new Slowing();
        slowing.add(cars, PRIOR, new WearLearner(cars, PRIOR).centre());
        return slowing.find();
    }

    private static List<WearHistory> cars(int count, double slowing, double change, long seed) {
        var random = new SplittableRandom(seed);
        return IntStream.range(0, count)
                .mapToObj(car -> car(car, slowing, change, random))
                .toList();
    }

    /** Read new and after each of four seasons; with errors of the gauge, the same new and worn. */
    private static WearHistory car(int number, double slowing, double change, SplittableRandom random) {
        var scale = new TreadScale(NEW_MM, slowing);
        double car = Math.exp(0.3 * random.nextGaussian());
        var effectiveMm = new double[4][Spot.values().length];
        for (var ofTyre : effectiveMm) {
            for (int groove = 0; groove < ofTyre.length; groove++) {
                ofTyre[groove] = NEW_MM + 0.1 * random.nextGaussian();
            }
        }
        var run = Collections.nCopies(4, CornerDistances.NONE).toArray(CornerDistances[]::new);
        var readings = new ArrayList<TreadReading>();
        for (int visit = 0; visit < 5; visit++) {
            for (int tyre = 0; tyre < 4; tyre++) {
                for (var groove : Spot.values()) {
                    double readMm = scale.depth(effectiveMm[tyre][groove.ordinal()]) + 0.15 * random.nextGaussian();
                    readings.add(new TreadReading(visit, tyre, groove, run[tyre], Math.clamp(readMm, 0.1, 25)));
                }
            }
            double season = Math.exp(change * random.nextGaussian() - change * change / 2);
            for (int tyre = 0; tyre < 4; tyre++) {
                run[tyre] = run[tyre].plus(visit, Corner.values()[tyre], 7);
                for (int groove = 0; groove < effectiveMm[tyre].length; groove++) {
                    effectiveMm[tyre][groove] -= 7 * 0.15 * car * season;
                }
            }
        }
        return new WearHistory(
                "invented-" + number,
                DriveLayout.ALL,
                SeasonKind.WINTER,
                null,
                Collections.nCopies(4, NewDepth.stated(NEW_MM)),
                readings);
    }
}
