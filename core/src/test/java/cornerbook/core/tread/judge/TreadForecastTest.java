package cornerbook.core.tread.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.DistanceBasis;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What befalls a set between visits: it came used, a tyre was replaced, a reading cannot be. All cars are invented. */
class TreadForecastTest {
    private static final Assessor ASSESSOR = new Assessor(Cars.LIMITS);

    private static List<Reading> tread(String visit, String prefix, double depthMm) {
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                readings.add(read(visit, corner, prefix + corner, spot, depthMm));
            }
        }
        return readings;
    }

    private static Reading read(String visit, Corner corner, String tag, Spot spot, double depthMm) {
        return new Reading(
                "%s-%s-%s".formatted(visit, tag, spot),
                Measure.TREAD_DEPTH,
                corner,
                tag,
                spot,
                depthMm,
                depthMm + " mm",
                null,
                null);
    }

    private static Visit visit(
            String id,
            LocalDate date,
            double km,
            Map<Corner, String> arrived,
            Map<Corner, String> left,
            List<Reading> r) {
        return new Visit(id, date, km, arrived, left, r);
    }

    private static CarHistory winters(double firstMm, double secondMm) {
        return Cars.history(
                visit(
                        "v1",
                        LocalDate.of(2025, 10, 20),
                        40_000,
                        Cars.at("S-"),
                        Cars.at("W-"),
                        tread("v1", "W-", firstMm)),
                visit(
                        "v2",
                        LocalDate.of(2026, 4, 15),
                        47_000,
                        Cars.at("W-"),
                        Cars.at("S-"),
                        tread("v2", "W-", secondMm)),
                visit("v3", LocalDate.of(2026, 10, 20), 55_000, Cars.at("S-"), Cars.at("W-"), List.of()));
    }

    private static GrooveForecast winterGroove(CarHistory car, String visitId, int tyre) {
        return ASSESSOR.assess(car, visitId).forecasts().stream()
                .filter(forecast -> forecast.set().season() == SeasonKind.WINTER)
                .findFirst()
                .orElseThrow()
                .tyres()
                .get(tyre)
                .grooves()
                .getFirst();
    }

    @Test
    void aSetThatCameUsedStartsAtItsFirstReadingNotAtTheStatedDepth() {
        var groove = winterGroove(winters(5.0, 3.7), "v3", 0);

        assertThat(groove.depthMm()).isCloseTo(3.7, within(0.15));
        assertThat(groove.depthSdMm()).isLessThan(0.2);
    }

    /** A winter set that is good for more than one winter lies in the store from 15 April to 20 October, and wears not. */
    @ParameterizedTest
    @ValueSource(doubles = {5.8, 6.0, 6.3, 6.6, 6.9, 7.2})
    void aStoredSetDoesNotRunOut(double secondMm) {
        var forecast = ASSESSOR.assess(winters(8.0, secondMm), "v3").forecasts().stream()
                .filter(each -> each.set().season() == SeasonKind.WINTER)
                .findFirst()
                .orElseThrow();
        var horizon = Objects.requireNonNull(forecast.horizon());
        assertThat(horizon).isAfter(forecast.from());
        var monthDay = MonthDay.from(horizon);
        assertThat(monthDay.isAfter(MonthDay.of(4, 15)) && monthDay.isBefore(MonthDay.of(10, 20)))
                .as("%s is in summer", horizon)
                .isFalse();
    }

    @Test
    void aTyreReplacedAloneHasItsOwnStartAndItsCornersRate() {
        var car = winters(8.0, 6.6);
        var sets = new ArrayList<WheelSet>();
        for (var set : car.sets()) {
            var wheels = new ArrayList<>(set.wheels());
            if (set.season() == SeasonKind.WINTER) {
                wheels.add(new Wheel("W-NEW", wheels.getFirst().tyre(), null));
            }
            sets.add(new WheelSet(set.id(), set.season(), set.storePlace(), wheels));
        }
        var leaving = new HashMap<>(Cars.at("W-"));
        leaving.put(Corner.RR, "W-NEW");
        var visits = new ArrayList<>(car.visits());
        visits.set(2, visits.get(2).withLeftOn(leaving));
        var replaced = new CarHistory(car.vehicle(), car.customer(), sets, visits);

        var forecast = ASSESSOR.assess(replaced, "v3").forecasts().getFirst();

        var byTag = new HashMap<String, Double>();
        forecast.tyres()
                .forEach(tyre ->
                        byTag.put(tyre.wheel().tag(), tyre.grooves().getFirst().depthMm()));
        assertThat(byTag).containsOnlyKeys("W-LF", "W-RF", "W-LR", "W-NEW");
        assertThat(byTag.get("W-NEW")).isCloseTo(8.0, within(0.05));
        assertThat(byTag.get("W-LR")).isCloseTo(6.6, within(0.15));
    }

    @Test
    void anIncredibleReadingIsQuestionedAndCountsAllTheSame() {
        var deep = new ArrayList<>(tread("v3", "W-", 6.6));
        deep.set(0, read("v3", Corner.LF, "W-LF", Spot.INNER, 3.1));
        var visits = new ArrayList<>(winters(8.0, 6.6).visits());
        visits.set(2, visits.get(2).withReadings(deep));
        var car = Cars.history(visits.toArray(Visit[]::new));

        var assessment = ASSESSOR.assess(car, "v3");

        assertThat(assessment.doubted()).singleElement().satisfies(doubt -> {
            assertThat(doubt.reading().value()).isEqualTo(3.1);
            assertThat(doubt.question().corner()).isEqualTo(Corner.LF);
            assertThat(doubt.question().groove()).isEqualTo(Spot.INNER);
            assertThat(doubt.question().read()).isEqualTo(new Amount(3.1, "mm", 1));
        });
        assertThat(assessment.findings().getFirst().verdict()).isEqualTo(Verdict.SPENT);
    }

    @Test
    void aTreadThatHasGrownIsQuestioned() {
        var visits = new ArrayList<>(winters(8.0, 6.6).visits());
        visits.set(2, visits.get(2).withReadings(tread("v3", "W-", 7.9)));

        assertThat(ASSESSOR.assess(Cars.history(visits.toArray(Visit[]::new)), "v3")
                        .doubted())
                .hasSize(12);
    }

    @Test
    void whatTheBookLearnedIsWhereAForecastStarts() {
        var cars = List.of(winters(8.0, 6.4), winters(8.0, 6.2));
        var knowledge = Learner.learn(cars, LocalDate.of(2026, 11, 25));

        var first = ASSESSOR.assess(winters(8.0, 6.4), "v3").forecasts().getFirst();
        var learned = ASSESSOR.with(knowledge)
                .assess(winters(8.0, 6.4), "v3")
                .forecasts()
                .getFirst();

        assertThat(first.wearBasis()).isEqualTo(TreadSaid.Label.WEAR_NOT_LEARNED);
        assertThat(learned.wearBasis()).isInstanceOfSatisfying(TreadSaid.LearnedFrom.class, from -> {
            assertThat(from.readings()).isEqualTo(48);
            assertThat(from.cars()).isEqualTo(1);
            assertThat(from.season()).isEqualTo(SeasonKind.WINTER);
            assertThat(from.drive()).isEqualTo(DriveLayout.ALL);
        });
        assertThat(learned.wearStart()).isNotEqualTo(first.wearStart());
    }

    private static CarHistory told(CarHistory car, int visit) {
        var visits = new ArrayList<>(car.visits());
        var readings = new ArrayList<>(visits.get(visit).readings());
        readings.add(Cars.reading(Measure.ANOTHER_DRIVER, null, null, null, 1));
        visits.set(visit, visits.get(visit).withReadings(readings));
        return Cars.history(visits.toArray(Visit[]::new));
    }

    /** 0.4 mm in 1000 km, where 0.18 is usual: of another driver some of it is the car's, and less is known for sure. */
    @Test
    void ofAnotherDriverTheCarsOwnWearIsForgottenInPart() {
        var before = winters(8.0, 5.2);
        var after = told(before, 2);

        var own = winterGroove(before, "v3", 0);
        var others = winterGroove(after, "v3", 0);

        assertThat(own.rateMmPer1000Km()).isGreaterThan(0.3);
        assertThat(others.rateMmPer1000Km()).isGreaterThan(0.2).isLessThan(own.rateMmPer1000Km() - 0.05);
        assertThat(others.rateSdMmPer1000Km()).isGreaterThan(1.5 * own.rateSdMmPer1000Km());
        assertThat(others.ownShareOfRate()).isLessThan(0.5 * own.ownShareOfRate());
        assertThat(others.depthMm()).isCloseTo(own.depthMm(), within(0.01));
        assertThat(forecast(after).wearBasis())
                .isEqualTo(new TreadSaid.OtherDriver(TreadSaid.Label.WEAR_NOT_LEARNED, LocalDate.of(2026, 10, 20)));
    }

    /** What the car ran with the driver before says nothing of how far it runs now. */
    @Test
    void ofAnotherDriverTheDistanceIsTheUsualOne() {
        assertThat(forecast(told(winters(8.0, 6.6), 2)).kmPerDay())
                .isEqualTo(DistancePrior.DEFAULT.meanKm(), within(0.5));
        assertThat(forecast(winters(8.0, 6.6)).distanceBasis()).isInstanceOf(DistanceBasis.OwnSeasons.class);
    }

    /** Each driver's wear is a history of its own to learn from; where the second one came, nobody has stated a depth. */
    @Test
    void driversTeachApart() {
        var apart = CarShare.of(told(winters(8.0, 6.6), 1)).wear().stream()
                .filter(history -> history.season() == SeasonKind.WINTER)
                .toList();

        assertThat(apart).hasSize(2);
        assertThat(apart.getFirst().newDepths()).allMatch(NewDepth::known);
        assertThat(apart.getFirst().readings()).hasSize(12).allMatch(reading -> reading.visit() == 0);
        assertThat(apart.getLast().newDepths()).noneMatch(NewDepth::known);
        assertThat(apart.getLast().readings())
                .hasSize(12)
                .allMatch(reading -> reading.visit() == 1 && reading.run().total() == 0);
    }

    private static SetForecast forecast(CarHistory car) {
        return ASSESSOR.assess(car, "v3").forecasts().stream()
                .filter(forecast -> forecast.set().season() == SeasonKind.WINTER)
                .findFirst()
                .orElseThrow();
    }
}
