package cornerbook.core.wheelplan.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.search.PlanReason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Wheels of different depth on an invented all-wheel-drive car: what is found, and what the plan keeps. */
class DifferenceRulesTest {
    private static final Assessor ASSESSOR = new Assessor(Cars.LIMITS);
    private static final DifferenceLimits TWO_MM_AMONG_ALL =
            new DifferenceLimits(new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 2), null, null);

    @Test
    void evenWheelsAreNotMentioned() {
        assertThat(differences(car(DifferenceLimits.NOT_KNOWN, 7, 7, 7, 7))).isEmpty();
    }

    /** 7.8 mm beside 5.8 mm, 1.5 mm allowed by the house. */
    @Test
    void anAxleThatDiffersByMoreThanTheHouseRuleIsFound() {
        assertThat(differences(car(DifferenceLimits.NOT_KNOWN, 7.8, 5.8, 7, 7)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
                    assertThat(differ(finding).tyres()).isEqualTo(new DifferenceSaid.Tyres(Axle.FRONT));
                    assertThat(finding.source())
                            .isEqualTo(new DifferenceSaid.ByMethod(Said.verbatim("invented for tests")));
                });
    }

    @Test
    void theManufacturersLimitOutranksTheHouseRule() {
        var wide = new DifferenceLimits(null, 3.0, null);
        assertThat(differences(car(wide, 7.8, 5.8, 7, 7))).isEmpty();
        var narrow = new DifferenceLimits(null, 0.5, null);
        assertThat(differences(car(narrow, 7.3, 6.3, 7, 7)))
                .extracting(Finding::source)
                .containsExactly(new DifferenceSaid.ByMethod(DifferenceSaid.Ground.MANUFACTURER));
    }

    @Test
    void allWheelDriveThatDiffersByMoreThanItsLimitIsFound() {
        assertThat(differences(car(TWO_MM_AMONG_ALL, 7.8, 7.8, 5, 5)))
                .singleElement()
                .satisfies(finding -> assertThat(differ(finding).tyres()).isEqualTo(new DifferenceSaid.Tyres(null)));
    }

    @Test
    void thePlanKeepsTheRulesAndSaysWhereEachComesFrom() {
        var plan = ASSESSOR.plan(car(DifferenceLimits.NOT_KNOWN, 7.8, 6.9, 6.8, 7.7), "v2")
                .orElseThrow();
        assertThat(plan.rules())
                .extracting(PlannedRule::rule, PlannedRule::state)
                .containsExactly(
                        tuple(Rule.SAME_AXLE, PlannedRule.State.KEPT),
                        tuple(Rule.ALL_WHEEL, PlannedRule.State.NOT_KNOWN),
                        tuple(Rule.DEEPER_PAIR_REAR, PlannedRule.State.KEPT));
        assertThat(plan.plan().leftOut()).isEmpty();
        assertThat(depth(plan, Corner.LF)).isCloseTo(depth(plan, Corner.RF), within(1.5));
        assertThat(depth(plan, Corner.LR)).isCloseTo(depth(plan, Corner.RR), within(1.5));
    }

    /** 7.8 and 5 mm on four wheels, two each: 2 mm among all four cannot be kept, whatever goes where. */
    @Test
    void aRuleThatNoAssignmentKeepsIsLeftOutAndSaid() {
        var car = car(TWO_MM_AMONG_ALL, 7.8, 7.8, 5, 5);
        var plan = ASSESSOR.plan(car, "v2").orElseThrow();
        assertThat(plan.plan().leftOut()).containsExactly(Rule.ALL_WHEEL);
        assertThat(plan.plan().reasons().getFirst())
                .isEqualTo(new PlanReason.MadeWithout(Listed.and(List.of(new PlanReason.RuleThat(Rule.ALL_WHEEL)))));
        assertThat(plan.request().rules().kept()).contains(Rule.ALL_WHEEL);
        assertThat(plan.replacements()).as("four new tyres are even").anySatisfy(option -> {
            assertThat(option.kind().tyres()).isEqualTo(4);
            assertThat(option.season()).isEqualTo(1);
            assertThat(option.distanceKm()).isPositive();
        });
        assertThat(ASSESSOR.assess(car, "v2").plan()).isEqualTo(plan.plan());
    }

    @Test
    void aRuleThatIsSwitchedOffIsNotKept() {
        var car = car(TWO_MM_AMONG_ALL, 7.8, 7.8, 5, 5);
        var plan = ASSESSOR.planWithout(car, "v2", Set.of(Rule.ALL_WHEEL)).orElseThrow();
        assertThat(plan.plan().leftOut()).isEmpty();
        assertThat(plan.rules())
                .filteredOn(rule -> rule.rule() == Rule.ALL_WHEEL)
                .extracting(PlannedRule::state)
                .containsExactly(PlannedRule.State.SWITCHED_OFF);
    }

    /** 2/32 in of tread is 10 mm of circumference (trade literature), to the digits given. */
    @Test
    void aLimitOfCircumferenceIsShownAsTreadToo() {
        var limit = new AllWheelLimit(AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE, 10);
        assertThat(limit.depthMm()).isCloseTo(2 * 25.4 / 32, within(0.01));
        assertThat(differences(car(new DifferenceLimits(limit, null, null), 7.8, 7.8, 5, 5)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.evidence())
                        .anySatisfy(evidence -> assertThat(evidence.value())
                                .isEqualTo(new DifferenceSaid.AllowedAmongFour(
                                        new Amount(10, "mm", 1), limit.kind(), new Amount(limit.depthMm(), "mm", 1)))));
    }

    private static double depth(SetPlan plan, Corner corner) {
        return plan.request().wheels().stream()
                .filter(wheel -> wheel.tag().equals(plan.plan().wheelAt().get(corner)))
                .flatMap(wheel -> wheel.depthsMm().stream())
                .mapToDouble(Double::doubleValue)
                .min()
                .orElseThrow();
    }

    private static List<Finding> differences(CarHistory car) {
        return ASSESSOR.assess(car, "v2").findings().stream()
                .filter(finding -> finding.subject().part() == Subject.Part.TREAD_DIFFERENCE)
                .toList();
    }

    /** Winter wheels of these depths, in the order of the corners, stand on the car. */
    private static CarHistory car(DifferenceLimits differences, double... depthsMm) {
        var before = Cars.changeOver(6, 8, List.of());
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                readings.add(
                        Cars.reading(Measure.TREAD_DEPTH, corner, "W-" + corner, spot, depthsMm[corner.ordinal()]));
            }
        }
        var last = before.visits().getLast();
        var visit = new Visit(
                last.id(),
                last.date(),
                last.odometerKm(),
                last.arrivedOn(),
                last.leftOn(),
                readings,
                new JobCard(last.card().technician(), List.of(), null, null, List.of()),
                Set.of());
        var known = VehicleDetails.NOT_KNOWN;
        return new CarHistory(
                before.vehicle()
                        .withDetails(new VehicleDetails(
                                differences,
                                known.use(),
                                known.body(),
                                known.fluidChange(),
                                known.pressureWarning(),
                                null)),
                before.customer(),
                before.sets(),
                List.of(before.visits().getFirst(), visit));
    }

    /** The house's rule is a wish that runs out today; the manufacturer's limit ends the set. */
    @Test
    void onlyTheManufacturersLimitEndsASet() {
        var house = differences(car(DifferenceLimits.NOT_KNOWN, 7.8, 5.8, 7, 7)).getFirst();
        assertThat(house.horizon()).isEqualTo(Cars.AUTUMN);
        var manufacturer = differences(car(new DifferenceLimits(null, 1.5, null), 7.8, 5.8, 7, 7))
                .getFirst();
        assertThat(manufacturer.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(manufacturer.horizon()).isNull();
        assertThat(manufacturer.lifeLeft()).isZero();
        assertThat(((Listed) manufacturer.evidence().getFirst().value()).items())
                .extracting(depth -> ((DifferenceSaid.DepthAt) depth).corner(), depth ->
                        (int) ((DifferenceSaid.DepthAt) depth).depth().value())
                .containsExactly(tuple(Corner.LF, 7), tuple(Corner.RF, 5));
    }

    @Test
    void theAxleThatDiffersIsNamed() {
        assertThat(differences(car(DifferenceLimits.NOT_KNOWN, 7, 7, 7.8, 5.8)))
                .singleElement()
                .satisfies(
                        finding -> assertThat(differ(finding).tyres()).isEqualTo(new DifferenceSaid.Tyres(Axle.REAR)));
    }

    private static DifferenceSaid.Differ differ(Finding finding) {
        return (DifferenceSaid.Differ) finding.title();
    }

    /**
     * In 7000 km of its first winter the front lost 1.8 mm and the rear 0.5 mm: 1.3 mm apart, 1.4 mm allowed. Before spring the limit
     * is passed, and little of what is allowed is left today.
     */
    @Test
    void aDifferenceThatGrowsHasTheDayOnWhichItIsTooMuch() {
        var limit = new DifferenceLimits(new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 1.4), null, null);
        var finding = differences(wearing(limit, 6.2, 7.5)).getFirst();
        assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(finding.title())
                .isEqualTo(new DifferenceSaid.WillDiffer(new DifferenceSaid.Tyres(null), new Amount(1.4, "mm", 1)));
        assertThat(finding.horizon()).isBetween(Cars.AUTUMN.plusDays(20), LocalDate.of(2027, 4, 15));
        assertThat(finding.lifeLeft()).isBetween(0.02, 0.4);
    }

    /** Winter wheels that were 8 mm new, after their first winter at these depths. */
    private static CarHistory wearing(DifferenceLimits differences, double frontMm, double rearMm) {
        var autumn = winter("v0", Cars.AUTUMN.minusYears(1), 33_000, Cars.at("S-"), Cars.at("W-"), 8, 8);
        var spring = winter("v1", LocalDate.of(2026, 4, 15), 40_000, Cars.at("W-"), Cars.at("S-"), frontMm, rearMm);
        var now = winter("v2", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("W-"), frontMm, rearMm);
        var car = car(differences, 7, 7, 7, 7);
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), List.of(autumn, spring, now));
    }

    private static Visit winter(
            String id,
            LocalDate date,
            double odometerKm,
            Map<Corner, String> arrivedOn,
            Map<Corner, String> leftOn,
            double frontMm,
            double rearMm) {
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            double depthMm = corner.axle() == Axle.FRONT ? frontMm : rearMm;
            for (var spot : Spot.values()) {
                readings.add(Cars.reading(Measure.TREAD_DEPTH, corner, "W-" + corner, spot, depthMm));
            }
        }
        return new Visit(id, date, odometerKm, arrivedOn, leftOn, readings);
    }
}
