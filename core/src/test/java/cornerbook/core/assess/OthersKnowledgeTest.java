package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.RandomHistories;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.DistanceBasis;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.finding.OthersKnowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a book knows beside what other shops' cars taught. All cars are invented. */
class OthersKnowledgeTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final KnowledgeOrigin ORIGIN =
            new KnowledgeOrigin(600, 12, "Réseau inventé", LocalDate.of(2026, 11, 12));
    private static final Knowledge OF_MANY = Learner.learn(cars(600, 3), ORIGIN.learnedOn());
    private static final OthersKnowledge OTHERS = new OthersKnowledge(ORIGIN, OF_MANY);

    private static List<CarHistory> cars(int count, long seed) {
        var histories = new RandomHistories(new SplittableRandom(seed));
        return IntStream.range(0, count)
                .mapToObj(car -> histories.next("car-" + car))
                .toList();
    }

    private static Knowledge learn(List<CarHistory> cars, @Nullable OthersKnowledge others) {
        return Learner.sum(cars.stream().map(CarShare::of).toList(), TODAY, others);
    }

    @Test
    void aBookWithoutCarsKnowsWhatTheOthersKnow() {
        var knowledge = learn(List.of(), OTHERS);
        assertThat(OF_MANY.wear().rows()).isNotEmpty().allSatisfy(row -> {
            var here =
                    knowledge.wear(row.drive(), row.season(), row.tyreModel()).orElseThrow();
            assertThat(here.learned().parameters()).isEqualTo(row.learned().parameters());
            assertThat(here.learned().cars()).isZero();
            assertThat(knowledge.originOfWear(row.drive(), row.season(), row.tyreModel()))
                    .isEqualTo(new KnowledgeOrigin(
                            row.learned().cars(), 12, "Réseau inventé", LocalDate.of(2026, 11, 12)));
        });
        assertThat(OF_MANY.distances())
                .isNotEmpty()
                .allSatisfy((season, distance) ->
                        assertThat(knowledge.distance(season)).isEqualTo(distance));
        var there = Objects.requireNonNull(OF_MANY.seizing()).fit();
        var here = Objects.requireNonNull(knowledge.seizing());
        assertThat(here.cars()).isZero();
        for (int j = 0; j < there.coefficients().size(); j++) {
            assertThat(here.fit().coefficients().get(j))
                    .isCloseTo(there.coefficients().get(j), within(1e-6));
        }
        assertThat(here.fit().scale()).isCloseTo(there.scale(), within(1e-6));
    }

    @Test
    void withNothingTakenInAllIsAsItWas() {
        var cars = cars(20, 5);
        assertThat(learn(cars, null)).isEqualTo(Learner.learn(cars, TODAY));
    }

    /** Against what many cars of the same making teach: a small shop is nearer to it with the others' knowledge than without. */
    @Test
    void aSmallShopIsNearerToTheTruth() {
        var truth = OF_MANY;
        double without = 0;
        double beside = 0;
        int compared = 0;
        for (int shop = 0; shop < 12; shop++) {
            var cars = cars(3, 100 + shop);
            var alone = learn(cars, null);
            var both = learn(cars, OTHERS);
            for (var row : alone.wear().rows()) {
                var there = truth.wear().find(row.drive(), row.season(), null);
                if (row.tyreModel() == null && there.isPresent()) {
                    for (var rate : List.of(WearParameter.FRONT_RATE, WearParameter.REAR_RATE)) {
                        double at = there.get().learned().parameters().of(rate);
                        without += square(Math.log(row.learned().parameters().of(rate) / at));
                        beside += square(Math.log(both.wear(row.drive(), row.season(), null)
                                        .orElseThrow()
                                        .learned()
                                        .parameters()
                                        .of(rate)
                                / at));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(20);
        assertThat(beside).isLessThan(without / 2);
    }

    private static double square(double value) {
        return value * value;
    }

    /** Many cars of its own outvote others that are wrong. */
    @Test
    void aBigShopIsTaughtByItsOwnCars() {
        var cars = cars(300, 9);
        var alone = learn(cars, null);
        var beside = learn(cars, new OthersKnowledge(ORIGIN, twiceTheRates(OF_MANY)));
        int compared = 0;
        for (var row : alone.wear().rows()) {
            if (row.tyreModel() == null && row.learned().cars() > 60) {
                double ratio = beside.wear(row.drive(), row.season(), null)
                                .orElseThrow()
                                .learned()
                                .parameters()
                                .of(WearParameter.FRONT_RATE)
                        / row.learned().parameters().of(WearParameter.FRONT_RATE);
                assertThat(ratio).isBetween(0.95, 1.15);
                compared++;
            }
        }
        assertThat(compared).isPositive();
        alone.distances().forEach((season, distance) -> {
            if (distance.cars() > 200) {
                assertThat(beside.distance(season).meanKm())
                        .isCloseTo(distance.meanKm(), within(0.1 * distance.meanKm()));
            }
        });
    }

    private static Knowledge twiceTheRates(Knowledge knowledge) {
        var rows = knowledge.wear().rows().stream()
                .map(row -> {
                    var learned = row.learned();
                    var twice = learned.parameters()
                            .with(
                                    WearParameter.FRONT_RATE,
                                    2 * learned.parameters().of(WearParameter.FRONT_RATE));
                    return new WearKnowledge.Row(
                            row.drive(),
                            row.season(),
                            row.tyreModel(),
                            new LearnedWear(
                                    twice,
                                    learned.standardErrors(),
                                    learned.cars(),
                                    learned.readings(),
                                    learned.widening()));
                })
                .toList();
        return new Knowledge(
                knowledge.learnedOn(), new WearKnowledge(rows), knowledge.distances(), knowledge.seizing());
    }

    /** By hand: elsewhere the model wears 1.5 times as fast as all models at 0.2, here all models wear at 0.1. */
    @Test
    void aModelThatTheBookHasNotIsAsFarFromAllModelsAsElsewhere() {
        var others = new WearKnowledge(List.of(row(null, 0.2, 100), row("Invented", 0.3, 50)));
        var own = new WearKnowledge(List.of(row(null, 0.1, 4)));
        var found =
                own.find(DriveLayout.ALL, SeasonKind.WINTER, "Invented", others).orElseThrow();
        assertThat(found.learned().parameters().of(WearParameter.FRONT_RATE)).isCloseTo(0.15, within(1e-12));
        assertThat(found.learned().cars()).isZero();
        assertThat(own.find(DriveLayout.ALL, SeasonKind.WINTER, "Other", others))
                .contains(row(null, 0.1, 4));
        assertThat(own.find(DriveLayout.ALL, SeasonKind.SUMMER, "Invented", others))
                .isEmpty();
    }

    private static WearKnowledge.Row row(@Nullable String model, double frontRate, int cars) {
        var errors = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            errors.put(parameter, 0.1);
        }
        return new WearKnowledge.Row(
                DriveLayout.ALL,
                SeasonKind.WINTER,
                model,
                new LearnedWear(
                        WearParameters.defaults(DriveLayout.ALL).with(WearParameter.FRONT_RATE, frontRate),
                        errors,
                        cars,
                        cars * 12,
                        1));
    }

    /** The weight of what was known before, by the arithmetic of a mean of logarithms. */
    @Test
    void whatIsKnownCountsAsSoManyCars() {
        var known = new DistancePrior(60, 20, 10, 5000);
        var same = new ArrayList<List<Double>>();
        for (int car = 0; car < 40; car++) {
            same.add(List.of(30.0, 30.0));
        }
        double little = DistancePrior.learn(same, known, 1).meanKm();
        double much = DistancePrior.learn(same, known, 400).meanKm();
        assertThat(little).isBetween(29.0, 36.0);
        assertThat(much).isBetween(52.0, 60.0);
        assertThat(DistancePrior.learn(List.of(), known, 20)).isEqualTo(known);
    }

    @Test
    void theOriginIsToldWithTheNumber() {
        var car = cars(1, 77).getFirst();
        var knowledge = learn(List.of(), OTHERS);
        var first = car.visits().subList(0, 1);
        assertThat(new RunHistory(car, first, knowledge).distanceBasis(SeasonKind.WINTER))
                .isInstanceOfSatisfying(
                        DistanceBasis.CarsOfOthers.class,
                        basis -> assertThat(basis.others().signedBy()).isEqualTo("Réseau inventé"));
        var outcome = new Assessor(Cars.LIMITS)
                .with(knowledge)
                .assess(car, car.visits().getLast().id());
        assertThat(outcome.findings().toString()).contains("KnowledgeOrigin[").contains("Réseau inventé");
    }

    @Test
    void aNumberThatTheOthersHaveNotIsFromWhatIsUsual() {
        var onlyDistance = new OthersKnowledge(
                ORIGIN,
                new Knowledge(
                        TODAY,
                        WearKnowledge.NONE,
                        Map.of(SeasonKind.SUMMER, new DistancePrior(60, 20, 10, 500)),
                        null));
        var cars = cars(5, 4);
        var knowledge = learn(cars, onlyDistance);
        assertThat(knowledge.wear()).isEqualTo(learn(cars, null).wear());
        assertThat(knowledge.seizing()).isEqualTo(learn(cars, null).seizing());
        assertThat(knowledge.originOfWear(DriveLayout.ALL, SeasonKind.WINTER, null))
                .isNull();
        assertThat(knowledge.originOfDistance(SeasonKind.WINTER)).isNull();
        assertThat(knowledge.originOfDistance(SeasonKind.SUMMER))
                .isEqualTo(new KnowledgeOrigin(500, 12, "Réseau inventé", LocalDate.of(2026, 11, 12)));
    }
}
