package cornerbook.core.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.quantity.Quantities;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The car on the hoist of a visit. Cars and hoists are invented unless a source is named. */
class LiftFindingsTest {
    private static final LiftPoints POINTS = LiftPoints.symmetric(600, 2100, 1500);

    private final List<String> notJudged = new ArrayList<>();

    private static double kg(double pounds) {
        return Quantities.parse(pounds + " lb", "kg");
    }

    private static CarBody body(double massKg, @Nullable Double pointHeightMm, @Nullable LiftPoints points) {
        return new CarBody(massKg, 0.5, 2700.0, 1550.0, 160.0, pointHeightMm, 22.0, points);
    }

    private static ShopTool hoist(double hoistKg, double armKg, Double... blocksMm) {
        return new ShopTool(
                "H-1",
                ShopTool.Kind.HOIST,
                "Invented hoist",
                120,
                1900,
                0,
                Cars.AUTUMN.plusMonths(5),
                new Hoist(4, new HoistRating(hoistKg, armKg, armKg), List.of(80.0, 40.0), List.of(blocksMm)));
    }

    private Finding finding(CarBody body, ShopTool... tools) {
        return findings(body, tools).getFirst();
    }

    private List<Finding> findings(CarBody body, ShopTool... tools) {
        var details = VehicleDetails.NOT_KNOWN;
        var vehicle = Cars.vehicle()
                .withDetails(new VehicleDetails(
                        details.differences(),
                        details.use(),
                        body,
                        details.fluidChange(),
                        details.pressureWarning(),
                        null));
        var visit = new Visit(
                "v",
                Cars.AUTUMN,
                48_000,
                null,
                Cars.at("S-"),
                Cars.at("S-"),
                List.of(),
                List.of(),
                null,
                null,
                List.of(tools));
        return LiftFindings.of(vehicle, visit, notJudged).stream().toList();
    }

    /**
     * Trade press (the serial "Heavy-duty vehicle lift safety tips", tip 3): 11 500 lb with 4500 lb in front and 7000 lb
     * behind on a hoist rated 12 000 lb, 3000 lb an arm; each rear arm has 3500 lb to carry, so it is overloaded though the
     * hoist is not.
     */
    @Test
    void anArmMayBeOverloadedWhileTheHoistIsNot() {
        var body = new CarBody(
                kg(11_500), 4500 / 11_500.0, 3500.0, 1800.0, null, null, null, LiftPoints.symmetric(0, 3500, 1600));
        var finding = finding(body, hoist(kg(12_000), kg(3000)));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNSAFE);
        assertThat(finding.evidence())
                .anySatisfy(evidence -> assertThat(evidence.value()).startsWith("%.0f kg,".formatted(kg(3500))))
                .anySatisfy(
                        evidence -> assertThat(evidence.value()).startsWith("%.0f kg: 96 %%".formatted(kg(11_500))));
        assertThat(notJudged)
                .containsExactly(
                        "lift on H-1: whether the arms go under cannot be said, as the car's height of its lift points, ground clearance are not known");
    }

    /** Points in the middle of a car that weighs the same on both axles: a quarter each, a half of it twice on three pads. */
    @Test
    void withinAllRatingsItHolds() {
        var finding = finding(body(1600, 180.0, POINTS), hoist(4000, 1000));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.evidence()).anySatisfy(evidence -> {
            assertThat(evidence.value()).isEqualTo("400 kg, 40 % of 1000 kg");
            assertThat(evidence.how()).isEqualTo("all pads bear evenly; 800 kg, 80 %, when one bears nothing");
        });
        assertThat(notJudged).isEmpty();
    }

    @Test
    void nearARatingItRunsOut() {
        assertThat(finding(body(1600, 180.0, POINTS), hoist(4000, 799)).verdict())
                .isEqualTo(Verdict.RUNS_OUT);
        assertThat(finding(body(1600, 180.0, POINTS), hoist(1700, 1000)).verdict())
                .isEqualTo(Verdict.RUNS_OUT);
    }

    /** Lowered pad 120 mm, lowest adapter 40 mm and 10 mm of play under a point at 140 mm: 30 mm are missing. */
    @Test
    void lowCarsNeedBlocks() {
        assertThat(finding(body(1600, 140.0, POINTS), hoist(4000, 1000)).verdict())
                .isEqualTo(Verdict.SPENT);
        var onBlocks = finding(body(1600, 140.0, POINTS), hoist(4000, 1000, 60.0, 30.0, 20.0));
        assertThat(onBlocks.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(onBlocks.evidence())
                .anySatisfy(evidence -> assertThat(evidence.value()).isEqualTo("with blocks of 30 mm"));
    }

    @Test
    void aCentreOfGravityOutsideThePointsIsUnsafe() {
        var finding = finding(body(1600, 180.0, LiftPoints.symmetric(1500, 2600, 1500)), hoist(4000, 1000));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNSAFE);
        assertThat(finding.title())
                .isEqualTo("Hoist H-1: centre of gravity 150 mm outside the lift points, do not lift");
    }

    @Test
    void whatIsNotKnownOfTheCarIsSaid() {
        assertThat(findings(body(1600, 180.0, null), hoist(4000, 1000))).isEmpty();
        assertThat(notJudged).containsExactly("lift on H-1: cannot be said, as the car's lift points are not known");
    }

    @Test
    void aVisitThatNamesNoHoistSaysNothingOfLifting() {
        assertThat(findings(body(1600, null, null))).isEmpty();
        assertThat(notJudged).isEmpty();
    }
}
