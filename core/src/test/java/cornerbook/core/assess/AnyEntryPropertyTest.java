package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.RandomHistories;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Margin;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.SetForecast.BandPoint;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * From a plausible car, any entry that the rules accept is judged: nothing throws, each number is finite, no chance lies
 * outside 0 to 1, nothing that is left is less than nothing, and the same is said twice. More seeds by hand:
 * {@code -Danyentry.seeds=20000}.
 */
class AnyEntryPropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 1);
    private static final Assessor ASSESSOR = new Assessor(Cars.LIMITS);
    private static final Assessor LEARNED = ASSESSOR.with(Learner.learn(shop(), TODAY));
    /** Depths, thicknesses and distances that are left; differences of pressure and trends carry another minus. */
    private static final Pattern LESS_THAN_NOTHING = Pattern.compile("(?<![\\d.])-\\d[\\d.,]* ?(mm|km|days|months|±)");

    private static final Pattern NO_NUMBER = Pattern.compile("NaN|Infinity|∞|null|9223372036854775807|2147483647");

    static LongStream seeds() {
        return LongStream.range(0, Long.getLong("anyentry.seeds", 150));
    }

    private static List<CarHistory> shop() {
        var random = new SplittableRandom(5);
        var cars = new ArrayList<CarHistory>();
        for (int car = 0; car < 30; car++) {
            cars.add(new RandomHistories(random).next("car-" + car));
        }
        return cars;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyAcceptedEntryIsJudged(long seed) {
        var random = new SplittableRandom(seed);
        var car = new RandomHistories(random).next("car");
        if (random.nextInt(3) == 0) {
            car = withOddVisit(car, random);
        }
        for (int more = random.nextInt(3); more >= 0; more--) {
            car = withReading(car, random);
        }
        if (VisitRules.check(car, TODAY).isEmpty()) {
            judge(seed % 4 == 0 ? LEARNED : ASSESSOR, car);
        }
    }

    @Test
    void mostEntriesOfTheGeneratorAreAccepted() {
        long accepted = LongStream.range(0, 200)
                .filter(seed -> {
                    var random = new SplittableRandom(seed);
                    var car = withReading(new RandomHistories(random).next("car"), random);
                    return VisitRules.check(car, TODAY).isEmpty();
                })
                .count();
        assertThat(accepted).isGreaterThan(140);
    }

    /** Every measure at its ends, one at a time, at the last visit: what was known before it is judged as before. */
    @ParameterizedTest
    @MethodSource("measures")
    void bothEndsOfAMeasureAreJudged(Measure measure) {
        var random = new SplittableRandom(measure.ordinal());
        for (double value : new double[] {measure.lowest(), measure.highest()}) {
            var car = new RandomHistories(random).next("car");
            var visit = car.visits().getLast();
            var place = place(measure, visit, random);
            var changed = with(
                    car,
                    visit,
                    new Reading("end", measure, place.corner, place.tag, place.spot, value, "x", null, null));
            if (VisitRules.check(changed, TODAY).isEmpty()) {
                judge(ASSESSOR, changed, visit.id());
            }
        }
    }

    static Stream<Measure> measures() {
        return Arrays.stream(Measure.values());
    }

    private static void judge(Assessor assessor, CarHistory car) {
        car.visits().forEach(visit -> judge(assessor, car, visit.id()));
    }

    private static void judge(Assessor assessor, CarHistory car, String id) {
        var assessment = assessor.assess(car, id);
        check(assessment);
        assessor.plan(car, id).ifPresent(AnyEntryPropertyTest::check);
        assessor.planStored(car, id).ifPresent(AnyEntryPropertyTest::check);
        for (var rule : Rule.values()) {
            assessor.planWithout(car, id, Set.of(rule)).ifPresent(AnyEntryPropertyTest::check);
        }
        assessor.predictions(car, id).forEach(each -> {
            assertThat(each.expectedMm().mean()).isFinite().isNotNegative();
            assertThat(each.expectedMm().sd()).isFinite().isPositive();
            sound(each.question());
        });
        assessor.thicknessPredictions(car, id).forEach(each -> {
            assertThat(each.expectedMm().mean()).isFinite().isNotNegative();
            assertThat(each.expectedMm().sd()).isFinite().isPositive();
            sound(each.asks());
        });
        assertThat(assessor.doubted(car, id)).isEqualTo(assessment.doubted());
        var again = assessor.assess(car, id);
        assertThat(again.findings()).isEqualTo(assessment.findings());
        assertThat(again.forecasts()).isEqualTo(assessment.forecasts());
        assertThat(again.notJudged()).isEqualTo(assessment.notJudged());
        assertThat(again.plan()).isEqualTo(assessment.plan());
    }

    private static void check(Assessment assessment) {
        for (var finding : assessment.findings()) {
            sound(finding.title());
            sound(finding.plainWords());
            finding.evidence().forEach(each -> {
                sound(each.what());
                sound(each.value());
                sound(each.how());
            });
        }
        assessment.notJudged().forEach(each -> sound(each));
        assessment.workDone().forEach(each -> sound(each));
        assessment.forecasts().forEach(AnyEntryPropertyTest::check);
        check(assessment.plan());
        for (double days = 30; days < 1500; days *= 2) {
            double hazard = assessment
                    .seizing()
                    .hazard()
                    .chance(assessment.seizing().exposure(), 0, days / 30)
                    .probability();
            assertThat(hazard).isBetween(0.0, 1.0);
        }
    }

    private static void check(SetForecast forecast) {
        assertThat(forecast.probabilityHolds()).isBetween(0.0, 1.0);
        assertThat(forecast.kmPerDay()).isFinite().isNotNegative();
        assertThat(forecast.kmPerDaySd()).isFinite().isNotNegative();
        for (var tyre : forecast.tyres()) {
            for (var groove : tyre.grooves()) {
                assertThat(groove.depthMm()).isFinite().isNotNegative();
                assertThat(groove.rateMmPer1000Km()).isFinite().isPositive();
                assertThat(groove.depthSdMm()).isFinite().isPositive();
                assertThat(groove.rateSdMmPer1000Km()).isFinite().isPositive();
                for (BandPoint point : groove.band()) {
                    assertThat(point.lowMm()).isFinite().isNotNegative();
                    assertThat(point.meanMm()).isFinite().isBetween(point.lowMm(), point.highMm());
                    assertThat(point.highMm()).isFinite();
                }
            }
        }
        forecast.contrasts().forEach(contrast -> {
            assertThat(contrast.chance()).isBetween(0.0, 1.0);
            assertThat(contrast.rateMmPer1000Km() / contrast.otherRateMmPer1000Km())
                    .isFinite()
                    .isPositive();
        });
    }

    private static void check(SetPlan set) {
        check(set.plan());
        assertThat(set.seasons().dayAt(set.plan().distanceKm()))
                .isAfterOrEqualTo(set.seasons().from());
        set.plan().gains().forEach(gain -> set.seasons().dayAt(gain.otherKm()));
        set.replacements().forEach(replacement -> {
            assertThat(replacement.distanceKm()).isFinite().isNotNegative();
            set.seasons().dayAt(replacement.distanceKm());
        });
    }

    private static void check(@Nullable WheelPlan plan) {
        if (plan == null) {
            return;
        }
        assertThat(plan.distanceKm()).isFinite().isNotNegative();
        assertThat(plan.distanceUnmovedKm()).isFinite().isNotNegative();
        assertThat(plan.spreadMm()).isFinite().isNotNegative();
        plan.gains().forEach(gain -> {
            assertThat(gain.likelyKm()).isFinite();
            assertThat(gain.otherKm()).isFinite().isNotNegative();
        });
        plan.reasons().forEach(reason -> sound(reason));
    }

    /** Every fact that is a number is one, and no length or distance is less than nothing. */
    private static void sound(Said said) {
        switch (said) {
            case Verbatim verbatim -> sound(verbatim.text());
            case Amount amount -> sound(amount.value(), amount.unit());
            case Between between -> {
                sound(between.lowest(), between.unit());
                sound(between.highest(), between.unit());
            }
            case PlusMinus estimate -> {
                sound(estimate.value(), estimate.unit());
                assertThat(estimate.sd()).isFinite().isNotNegative();
            }
            case Margin margin -> assertThat(margin.value()).isFinite();
            case Record sentence ->
                facts(sentence).forEach(fact -> {
                    switch (fact) {
                        case Said part -> sound(part);
                        case String words -> sound(words);
                        case List<?> parts -> parts.forEach(part -> sound((Said) part));
                        default -> {}
                    }
                });
            default -> {}
        }
    }

    private static void sound(double value, String unit) {
        assertThat(value).isFinite();
        if (unit.equals("mm") || unit.equals("km")) {
            assertThat(value).isNotNegative();
        }
    }

    private static List<Object> facts(Record sentence) {
        return Arrays.stream(sentence.getClass().getRecordComponents())
                .map(component -> {
                    try {
                        component.getAccessor().setAccessible(true);
                        return component.getAccessor().invoke(sentence);
                    } catch (ReflectiveOperationException e) {
                        throw new IllegalStateException(e);
                    }
                })
                .filter(Objects::nonNull)
                .toList();
    }

    private static void sound(String words) {
        assertThat(words).doesNotContainPattern(NO_NUMBER).doesNotContainPattern(LESS_THAN_NOTHING);
    }

    private record Place(
            @Nullable Corner corner,
            @Nullable String tag,
            @Nullable Spot spot) {}

    private static Place place(Measure measure, Visit visit, SplittableRandom random) {
        var spots = measure.spots().stream().sorted().toList();
        var spot = spots.isEmpty() ? null : spots.get(random.nextInt(spots.size()));
        if (measure.carrier() == Measure.Carrier.VEHICLE) {
            return new Place(null, null, spot);
        }
        var corner = Corner.values()[random.nextInt(Corner.values().length)];
        var wheels = random.nextBoolean() && visit.leftOn().containsKey(corner) ? visit.leftOn() : visit.arrivedOn();
        return new Place(corner, measure.carrier() == Measure.Carrier.WHEEL ? wheels.get(corner) : null, spot);
    }

    /** Any reading, at any visit, beside or in place of the one that stands there. */
    private static CarHistory withReading(CarHistory car, SplittableRandom random) {
        var visit = random.nextInt(3) == 0
                ? car.visits().get(random.nextInt(car.visits().size()))
                : car.visits().getLast();
        boolean ofTread = random.nextInt(3) == 0;
        var measure = ofTread ? Measure.TREAD_DEPTH : Measure.values()[random.nextInt(Measure.values().length)];
        var place = place(measure, visit, random);
        var standing = new StandingReadings(visit)
                .all(measure).stream()
                        .filter(reading -> reading.corner() == place.corner && reading.spot() == place.spot)
                        .findFirst()
                        .orElse(null);
        double value = Math.clamp(
                standing == null ? anywhere(measure, random) : typo(standing.value(), measure, random),
                measure.lowest(),
                measure.highest());
        var tag = standing == null ? place.tag : standing.wheelTag();
        if (measure.carrier() == Measure.Carrier.WHEEL && tag == null) {
            return car;
        }
        @Nullable String corrects = standing != null && random.nextBoolean() ? standing.id() : null;
        var reading = new Reading(
                "new-" + visit.id() + visit.readings().size(),
                measure,
                place.corner,
                tag,
                place.spot,
                value,
                String.valueOf(value),
                corrects,
                corrects == null ? null : "typed wrong");
        return with(car, visit, reading);
    }

    private static double anywhere(Measure measure, SplittableRandom random) {
        double value = switch (random.nextInt(4)) {
            case 0 -> measure.lowest();
            case 1 -> measure.highest();
            default -> measure.lowest() + random.nextDouble() * (measure.highest() - measure.lowest());
        };
        return measure.scale() == null ? value : Math.round(value);
    }

    private static double typo(double value, Measure measure, SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> value * 10;
            case 1 -> value / 10;
            case 2 -> value + 2;
            case 3 -> value - 2;
            case 4 -> swapped(value);
            case 5 -> value * (1 + 0.4 * random.nextDouble());
            default -> anywhere(measure, random);
        };
    }

    /** The first two digits in each other's place. */
    private static double swapped(double value) {
        var written = new StringBuilder(String.valueOf(value));
        int second = written.indexOf(".") == 1 ? 2 : 1;
        char first = written.charAt(0);
        written.setCharAt(0, written.charAt(second));
        written.setCharAt(second, first);
        return Double.parseDouble(written.toString().replaceAll("[^\\d.]", "0"));
    }

    /** Another visit after the last: soon, late, or where the odometer stood still, leapt or ran back. */
    private static CarHistory withOddVisit(CarHistory car, SplittableRandom random) {
        var last = car.visits().getLast();
        var standing = last.leftOn().isEmpty() ? last.arrivedOn() : last.leftOn();
        int days = new int[] {0, 0, 1, 40, 180, 366, 1500}[random.nextInt(7)];
        double km = new double[] {0, 1, 300, 4_000, 45_000, 345_000, 2_000_000, -1, -900, -40_000, -500_000}
                [random.nextInt(11)];
        var date = last.date().plusDays(days);
        var due = new LocalDate[] {null, null, date.minusDays(30), date, date.plusDays(1), date.plusYears(9)}
                [random.nextInt(6)];
        var odd = new Visit(
                "odd",
                date,
                Math.clamp(last.odometerKm() + km, 0, 3_000_000),
                random.nextInt(4) == 0 ? Map.of() : standing,
                random.nextInt(4) == 0 ? Map.of() : standing,
                List.of(),
                new JobCard(null, List.of(), null, due, List.of()),
                Set.of());
        var visits = new ArrayList<>(car.visits());
        visits.add(odd);
        var with = new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
        for (int more = random.nextInt(4); more > 0 && !odd.arrivedOn().isEmpty(); more--) {
            with = withReading(with, random);
        }
        return with;
    }

    private static CarHistory with(CarHistory car, Visit visit, Reading reading) {
        var readings = new ArrayList<>(visit.readings());
        readings.add(reading);
        var visits = car.visits().stream()
                .map(each -> each.equals(visit) ? each.withReadings(readings) : each)
                .toList();
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }
}
