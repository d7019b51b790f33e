package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.Rule;
import java.util.ArrayList;
import java.util.List;
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
                    assertThat(finding.title()).startsWith("The two tyres of the front axle differ by");
                    assertThat(finding.source()).startsWith("invented for tests");
                });
    }

    @Test
    void theManufacturersLimitOutranksTheHouseRule() {
        var wide = new DifferenceLimits(null, 3.0, null);
        assertThat(differences(car(wide, 7.8, 5.8, 7, 7))).isEmpty();
        var narrow = new DifferenceLimits(null, 0.5, null);
        assertThat(differences(car(narrow, 7.3, 6.3, 7, 7)))
                .singleElement()
                .extracting(Finding::source)
                .asString()
                .startsWith("vehicle manufacturer's data");
    }

    @Test
    void allWheelDriveThatDiffersByMoreThanItsLimitIsFound() {
        assertThat(differences(car(TWO_MM_AMONG_ALL, 7.8, 7.8, 5, 5)))
                .singleElement()
                .extracting(Finding::title)
                .asString()
                .startsWith("The four tyres differ by");
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
                .startsWith("No assignment keeps the rule that the four tyres stay");
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
                                .isEqualTo("10.0 mm of rolling circumference, which is 1.6 mm of tread")));
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
                last.technician(),
                last.arrivedOn(),
                last.leftOn(),
                readings,
                List.of(),
                null,
                null);
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
}
