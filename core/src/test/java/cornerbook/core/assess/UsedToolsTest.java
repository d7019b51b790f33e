package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.air.judge.PressureFindings;
import cornerbook.core.air.judge.SensorPressureFindings;
import cornerbook.core.car.CarSaid;
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
import cornerbook.core.finding.Verdict;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tool.ToolSaid;
import cornerbook.core.tool.judge.ToolFindings;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the tools of a visit change in its findings. Tools and readings are invented. */
class UsedToolsTest {
    private static final LocalDate LATER = Cars.AUTUMN.plusMonths(3);

    private static ShopTool gauge(double offsetKpa, LocalDate due) {
        return new ShopTool("G-1", ShopTool.Kind.PRESSURE_GAUGE, "Invented gauge", 0, 700, offsetKpa, due);
    }

    private static ShopTool wrench(LocalDate due) {
        return new ShopTool("W-2", ShopTool.Kind.TORQUE_WRENCH, "Invented wrench", 20, 120, 0, due);
    }

    private static Visit visit(List<Reading> readings, ShopTool... tools) {
        return new Visit(
                "v",
                Cars.AUTUMN,
                48_000,
                Cars.at("S-"),
                Cars.at("S-"),
                readings,
                new JobCard(null, List.of(), null, null, Arrays.asList(tools)),
                Set.of());
    }

    private static List<Finding> pressures(Visit visit) {
        return PressureFindings.judge(given(visit)).findings();
    }

    private static List<Finding> tools(Visit visit) {
        return ToolFindings.judge(given(visit)).findings();
    }

    private static List<Finding> sensors(Visit visit) {
        return SensorPressureFindings.judge(given(visit)).findings();
    }

    private static Case given(Visit visit) {
        return Cases.of(Cars.history(visit)).last();
    }

    /** 250 kPa on a gauge that shows 14 kPa too much are 236 kPa: by definition of the offset, shown less true. */
    @Test
    void whatAGaugeShowsTooMuchIsTakenOffThePressure() {
        var readings = List.of(Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250));
        assertThat(pressures(visit(readings))).extracting(Finding::verdict).containsExactly(Verdict.HOLDS);
        var finding = pressures(visit(readings, gauge(14, LATER))).getFirst();
        assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
        assertThat(finding.title()).asString().contains("236");
        assertThat(finding.evidence().getFirst().how())
                .isEqualTo(new CarSaid.HowReadByGauge("250.0", new Amount(14, "kPa", 1), "G-1"));
    }

    @Test
    void aVisitThatNamesNoToolSaysNothingOfTools() {
        assertThat(tools(visit(List.of(Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, 140)))))
                .isEmpty();
    }

    /** From its day on it is due, as the shop's page says: "the day from which it is not to be trusted". */
    @Test
    void aToolPastItsDayIsSpentForItsUse() {
        assertThat(tools(visit(List.of(), gauge(0, Cars.AUTUMN))).getFirst().verdict())
                .isEqualTo(Verdict.SPENT);
        assertThat(tools(visit(List.of(), gauge(0, Cars.AUTUMN.plusDays(1))))
                        .getFirst()
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(tools(visit(List.of(), wrench(Cars.AUTUMN))).getFirst().title())
                .isEqualTo(new ToolSaid.WasDue(
                        ShopTool.Kind.TORQUE_WRENCH, "W-2", "Invented wrench", LocalDate.of(2026, 10, 20)));
    }

    @Test
    void aTorqueThatIsNotOnTheScaleOfTheWrenchIsToBeDoneAgain() {
        var readings = List.of(
                Cars.reading(Measure.WHEEL_TORQUE, Corner.LF, "S-LF", null, 140),
                Cars.reading(Measure.WHEEL_TORQUE, Corner.RF, "S-RF", null, 120));
        assertThat(tools(visit(readings, wrench(LATER))))
                .filteredOn(finding -> finding.verdict() == Verdict.SPENT)
                .extracting(Finding::title)
                .containsExactly(new ToolSaid.OffTheScale(
                        Corner.LF,
                        new Amount(140, "N·m", 0),
                        ShopTool.Kind.TORQUE_WRENCH,
                        "W-2",
                        new Between(20, 120, "N·m", 0)));
    }

    /**
     * Ideal gas: 35 psi gauge at 70 °F are 0.938 psi less at 60 °F (absolute pressure in proportion to absolute temperature,
     * standard atmosphere). A sensor that is 10 °F warmer than the tyre and reads 35 psi reads what a gauge of 34.062 psi
     * reads.
     */
    @Test
    void aSensorIsComparedAtTheTemperatureOfTheTyre() {
        double setKpa = Quantities.parse("34.062 psi", "kPa");
        var finding = sensors(visit(List.of(
                        Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, setKpa),
                        Cars.reading(
                                Measure.SENSOR_PRESSURE, Corner.LF, "S-LF", null, Quantities.parse("35 psi", "kPa")),
                        Cars.reading(
                                Measure.SENSOR_TEMPERATURE, Corner.LF, "S-LF", null, Quantities.parse("70 °F", "°C")),
                        Cars.reading(Measure.TYRE_TEMPERATURE, null, null, null, Quantities.parse("60 °F", "°C")))))
                .getFirst();
        assertThat(finding.lifeLeft()).isCloseTo(1, within(0.001));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** 2 psi is 13.8 kPa; a quarter of 250 kPa is 62.5 kPa (49 CFR 571.138 S4.2). */
    @Test
    void aSensorThatDiffersFromTheGaugeIsSaid() {
        assertThat(verdictOfSensor(250 + 13, 0)).isEqualTo(Verdict.HOLDS);
        assertThat(verdictOfSensor(250 + 14, 0)).isEqualTo(Verdict.RUNS_OUT);
        assertThat(verdictOfSensor(250 - 62, 0)).isEqualTo(Verdict.RUNS_OUT);
        assertThat(verdictOfSensor(250 - 63, 0)).isEqualTo(Verdict.SPENT);
        assertThat(verdictOfSensor(250 + 13, 5)).isEqualTo(Verdict.RUNS_OUT);
    }

    private static Verdict verdictOfSensor(double sensorKpa, double offsetKpa) {
        return sensors(visit(
                        List.of(
                                Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250),
                                Cars.reading(Measure.SENSOR_PRESSURE, Corner.LF, "S-LF", null, sensorKpa)),
                        gauge(offsetKpa, LATER)))
                .getFirst()
                .verdict();
    }

    @Test
    void twoToolsOfOneKindAreRefused() {
        assertThatThrownBy(() -> visit(List.of(), gauge(0, LATER), gauge(1, LATER)))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isEqualTo(new CarSaid.TwoToolsOfAKind()));
    }

    /** A gauge reads on its scale only, either end included. */
    @Test
    void aPressureOffTheScaleOfTheGaugeIsToBeReadAgain() {
        var readings = List.of(
                Cars.reading(Measure.PRESSURE_FOUND, Corner.LF, "S-LF", null, 701),
                Cars.reading(Measure.PRESSURE_SET, Corner.RF, "S-RF", null, 700));
        assertThat(tools(visit(readings, gauge(0, LATER))))
                .filteredOn(finding -> finding.verdict() == Verdict.SPENT)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.subject())
                            .isEqualTo(new Subject(Subject.Part.SHOP_TOOL, Corner.LF, "S-LF", null));
                    assertThat(finding.lifeLeft()).isZero();
                });
    }

    /** What a tool shows too much is said beside its calibration, with its sign; nothing is said of a true one. */
    @Test
    void theOffsetOfAToolIsShown() {
        assertThat(offset(gauge(-3.5, LATER))).containsExactly(new Amount(-3.5, "kPa", 1));
        assertThat(offset(gauge(0, LATER))).isEmpty();
        assertThat(offset(new ShopTool("W-3", ShopTool.Kind.TORQUE_WRENCH, "Invented wrench", 20, 200, 2, LATER)))
                .containsExactly(new Amount(2, "N·m", 1));
    }

    private static List<Said> offset(ShopTool tool) {
        return tools(visit(List.of(), tool)).getFirst().evidence().stream()
                .filter(evidence -> evidence.what() == ToolSaid.ToolEvidence.SHOWS_TOO_MUCH)
                .map(Evidence::value)
                .toList();
    }

    /** A sensor that reads 31.25 kPa too little has half of the warning's quarter left. */
    @Test
    void theMarkOfASensorShowsWhatIsLeftOfItsWarning() {
        var finding = sensors(visit(List.of(
                        Cars.reading(Measure.PRESSURE_SET, Corner.LF, "S-LF", null, 250),
                        Cars.reading(Measure.SENSOR_PRESSURE, Corner.LF, "S-LF", null, 218.75))))
                .getFirst();
        assertThat(finding.lifeLeft()).isCloseTo(0.5, within(1e-9));
        assertThat(finding.subject()).isEqualTo(new Subject(Subject.Part.PRESSURE_SENSOR, Corner.LF, "S-LF", null));
    }

    /** A sensor without a pressure by the gauge beside it is compared with nothing. */
    @Test
    void aSensorAloneIsNotJudged() {
        assertThat(sensors(visit(List.of(Cars.reading(Measure.SENSOR_PRESSURE, Corner.LF, "S-LF", null, 150)))))
                .isEmpty();
    }
}
