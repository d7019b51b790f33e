package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Measure;
import cornerbook.core.car.RandomHistories;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearPrior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever stands in a book, learning ends with finite numbers that are no less sure than what was known before. */
class LearningPropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 1);

    static Stream<Arguments> books() {
        var random = new SplittableRandom(31);
        var twelve = cars(12, random);
        return Stream.of(
                Arguments.of("empty", List.of()),
                Arguments.of("one car", cars(1, random)),
                Arguments.of("one car, one visit", List.of(alike(0, visit -> 8.0, 1))),
                Arguments.of("many plausible cars", cars(300, random)),
                Arguments.of("twelve cars, fifty copies of each", copies(twelve, 50)),
                Arguments.of("two hundred copies of one car", copies(twelve.subList(0, 1), 200)),
                Arguments.of("no wear at all", book(80, visit -> 8.0)),
                Arguments.of("the same wear in every car", book(80, visit -> 8.0 - 1.5 * visit)),
                Arguments.of("treads that grow", book(80, visit -> 3.0 + visit)),
                Arguments.of("worn out at once", book(80, visit -> visit == 0 ? 8.0 : 0)),
                Arguments.of("readings at random", book(80, visit -> 8.4 * random.nextDouble())),
                Arguments.of("gauges that stick", book(80, visit -> visit % 2 == 0 ? 8.4 : 0)),
                Arguments.of(
                        "half the cars wear out, half not at all",
                        Stream.concat(
                                        book(40, visit -> 8.0).stream(),
                                        book(40, visit -> visit == 0 ? 8.0 : 0.1).stream())
                                .toList()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void learningEndsWithWhatItHas(String what, List<CarHistory> cars) {
        var knowledge = Learner.learn(cars, TODAY);
        for (var row : knowledge.wear().rows()) {
            var parameters = row.learned().parameters();
            var prior = row.tyreModel() == null ? WearPrior.about(parameters) : WearPrior.ofModel(parameters);
            for (var parameter : WearParameter.values()) {
                if (parameter != WearParameter.SLOWING) {
                    assertThat(parameters.of(parameter)).as(parameter.name()).isBetween(0.0, 10.0);
                }
                assertThat(row.learned().standardErrors().get(parameter))
                        .as(parameter.name())
                        .isPositive()
                        .isLessThanOrEqualTo(prior.spreads().get(parameter));
            }
        }
        knowledge
                .distances()
                .values()
                .forEach(distance -> assertThat(distance.meanKm()).isBetween(0.0, 2000.0));
        var seizing = knowledge.seizing();
        if (seizing != null) {
            var chance = seizing.hazard().chance(SeizingExposure.usual(15_000, true), 0, 12);
            assertThat(chance.probability()).isBetween(0.0, 1.0);
            assertThat(chance.lower()).isBetween(0.0, chance.probability());
            assertThat(chance.upper()).isBetween(chance.probability(), 1.0);
        }
        // What was learned serves a car that is as it should be.
        var assessor = new Assessor(Cars.LIMITS).with(knowledge);
        var car = new RandomHistories(new SplittableRandom(4)).next("car");
        assertThat(assessor.assess(car, car.visits().getLast().id()).findings()).isNotEmpty();
    }

    @Test
    void whatOneVisitCannotTellIsSaid() {
        var row = Learner.learn(List.of(alike(0, visit -> 8.0, 1)), TODAY)
                .wear()
                .rows()
                .getFirst();
        assertThat(row.open())
                .contains(
                        WearParameter.FRONT_RATE,
                        WearParameter.REAR_RATE,
                        WearParameter.VEHICLE_SPREAD,
                        WearParameter.CORNER_SPREAD);
    }

    @Test
    void whatManyCarsTellIsNotCalledOpen() {
        WearKnowledge.Row row = Learner.learn(cars(300, new SplittableRandom(8)), TODAY)
                .wear()
                .rows()
                .getFirst();
        assertThat(row.learned().cars()).isGreaterThan(30);
        assertThat(row.open()).isEmpty();
    }

    private static List<CarHistory> cars(int count, SplittableRandom random) {
        return IntStream.range(0, count)
                .mapToObj(car -> new RandomHistories(random).next("car-" + car))
                .toList();
    }

    private static List<CarHistory> copies(List<CarHistory> cars, int times) {
        var copies = new ArrayList<CarHistory>();
        for (int copy = 0; copy < times; copy++) {
            for (var car : cars) {
                var vehicle = car.vehicle();
                copies.add(new CarHistory(
                        Cars.withId(vehicle, vehicle.id() + "-copy-" + copy),
                        car.customer(),
                        car.sets(),
                        car.visits()));
            }
        }
        return copies;
    }

    private static List<CarHistory> book(int count, IntToDoubleFunction depthMm) {
        return IntStream.range(0, count).mapToObj(car -> alike(car, depthMm, 4)).toList();
    }

    /** A car that runs 8000 km between its visits, every groove read as asked. */
    private static CarHistory alike(int car, IntToDoubleFunction depthMm, int visits) {
        var all = new ArrayList<Visit>();
        for (int v = 0; v < visits; v++) {
            var readings = new ArrayList<Reading>();
            for (var corner : Corner.values()) {
                for (var spot : Spot.values()) {
                    readings.add(
                            Cars.reading(Measure.TREAD_DEPTH, corner, "S-" + corner, spot, depthMm.applyAsDouble(v)));
                }
            }
            all.add(new Visit(
                    "v" + v,
                    Cars.AUTUMN.plusDays(183L * v),
                    40_000 + 8_000 * v,
                    Cars.at("S-"),
                    Cars.at("S-"),
                    readings));
        }
        return new CarHistory(
                Cars.withId(Cars.vehicle(), "alike-" + car),
                new Customer("c", "Invented Person", null, null),
                List.of(Cars.set(SeasonKind.SUMMER, "S-")),
                all);
    }
}
