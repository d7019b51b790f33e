package cornerbook.core.brake.seizing.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.Learner;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.brake.seizing.SaltClock;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A book of invented cars whose pads seize by a hazard that is known: what it learns of it. */
class LearnedSeizingTest {
    private static final LocalDate FIRST = LocalDate.of(2020, 10, 20);
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int CARS = 80;
    private static final int VISITS = 8;
    private static final double MONTHS_APART = 6;
    private static final double SHAPE = 2;
    private static final double SALT_EFFECT = -0.8;
    private static final double CENTRE_SALT = 0.4;
    /** Two standard errors and a half: a true value lies outside once in 80 times. */
    private static final double STANDARD_ERRORS = 2.5;

    @Test
    void shorterLivesThanBelievedAreLearnedAndLieInTheirInterval() {
        learns(24);
    }

    @Test
    void longerLivesThanBelievedAreLearnedToo() {
        learns(140);
    }

    private static void learns(double lifeMonths) {
        var book = book(lifeMonths, 7);
        var seizing = Objects.requireNonNull(Learner.learn(book, TODAY).seizing());
        var believed = SeizingHazard.learn(List.of()).fit().coefficients().getFirst();
        var fit = seizing.fit();
        double truth = Math.log(lifeMonths);
        assertThat(seizing.cars()).isEqualTo(CARS);
        assertThat(Math.abs(fit.coefficients().getFirst() - truth))
                .as("nearer to the truth than what was believed")
                .isLessThan(0.5 * Math.abs(believed - truth));
        assertThat(fit.coefficients().getFirst()).isCloseTo(truth, within(STANDARD_ERRORS * fit.standardError(0)));
        assertThat(fit.coefficients().get(1)).isCloseTo(SALT_EFFECT, within(STANDARD_ERRORS * fit.standardError(1)));
        assertThat(Math.log(fit.scale()))
                .isCloseTo(Math.log(1 / SHAPE), within(STANDARD_ERRORS * fit.standardErrorOfLogScale()));
    }

    @Test
    void aCarIsJudgedByWhatTheBookHasLearned() {
        var book = book(24, 7);
        var assessor = new Assessor(Cars.LIMITS);
        var car = book.getFirst();
        var visit = car.visits().getFirst().id();
        var learned = seizing(assessor.with(Learner.learn(book, TODAY)), car, visit);
        var believed = seizing(assessor, car, visit);
        assertThat(learned.probability()).isLessThan(believed.probability());
        assertThat(learned.evidence())
                .extracting(Evidence::how)
                .hasAtLeastOneElementOfType(SeizingSaid.FromTheBook.class)
                .anySatisfy(how -> assertThat(how).isInstanceOfSatisfying(SeizingSaid.FromTheBook.class, learnt -> {
                    assertThat(learnt.cars()).isEqualTo(CARS);
                    assertThat(learnt.learnedOn()).isEqualTo(TODAY);
                }));
    }

    /**
     * Between two learnings a car's newest visit is not in the fit that judges it. How much that moves the chance, in a book of
     * 80 cars and in one of three: docs/methods/brakes.md has these figures.
     */
    @Test
    void whatTheNewestVisitOfOneCarMovesIsLittleInALargeBook() {
        assertThat(movedByNewestVisit(CARS)).isLessThan(0.01);
        assertThat(movedByNewestVisit(3)).isLessThan(0.1);
    }

    private static double movedByNewestVisit(int cars) {
        var book = book(24, 7).subList(0, cars);
        var car = book.getFirst();
        var before = new ArrayList<>(book);
        before.set(
                0,
                new CarHistory(
                        car.vehicle(), car.customer(), car.sets(), car.visits().subList(0, 4)));
        var shorter = new CarHistory(
                car.vehicle(), car.customer(), car.sets(), car.visits().subList(0, 5));
        var after = new ArrayList<>(book);
        after.set(0, shorter);
        var assessor = new Assessor(Cars.LIMITS);
        var visit = shorter.visits().getFirst().id();
        return Math.abs(probability(assessor.with(Learner.learn(before, TODAY)), shorter, visit)
                - probability(assessor.with(Learner.learn(after, TODAY)), shorter, visit));
    }

    private static double probability(Assessor assessor, CarHistory car, String visitId) {
        return Objects.requireNonNull(seizing(assessor, car, visitId).probability());
    }

    private static Finding seizing(Assessor assessor, CarHistory car, String visitId) {
        return assessor.assess(car, visitId).findings().stream()
                .filter(finding -> finding.subject().part() == Subject.Part.PAD_SEIZING)
                .findFirst()
                .orElseThrow();
    }

    /** Guides are cleaned at the first visit; each pad seizes by its Weibull time and is looked at twice a year. */
    private static List<CarHistory> book(double lifeMonths, long seed) {
        var random = new SplittableRandom(seed);
        var cars = new ArrayList<CarHistory>();
        for (int n = 0; n < CARS; n++) {
            double salt = n % 2 == 0 ? 0.1 : 0.7;
            var seizesAt = new double[2 * Corner.values().length];
            for (int pad = 0; pad < seizesAt.length; pad++) {
                double life = lifeMonths * Math.exp(SALT_EFFECT * (salt - CENTRE_SALT));
                seizesAt[pad] = life * Math.pow(-Math.log1p(-random.nextDouble()), 1 / SHAPE);
            }
            cars.add(car("car-" + n, salt, seizesAt));
        }
        return cars;
    }

    private static CarHistory car(String id, double salt, double[] seizesAt) {
        var visits = new ArrayList<Visit>();
        for (int v = 0; v < VISITS; v++) {
            var day = FIRST.plusMonths((long) (v * MONTHS_APART));
            var readings = new ArrayList<Reading>();
            for (var corner : Corner.values()) {
                for (var spot : List.of(Spot.INNER, Spot.OUTER)) {
                    int pad = 2 * corner.ordinal() + (spot == Spot.INNER ? 0 : 1);
                    double movement = SaltClock.months(FIRST, day) >= seizesAt[pad] ? 2 : 0;
                    readings.add(Cars.reading(Measure.PAD_MOVEMENT, corner, null, spot, movement));
                }
                if (v == 0) {
                    readings.add(Cars.reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, null, 0));
                }
            }
            visits.add(new Visit(id + "-" + v, day, 40_000 + 7_500 * v, Cars.at("S-"), Cars.at("S-"), readings));
        }
        var known = VehicleDetails.NOT_KNOWN;
        var plain = Cars.history(visits.toArray(Visit[]::new));
        return new CarHistory(
                plain.vehicle()
                        .withDetails(new VehicleDetails(
                                known.differences(),
                                new CarUse(salt, false, 0.5),
                                known.body(),
                                known.fluidChange(),
                                known.pressureWarning(),
                                null)),
                plain.customer(),
                plain.sets(),
                visits);
    }
}
