package cornerbook.core.air.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.air.GasLaw;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.season.Climate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air lost between two visits, with the temperature taken out. All readings are invented. */
class PressureFindingsTest {
    private static final double SPRING_C = 22;
    private static final double AUTUMN_C = 4;

    /** Set in spring in the warm, found in autumn in the cold after losing so much at 20 °C. */
    private static List<Finding> findings(double lostKpa) {
        return findings(lostKpa, null);
    }

    private static List<Finding> findings(double lostKpa, @Nullable Climate climate) {
        return findings(lostKpa, 180, climate);
    }

    private static List<Finding> findings(double lostKpa, int days, @Nullable Climate climate) {
        double springAt20 = GasLaw.gaugePressureKpa(250, SPRING_C, 20);
        double foundKpa = GasLaw.gaugePressureKpa(springAt20 - lostKpa, 20, AUTUMN_C);
        var spring = new Visit(
                "v1",
                Cars.AUTUMN.minusDays(days),
                40_000,
                Cars.at("W-"),
                Cars.at("S-"),
                List.of(
                        Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250),
                        Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, SPRING_C)),
                new JobCard("Ida", List.of(), null, null, List.of()),
                Set.of());
        var autumn = Cars.visit(new ArrayList<>(List.of(
                Cars.reading(Measure.PRESSURE_FOUND, Corner.LF, "S-LF", null, foundKpa),
                Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250),
                Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, AUTUMN_C))));
        return PressureFindings.judge(
                        Cases.of(Cars.history(spring, autumn)).in(climate).last())
                .findings();
    }

    @Test
    void coldAloneIsNoLeak() {
        assertThat(findings(0)).noneMatch(finding -> finding.title() instanceof PressureSaid.SlowLeak);
        assertThat(findings(0).getLast().evidence())
                .extracting(Evidence::what)
                .contains(PressureSaid.Label.AIR_LOSS, PressureSaid.Label.ABOVE_WARNING);
    }

    /** 20 kPa in 30 days; from 250 kPa a quarter, 62.5 kPa, is gone after 93.75 days. */
    @Test
    void aSlowLeakIsToldFromTheColdAndHasItsDay() {
        var leak = findings(20, 30, null).stream()
                .filter(finding -> finding.title() instanceof PressureSaid.SlowLeak)
                .findFirst()
                .orElseThrow();
        assertThat(leak.title()).isInstanceOfSatisfying(PressureSaid.SlowLeak.class, said -> {
            assertThat(said.tag()).isEqualTo("S-LF");
            assertThat(said.loss().value()).isCloseTo(20, within(1e-9));
        });
        assertThat(leak.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(leak.horizon()).isEqualTo(Cars.AUTUMN.plusDays(93));
    }

    /** One cause at a corner is told once: air that was put into a leaking tyre is no good news beside it. */
    @Test
    void aTyreThatCameInFarTooLowIsToldOnceWithItsLoss() {
        assertThat(findings(120)).singleElement().satisfies(finding -> {
            assertThat(finding.title()).isInstanceOf(PressureSaid.CameLow.class);
            assertThat(finding.evidence()).extracting(Evidence::what).contains(PressureSaid.Label.AIR_LOSS);
        });
    }

    /** The tyre set lowest against its placard comes nearest; its curve at −20 °C by the ideal gas. */
    @Test
    void theTyreNearestToItsWarningIsLookedAhead() {
        var visit = Cars.visit(List.of(
                Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250),
                Cars.reading(Measure.PRESSURE_SET, Corner.RF, "S-RF", null, 243),
                Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, AUTUMN_C)));
        var outlook = PressureOutlook.find(given(visit)).orElseThrow();
        assertThat(outlook.corner()).isEqualTo(Corner.RF);
        assertThat(outlook.curve().atKpa(-20)).isEqualTo(GasLaw.gaugePressureKpa(243, AUTUMN_C, -20));
        assertThat(outlook.curve().coldestC()).isEqualTo(-20);
        assertThat(PressureOutlook.find(given(Cars.visit(List.of())))).isEmpty();
    }

    /** Set to 250 kPa at 4 °C: (250 + 101.325) × 239.15/277.15 − 101.325 at −34 °C (ideal gas, by hand) is 202 kPa. */
    @Test
    void theColdestMorningIsThatOfThePlaceWhereItIsKnown() {
        var climate = new Climate(
                "an invented place", "invented", -34, Collections.nCopies(12, new Climate.MonthNormal(-10, 0)));
        assertThat(findings(0, climate).getLast().evidence()).anySatisfy(evidence -> {
            assertThat(evidence.what()).isEqualTo(new PressureSaid.ToExpect(Amount.of(-34, "°C")));
            assertThat(((Amount) evidence.value()).value()).isCloseTo(201.8, within(0.1));
            assertThat(evidence.how())
                    .isEqualTo(new PressureSaid.GasFrom(
                            Amount.of(4, "°C"), new PressureSaid.ColdestOf("an invented place (invented)")));
        });
        assertThat(findings(0).getLast().evidence()).anySatisfy(evidence -> {
            assertThat(evidence.what()).isEqualTo(new PressureSaid.ToExpect(Amount.of(-20, "°C")));
            assertThat(evidence.how())
                    .isEqualTo(new PressureSaid.GasFrom(Amount.of(4, "°C"), PressureSaid.Ground.COLD_MORNING));
        });
    }

    private static Finding set(double setKpa, double outsideC) {
        var visit = Cars.visit(List.of(
                Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, setKpa),
                Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, 20),
                Cars.reading(Measure.OUTSIDE_TEMPERATURE, null, null, null, outsideC)));
        return PressureFindings.judge(given(visit)).findings().getLast();
    }

    /** Placard 250 kPa at −15 °C: (250 + 101.325) × 293.15/258.15 − 101.325 (ideal gas, by hand) are 297.6 kPa at 20 °C. */
    @Test
    void whatWasSetIsJudgedByTheTemperatures() {
        assertThat(set(298, -15).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(set(298, -15).title()).isInstanceOfSatisfying(PressureSaid.SetFor.class, said -> {
            assertThat(said.asked().value()).isCloseTo(297.6, within(0.05));
            assertThat(said.placard()).isEqualTo(Amount.of(250, "kPa"));
        });
        assertThat(set(250, -15).verdict()).isEqualTo(Verdict.SPENT);
        assertThat(set(250, 20).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(set(298, 20).verdict()).isEqualTo(Verdict.SPENT);
    }

    /** 25 % below the placard of 250 kPa is 187.5 kPa (49 CFR 571.138 S4.2): the warning comes below it. */
    @ParameterizedTest
    @CsvSource({"187.4, true", "187.5, false", "230, false"})
    void aTyreThatCameInFarTooLowLooksForALeak(double foundKpa, boolean low) {
        var found = Cars.reading(Measure.PRESSURE_FOUND, Corner.LF, "S-LF", null, foundKpa);
        assertThat(judge(Cars.at("S-"), found).stream()
                        .anyMatch(finding ->
                                finding.verdict() == Verdict.SPENT && finding.title() instanceof PressureSaid.CameLow))
                .isEqualTo(low);
    }

    /** The hole is told by whoever looked the tyre over. */
    @Test
    void whereAHoleWasFoundNobodyLooksForTheLeak() {
        var flat = Cars.reading(Measure.PRESSURE_FOUND, Corner.LF, "S-LF", null, 60);
        for (var place : List.of(0, 2)) {
            var hole = Cars.reading(Measure.PUNCTURE, Corner.LF, "S-LF", null, place);
            var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of(flat, hole));
            assertThat(PressureFindings.judge(given(visit)).findings().stream()
                            .anyMatch(finding -> finding.title() instanceof PressureSaid.CameLow))
                    .isEqualTo(place == 0);
        }
    }

    /** A tyre that leaks and stays on the car has to be mended now; one that goes into store, before it goes on again. */
    @Test
    void aLowTyreThatComesOffMayWait() {
        var found = Cars.reading(Measure.PRESSURE_FOUND, Corner.LF, "S-LF", null, 125);
        assertThat(judge(Cars.at("W-"), found)).first().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
            assertThat(finding.todo()).isEqualTo(new Todo(Todo.Action.FIND_LEAK, Todo.When.BEFORE_FITTING));
            assertThat(finding.lifeLeft()).isEqualTo(0.5);
            assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.PRESSURE, Corner.LF, "S-LF", null));
        });
    }

    /** Ten kilopascals either way of the placard's 250 kPa: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"239, SPENT", "240, HOLDS", "260, HOLDS", "261, SPENT"})
    void whatWasSetMayDifferByTen(double setKpa, Verdict verdict) {
        assertThat(judge(Cars.at("S-"), Cars.reading(Measure.PRESSURE_SET, Corner.RF, "S-RF", null, setKpa)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(verdict);
                    assertThat(finding.lifeLeft())
                            .isEqualTo(verdict == Verdict.HOLDS ? 1 : 1 - Math.abs(setKpa - 250) / 250);
                });
    }

    @Test
    void aWheelWithoutAPressureIsNamed() {
        var visit = Cars.visit(List.of(Cars.reading(Measure.PRESSURE_SET, Corner.RF, "S-RF", null, 250)));
        assertThat(PressureFindings.judge(given(visit)).notJudged())
                .containsExactly(
                        new PressureSaid.NotSet(Corner.LF, "S-LF"),
                        new PressureSaid.NotSet(Corner.LR, "S-LR"),
                        new PressureSaid.NotSet(Corner.RR, "S-RR"));
    }

    private static List<Finding> judge(Map<Corner, String> leftOn, Reading reading) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, Cars.at("S-"), leftOn, List.of(reading));
        return PressureFindings.judge(given(visit)).findings();
    }

    private static Case given(Visit visit) {
        return Cases.of(Cars.history(visit)).last();
    }

    /** 250 kPa set at 4 °C are 219.6 kPa at −20 °C by the ideal gas, 32.1 kPa above the warning at 187.5 kPa. */
    @Test
    void theColdestMorningIsHeldAgainstTheWarning() {
        assertThat(findings(0).getLast().evidence())
                .filteredOn(evidence -> evidence.what() == PressureSaid.Label.ABOVE_WARNING)
                .singleElement()
                .satisfies(evidence ->
                        assertThat(((Amount) evidence.value()).value()).isCloseTo(32.1, within(0.1)));
    }

    /** The words follow the verdict, and a placard that is brought to the warm tyre is named as such. */
    @Test
    void theWordsFollowTheVerdict() {
        assertThat(set(298, -15).plainWords()).isEqualTo(new PressureSaid.SetRight(Corner.LF));
        assertThat(set(250, -15).plainWords()).isEqualTo(new PressureSaid.SetWrong(Corner.LF));
        assertThat(set(250, -15).evidence())
                .filteredOn(evidence -> evidence.what() == PressureSaid.Label.TO_BE_SET)
                .extracting(Evidence::how)
                .singleElement()
                .isInstanceOf(PressureSaid.ByGas.class);
    }
}
