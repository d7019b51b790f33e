package cornerbook.core.sight.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.Release;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightFindingsTest {
    /**
     * What each sign comes to. Law is Québec, C-24.2, r. 32 (ss. 161 and 170 in the version of 2024, ss. 152 and 174 as published
     * before); a degree that the technician chose is taken as it was said, common practice, no source.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            TYRE_BULGE          | yes           | TYRE_DAMAGE     | UNSAFE   | s. 170 (3): bulge of the carcass
            TYRE_CORDS          | yes           | TYRE_DAMAGE     | UNSAFE   | s. 170 (1): cords or steel belt exposed
            TYRE_CUT            | watch         | TYRE_DAMAGE     | RUNS_OUT | shallow, no cord: said so
            TYRE_CUT            | put right now | TYRE_DAMAGE     | SPENT    | said so
            TYRE_CUT            | dangerous     | TYRE_DAMAGE     | UNSAFE   | s. 170 (1): down to the cords
            TYRE_AGE_CRACKS     | watch         | TYRE_DAMAGE     | RUNS_OUT | said so
            TYRE_AGE_CRACKS     | dangerous     | TYRE_DAMAGE     | UNSAFE   | said so
            TYRE_BEAD           | put right now | TYRE_DAMAGE     | SPENT    | seated anew before it rolls
            TYRE_VALVE          | watch         | TYRE_DAMAGE     | RUNS_OUT | cracked rubber that holds
            TYRE_VALVE          | put right now | TYRE_DAMAGE     | SPENT    | said so
            RIM_BENT            | watch         | RIM             | RUNS_OUT | small flat spot that holds air
            RIM_BENT            | put right now | RIM             | SPENT    | s. 161: not bent
            RIM_CRACK           | yes           | RIM             | UNSAFE   | s. 170 (7): crack or break
            RIM_CORROSION       | watch         | RIM             | RUNS_OUT | cleaned at the next change
            WHEEL_STUDS         | yes           | WHEEL_FASTENERS | UNSAFE   | s. 170 (6): missing, cracked, broken
            WHEEL_BEARING       | watch         | SUSPENSION      | RUNS_OUT | slight play
            WHEEL_BEARING       | dangerous     | SUSPENSION      | UNSAFE   | wheel may come off
            BALL_JOINT          | dangerous     | SUSPENSION      | UNSAFE   | s. 152: part that positions the wheel
            DRIVE_SHAFT_BOOT    | put right now | SUSPENSION      | SPENT    | torn: joint runs dry
            DAMPER              | watch         | SUSPENSION      | RUNS_OUT | film of oil
            SPRING              | dangerous     | SUSPENSION      | UNSAFE   | s. 152: broken
            BRAKE_HOSE          | watch         | BRAKE_LINE      | RUNS_OUT | cracks of the cover
            BRAKE_HOSE          | dangerous     | BRAKE_LINE      | UNSAFE   | s. 174 (4), (6): bulges, or leaks
            BRAKE_PIPE          | put right now | BRAKE_LINE      | SPENT    | pitted
            BRAKE_PIPE          | dangerous     | BRAKE_LINE      | UNSAFE   | s. 174 (6): fluid leaks
            STRUCTURE_CORROSION | put right now | STRUCTURE       | SPENT    | jacking point no longer bears
            LEAK                | watch         | STRUCTURE       | RUNS_OUT | damp, no drops
            WIPERS              | put right now | VISIBILITY      | SPENT    | streaks in the view
            WASHER              | watch         | VISIBILITY      | RUNS_OUT | weak jet
            LIGHTS              | put right now | VISIBILITY      | SPENT    | one lamp out
            """)
    void oneSignMakesItsFinding(Measure sign, String word, Part part, Verdict verdict, String reason) {
        assertThat(judge(seen(sign, word))).singleElement().satisfies(finding -> {
            assertThat(finding.subject().part()).isEqualTo(part);
            assertThat(finding.verdict()).as(reason).isEqualTo(verdict);
        });
    }

    /**
     * BS AU 159f and the manufacturers' association of the United States, as dealers and makers quote them: tread centre, up to
     * 6 mm, 1.6 mm of tread or more, not driven on flat.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            tread centre | 8   | 5   | no  | TOO_WIDE      | UNSAFE | over 6 mm
            shoulder     | 4   | 5   | no  | SHOULDER      | UNSAFE | outside of the outermost grooves
            sidewall     | 2   | 5   | no  | SIDEWALL      | UNSAFE | never in the sidewall
            tread centre | 4   | 1.2 | no  | TOO_SHALLOW   | UNSAFE | below 1.6 mm
            tread centre | 4   | 1.6 | no  | REPAIRABLE    | SPENT  | not below 1.6 mm
            tread centre | 4   | 5   | no  | REPAIRABLE    | SPENT  | within every rule: repaired now
            tread centre | 6   | 5   | no  | REPAIRABLE    | SPENT  | up to 6 mm
            tread centre | 6.1 | 5   | no  | TOO_WIDE      | UNSAFE | over 6 mm
            tread centre | 4   | 5   | yes | DRIVEN_FLAT   | UNSAFE | sidewalls are broken inside
            tread centre | -   | 5   | no  | MEASURE_FIRST | SPENT  | hole not measured
            tread centre | 4   | -   | no  | MEASURE_FIRST | SPENT  | tread not measured
            shoulder     | -   | -   | no  | SHOULDER      | UNSAFE | whatever its size
            """)
    void aPunctureIsJudgedByPlaceSizeTreadAndWhetherItWasDrivenFlat(
            String place,
            @Nullable Double diameterMm,
            @Nullable Double depthMm,
            String drivenFlat,
            Puncture puncture,
            Verdict verdict,
            String reason) {
        assertThat(judge(punctured(place, diameterMm, depthMm, drivenFlat)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.title())
                            .as(reason)
                            .isEqualTo(new SightSaid.PunctureTitle(Corner.LF, puncture, false));
                    assertThat(finding.verdict()).as(reason).isEqualTo(verdict);
                });
    }

    /** It is not to be repaired once more: what it lacks is the size of the hole. */
    @Test
    void aRepairedPunctureThatNobodyMeasuredIsMeasured() {
        var repaired = seen(Measure.PUNCTURE_REPAIRED, "done");
        assertThat(judge(and(punctured("tread centre", null, 5.0, "no"), repaired)))
                .extracting(Finding::todo)
                .extracting(Todo::action)
                .containsExactly(Todo.Action.MEASURE_AGAIN);
        assertThat(judge(punctured("tread centre", null, 5.0, "no")))
                .extracting(Finding::todo)
                .extracting(Todo::action)
                .containsExactly(Todo.Action.REPAIR);
    }

    @Test
    void aRepairWithinTheRulesHoldsAndOneOutsideOfThemDoesNot() {
        var repaired = seen(Measure.PUNCTURE_REPAIRED, "done");
        assertThat(judge(and(punctured("tread centre", 4.0, 5.0, "no"), repaired)))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.HOLDS);
        assertThat(judge(and(punctured("shoulder", 4.0, 5.0, "no"), repaired)))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.UNSAFE);
    }

    @Test
    void aTyreThatIsCutIsNotRepaired() {
        assertThat(judge(and(punctured("tread centre", 4.0, 5.0, "no"), seen(Measure.TYRE_CUT, "dangerous"))))
                .extracting(Finding::title)
                .contains(new SightSaid.PunctureTitle(Corner.LF, Puncture.DAMAGED, false));
    }

    @Test
    void aSoundCarGivesNoFinding() {
        var sound = Arrays.stream(Measure.values())
                .filter(measure -> measure.scale() != null && measure.scale().beginsSound())
                .map(measure -> seen(measure, 0))
                .toList();
        assertThat(sound).hasSizeGreaterThan(20);
        assertThat(judge(sound.toArray(Reading[]::new))).isEmpty();
        assertThat(judge()).as("nobody looked").isEmpty();
    }

    @Test
    void aMissingKeyIsToldAndOneInTheGloveBoxIsNot() {
        assertThat(judge(seen(Measure.LOCKING_NUT_KEY, "missing")))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.RUNS_OUT);
        assertThat(judge(seen(Measure.LOCKING_NUT_KEY, "glove box"))).isEmpty();
    }

    /** Nobody repairs a broken carcass or a cracked rim; what is only watched is looked at again. Common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            TYRE_BULGE      | yes           | REPLACE | BEFORE_DRIVING
            TYRE_CORDS      | yes           | REPLACE | BEFORE_DRIVING
            TYRE_CUT        | put right now | REPLACE | NOW
            TYRE_AGE_CRACKS | watch         | INSPECT | AT_NEXT_VISIT
            RIM_CRACK       | yes           | REPLACE | BEFORE_DRIVING
            TYRE_VALVE      | put right now | REPAIR  | NOW
            WHEEL_BEARING   | dangerous     | REPAIR  | BEFORE_DRIVING
            """)
    void eachSignAsksForWhatMendsIt(Measure sign, String word, Todo.Action action, Todo.When by) {
        assertThat(judge(seen(sign, word))).extracting(Finding::todo).containsExactly(new Todo(action, by));
    }

    @Test
    void aHoleThatMustNotBeRepairedAsksForAnotherTyre() {
        assertThat(judge(punctured("shoulder", 4.0, 5.0, "no")))
                .extracting(Finding::todo)
                .containsExactly(new Todo(Todo.Action.REPLACE, Todo.When.BEFORE_DRIVING));
        assertThat(judge(punctured("tread centre", 4.0, 5.0, "no")))
                .extracting(Finding::todo)
                .containsExactly(new Todo(Todo.Action.REPAIR, Todo.When.NOW));
    }

    @Test
    void balanceWeightsAreKeptAndNotJudged() {
        assertThat(judge(seen(Measure.BALANCE_WEIGHTS, 120))).isEmpty();
    }

    @Test
    void aWheelThatComesOffKeepsNobodyFromDriving() {
        var bulge = seen(Measure.TYRE_BULGE, "yes");
        var swapped = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("W-"), List.of(bulge));
        assertThat(judge(swapped)).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
            assertThat(finding.todo()).isEqualTo(new Todo(Todo.Action.REPLACE, Todo.When.BEFORE_FITTING));
        });
        var inTheBay = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Map.of(), List.of(bulge));
        assertThat(judge(inTheBay)).extracting(Finding::verdict).containsExactly(Verdict.UNSAFE);
    }

    /** A carcass that broke in the store is as dangerous as one that broke on the road: Québec, C-24.2, r. 32, s. 170 (3). */
    @Test
    void aWheelThatComesFromTheStoreIsJudgedAsOneThatStays() {
        var bulge = Cars.reading(Measure.TYRE_BULGE, Corner.LF, "W-LF", null, Scale.SIGN.parse("yes"));
        var swapped = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("W-"), List.of(bulge));
        assertThat(judge(swapped)).extracting(Finding::verdict).containsExactly(Verdict.UNSAFE);
        assertThat(Measure.TYRE_BULGE.isReadIn(WorkStep.LOOK_OVER_STORED)).isTrue();
    }

    @Test
    void whatIsUnsafeKeepsTheCarAndLookingOpensNoWork() {
        var stud = seen(Measure.WHEEL_STUDS, "yes");
        var inTheBay = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Map.of(), List.of(stud));
        assertThat(Release.of(inTheBay, judge(inTheBay)))
                .extracting(OpenPoint::key)
                .containsExactly("UNSAFE.WHEEL_FASTENERS.LF");
    }

    private static Reading[] punctured(
            String place, @Nullable Double diameterMm, @Nullable Double depthMm, String drivenFlat) {
        var readings = new ArrayList<Reading>();
        readings.add(seen(Measure.PUNCTURE, place));
        readings.add(seen(Measure.TYRE_DRIVEN_FLAT, drivenFlat));
        if (diameterMm != null) {
            readings.add(seen(Measure.PUNCTURE_DIAMETER, diameterMm));
        }
        if (depthMm != null) {
            readings.add(Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.OUTER, depthMm));
            readings.add(Cars.reading(Measure.TREAD_DEPTH, Corner.LF, "S-LF", Spot.CENTRE, depthMm + 1));
        }
        return readings.toArray(Reading[]::new);
    }

    private static Reading[] and(Reading[] readings, Reading more) {
        var all = Arrays.copyOf(readings, readings.length + 1);
        all[readings.length] = more;
        return all;
    }

    private static Reading seen(Measure measure, String word) {
        var scale = measure.scale() == null ? Scale.DONE : measure.scale();
        return seen(measure, scale.parse(word));
    }

    private static Reading seen(Measure measure, double value) {
        boolean ofCar = measure.carrier() == Measure.Carrier.VEHICLE;
        return Cars.reading(
                measure,
                ofCar ? null : Corner.LF,
                measure.carrier() == Measure.Carrier.WHEEL ? "S-LF" : null,
                null,
                value);
    }

    private static List<Finding> judge(Reading... readings) {
        return judge(Cars.visit(List.of(readings)));
    }

    private static List<Finding> judge(Visit visit) {
        return SightFindings.judge(Cases.of(Cars.vehicle(), visit).last()).findings();
    }
}
