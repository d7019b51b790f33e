package cornerbook.core.lift.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftSaid;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Facts;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The car on the hoist of a visit. Cars and hoists are invented unless a source is named. */
class LiftFindingsTest {
    private static final LiftPoints POINTS = LiftPoints.symmetric(600, 2100, 1500);

    private final List<Said> notJudged = new ArrayList<>();

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
                Cars.at("S-"),
                Cars.at("S-"),
                List.of(),
                new JobCard(null, List.of(), null, null, List.of(tools)),
                Set.of());
        var judged = LiftFindings.judge(Cases.of(vehicle, visit).last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
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
                .anySatisfy(evidence ->
                        assertThat(Facts.of(evidence.value())).startsWith("OfRating(%.0f kg,".formatted(kg(3500))))
                .anySatisfy(evidence -> assertThat(Facts.of(evidence.value()))
                        .startsWith("OfRating(%.0f kg, 96 %%,".formatted(kg(11_500))));
        assertThat(notJudged)
                .containsExactly(new LiftSaid.UnderNotKnown(
                        "H-1", List.of(LiftSaid.Part.LIFT_POINT_HEIGHT, LiftSaid.Part.GROUND_CLEARANCE)));
    }

    /** Points in the middle of a car that weighs the same on both axles: a quarter each, a half of it twice on three pads. */
    @Test
    void withinAllRatingsItHolds() {
        var finding = finding(body(1600, 180.0, POINTS), hoist(4000, 1000));
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.evidence()).anySatisfy(evidence -> {
            assertThat(Facts.of(evidence.value())).isEqualTo("OfRating(400 kg, 40 %, 1000 kg)");
            assertThat(Facts.of(evidence.how())).isEqualTo("EvenPads(800 kg, 80 %)");
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
                .anySatisfy(evidence -> assertThat(Facts.of(evidence.value())).isEqualTo("WithBlocks(30 mm)"));
    }

    @Test
    void aCentreOfGravityOutsideThePointsIsUnsafe() {
        var finding = finding(body(1600, 180.0, LiftPoints.symmetric(1500, 2600, 1500)), hoist(4000, 1000));
        assertThat(finding.verdict()).isEqualTo(Verdict.UNSAFE);
        assertThat(Facts.of(finding.title())).isEqualTo("TipsOnHoist(H-1, 150 mm)");
    }

    @Test
    void whatIsNotKnownOfTheCarIsSaid() {
        assertThat(findings(body(1600, 180.0, null), hoist(4000, 1000))).isEmpty();
        assertThat(notJudged).containsExactly(new LiftSaid.NotKnown("H-1", List.of(LiftSaid.Part.LIFT_POINTS)));
    }

    @Test
    void aVisitThatNamesNoHoistSaysNothingOfLifting() {
        assertThat(findings(body(1600, null, null))).isEmpty();
        assertThat(notJudged).isEmpty();
    }

    /** 1800 kg are 90 % of a hoist rated 2000 kg, from where the margin is thin; 1600 kg are all of one rated 1600 kg, and not more. */
    @ParameterizedTest
    @CsvSource({"1800, 2000, HOLDS", "1800, 1999, RUNS_OUT", "1600, 1600, RUNS_OUT", "1600, 1599, UNSAFE"})
    void aHoistIsThinFrom90PercentAndTooWeakAbove100(double massKg, double hoistKg, Verdict verdict) {
        var finding = finding(body(massKg, 180.0, POINTS), hoist(hoistKg, 1000));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.lifeLeft()).isCloseTo(Math.max(0, 1 - massKg / hoistKg), within(1e-9));
    }

    /** The centre of gravity lies 1350 mm behind the front axle: 150 mm inside the points are enough, on their line it tips. */
    @ParameterizedTest
    @CsvSource({"1200, HOLDS", "1201, RUNS_OUT", "1349, RUNS_OUT", "1350, UNSAFE", "1351, UNSAFE"})
    void theCentreOfGravityHasToLieWellInside(double frontMm, Verdict verdict) {
        var finding = finding(body(1600, 180.0, LiftPoints.symmetric(frontMm, 2500, 1500)), hoist(12_000, 5000));
        assertThat(finding.verdict()).isEqualTo(verdict);
    }

    @Test
    void theMarginIsShownWithItsSide() {
        var tips = finding(body(1600, 180.0, LiftPoints.symmetric(1500, 2600, 1500)), hoist(4000, 1000));
        assertThat(Facts.of(tips.evidence().getFirst().value())).isEqualTo("-150 mm");
        assertThat(Facts.of(
                        finding(body(1600, 180.0, POINTS), hoist(4000, 1000)).title()))
                .isEqualTo("OnHoist(H-1, 40 %, 750 mm)");
    }

    /** Four wheels of 22 kg off, the car weighs 1512 kg; a wheel that nobody weighed leaves that unsaid. */
    @Test
    void theCarIsJudgedWithItsWheelsOffToo() {
        assertThat(finding(body(1600, 180.0, POINTS), hoist(4000, 1000)).evidence())
                .filteredOn(evidence -> evidence.what() instanceof LiftSaid.HoistWith)
                .extracting(evidence -> Facts.of(evidence.what()), evidence -> Facts.of(evidence.value()))
                .containsExactly(
                        tuple("HoistWith(ON)", "OfRating(1600 kg, 40 %, 4000 kg)"),
                        tuple("HoistWith(OFF)", "OfRating(1512 kg, 38 %, 4000 kg)"));
        var unweighed = new CarBody(1600.0, 0.5, 2700.0, 1550.0, 160.0, 180.0, null, POINTS);
        assertThat(finding(unweighed, hoist(4000, 1000)).evidence())
                .contains(new Evidence(
                        LiftSaid.Wheels.OFF, LiftSaid.Label.NOT_JUDGED, LiftSaid.Label.WHEEL_MASS_NOT_KNOWN));
    }

    /** Lowered pad 120 mm, adapter 40 mm, play 10 mm: 10 mm are to spare under a point at 180 mm, none under one at 170 mm. */
    @ParameterizedTest
    @CsvSource({"180, ToSpare(10 mm)", "170, ToSpare(0 mm)", "169, BlocksNeeded(1 mm)"})
    void whetherTheArmsGoUnderIsShown(double pointMm, String value) {
        assertThat(finding(body(1600, pointMm, POINTS), hoist(4000, 1000)).evidence())
                .filteredOn(evidence -> evidence.what() == LiftSaid.Label.ARMS_UNDER_CAR)
                .extracting(evidence -> Facts.of(evidence.value()))
                .containsExactly(value);
    }

    /** Blocks that are higher than needed, but none that are enough: the highest are tried and said. */
    @Test
    void blocksThatAreTooLowDoNotHelp() {
        var finding = finding(body(1600, 140.0, POINTS), hoist(4000, 1000, 10.0, 20.0));
        assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
    }

    @Test
    void oneThingThatIsNotKnownIsNamedAlone() {
        finding(new CarBody(1600.0, 0.5, 2700.0, 1550.0, null, 180.0, 22.0, POINTS), hoist(4000, 1000));
        assertThat(notJudged)
                .containsExactly(new LiftSaid.UnderNotKnown("H-1", List.of(LiftSaid.Part.GROUND_CLEARANCE)));
    }

    @Test
    void aHoistWithTwoArmsIsNotComputed() {
        var two = new ShopTool(
                "H-2",
                ShopTool.Kind.HOIST,
                "Invented hoist",
                120,
                1900,
                0,
                Cars.AUTUMN.plusMonths(5),
                new Hoist(2, new HoistRating(4000, 1000, 1000), List.of(40.0), List.of()));
        assertThat(findings(body(1600, 180.0, POINTS), two)).isEmpty();
        assertThat(notJudged).containsExactly(new LiftSaid.OtherArmCount("H-2", 2));
    }
}
