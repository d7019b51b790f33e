package cornerbook.core.tread.learn;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book whose readings lie outside their bands widens them, and one whose readings do not leaves them. Cars are invented. */
class WideningTest {
    private static final WearParameters TOLD =
            WearParameters.defaults(DriveLayout.ALL).with(WearParameter.SLOWING, 1e-6);
    private static final double BAND_Z = 1.6448536269514722;

    /** By 2 standard errors one book in forty is widened although it is right; ten of them by no more than two. */
    @Test
    void carsThatLiveAsTheModelHasItAreNotWidened() {
        assertThat(IntStream.range(0, 10).filter(seed -> Widening.of(cars(80, 0, seed), TOLD, 1) > 1))
                .hasSizeLessThanOrEqualTo(2);
    }

    /** What the last season did is of another size for each car, which the model does not know: it is seen by the readings alone. */
    @ParameterizedTest
    @ValueSource(doubles = {0.35, 0.5})
    void bandsAreWidenedUntilNineInTenOfOtherCarsLieWithin(double unknown) {
        double factor = Widening.of(cars(300, unknown, 4), TOLD, 1);
        assertThat(factor).isGreaterThan(1.1);
        var others = cars(300, unknown, 5);
        assertThat(inside(others, TOLD)).as("before").isLessThan(0.86);
        var wider = new LearnedWear(TOLD, Map.of(), 300, 0, factor).forecasting();
        assertThat(inside(others, wider)).as("after").isBetween(0.87, 0.93);
    }

    @Test
    void ofFewCarsItIsWhatIsKnownOfMore() {
        assertThat(Widening.of(cars(19, 0.9, 6), TOLD, 1.25)).isEqualTo(1.25);
        assertThat(Widening.of(cars(1, 0.9, 6), TOLD, 1)).isEqualTo(1);
    }

    @Test
    void neverByMoreThanThree() {
        assertThat(Widening.of(cars(40, 6, 7), TOLD, 1)).isEqualTo(3);
    }

    private static double inside(List<WearHistory> cars, WearParameters parameters) {
        var model = new WearModel(parameters);
        int inside = 0;
        int readings = 0;
        for (var car : cars) {
            var posterior = model.fit(car.newDepths(), readings(car, false));
            for (var read : readings(car, true)) {
                var depth =
                        posterior.depth(read.groove(), read.tyre(), read.run()).left();
                double off = Math.abs(read.depthMm() - depth.mean());
                inside += off <= BAND_Z * Math.hypot(depth.sd(), parameters.readingErrorMm()) ? 1 : 0;
                readings++;
            }
        }
        return (double) inside / readings;
    }

    private static List<TreadReading> readings(WearHistory car, boolean latest) {
        return car.readings().stream()
                .filter(read -> (read.visit() == 2) == latest)
                .toList();
    }

    private static List<WearHistory> cars(int count, double unknown, long seed) {
        var random = new SplittableRandom(seed);
        return IntStream.range(0, count)
                .mapToObj(car -> car(car, unknown, random))
                .toList();
    }

    /**
     * A car by the model's own equation, without its slowing.
     *
     * @param unknown spread of the logarithm of a factor that the last season has besides
     */
    private static WearHistory car(int number, double unknown, SplittableRandom random) {
        double car = Math.exp(TOLD.vehicleSpread() * random.nextGaussian());
        double last = Math.exp(unknown * random.nextGaussian());
        var rates = new double[4];
        var grooves = new double[4][Spot.values().length];
        for (int corner = 0; corner < 4; corner++) {
            rates[corner] = 0.18 * car * (1 + TOLD.of(WearParameter.CORNER_SPREAD) * random.nextGaussian());
            for (int groove = 0; groove < grooves[corner].length; groove++) {
                grooves[corner][groove] = 1 + TOLD.of(WearParameter.GROOVE_SPREAD) * random.nextGaussian();
            }
        }
        var offset = random.doubles(3)
                .map(ignored -> TOLD.of(WearParameter.VISIT_SD) * random.nextGaussian())
                .toArray();
        var season = random.doubles(3)
                .map(ignored -> TOLD.of(WearParameter.SEASON_SD) * random.nextGaussian())
                .toArray();
        var readings = new ArrayList<TreadReading>();
        for (int tyre = 0; tyre < 4; tyre++) {
            var run = CornerDistances.NONE;
            double sharedMm = TOLD.newDepthSdMm() * Math.sqrt(0.5) * random.nextGaussian();
            var depthMm = new double[Spot.values().length];
            for (int groove = 0; groove < depthMm.length; groove++) {
                depthMm[groove] = 9 + sharedMm + TOLD.newDepthSdMm() * Math.sqrt(0.5) * random.nextGaussian();
            }
            for (int visit = 0; visit < 3; visit++) {
                run = run.plus(visit, Corner.values()[tyre], 5);
                for (var groove : Spot.values()) {
                    double rate = rates[tyre] * grooves[tyre][groove.ordinal()] + season[visit];
                    depthMm[groove.ordinal()] -= 5 * Math.max(0, rate) * (visit == 2 ? last : 1);
                    double readMm =
                            depthMm[groove.ordinal()] + offset[visit] + TOLD.readingSdMm() * random.nextGaussian();
                    readings.add(new TreadReading(visit, tyre, groove, run, Math.clamp(readMm, 0, 25)));
                }
            }
        }
        return new WearHistory(
                "invented-" + number,
                DriveLayout.ALL,
                SeasonKind.WINTER,
                null,
                Collections.nCopies(4, NewDepth.stated(9)),
                readings);
    }
}
