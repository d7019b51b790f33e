package cornerbook.core.lift.judge;

import static cornerbook.core.lift.Ratings.rated;
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
import cornerbook.core.lift.CarHeights;
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
        return new CarBody(massKg, 0.5, 2700.0, 1550.0, new CarHeights(160.0, pointHeightMm, null), 22.0, points);
    }

    private static ShopTool hoist(double hoistKg, double armKg, Double... blocksMm) {
        return hoist(new Hoist(4, rated(armKg, hoistKg), List.of(80.0, 40.0), 5000.0, List.of(blocksMm), null, null));
    }

    private static ShopTool fitted(
            double adapterMm, double adapterKg, @Nullable Double driveOverMm, @Nullable Double ceilingMm) {
        return hoist(new Hoist(4, rated(1000, 4000), List.of(adapterMm), adapterKg, List.of(), driveOverMm, ceilingMm));
    }

    private static ShopTool hoist(Hoist hoist) {
        return new ShopTool(
                "H-1", ShopTool.Kind.HOIST, "Invented hoist", 120, 1900, 0, Cars.AUTUMN.plusMonths(5), hoist);
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
                kg(11_500),
                4500 / 11_500.0,
                3500.0,
                1800.0,
                CarHeights.NOT_KNOWN,
                null,
                LiftPoints.symmetric(0, 3500, 1600));
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

    /** Without lift points the arms have half of each axle, 400 kg; without the axles' shares the hoist alone is judged; without a mass nothing. */
    @Test
    void whatIsNotKnownOfTheCarIsSaidAndTheRestIsJudged() {
        assertThat(finding(body(1600, 180.0, null), hoist(4000, 1000)).title())
                .extracting(Facts::of)
                .isEqualTo("OnHoist(H-1, 40 %, 80 %, none)");
        assertThat(notJudged).containsExactly(new LiftSaid.PointsNotKnown("H-1", List.of(LiftSaid.Part.LIFT_POINTS)));
        notJudged.clear();
        var weighed = new CarBody(1600.0, null, null, null, new CarHeights(160.0, 180.0, null), null, null);
        assertThat(finding(weighed, hoist(1500, 1000)).verdict()).isEqualTo(Verdict.UNSAFE);
        assertThat(finding(weighed, hoist(1600, 1000)).verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(notJudged)
                .hasSize(2)
                .containsOnly(new LiftSaid.ArmsNotKnown("H-1", List.of(LiftSaid.Part.FRONT_SHARE)));
        notJudged.clear();
        assertThat(findings(CarBody.NOT_KNOWN, hoist(4000, 1000))).isEmpty();
        assertThat(notJudged).containsExactly(new LiftSaid.NotKnown("H-1", List.of(LiftSaid.Part.KERB_MASS)));
    }

    /**
     * A hoist seller's page: 3000 lb in front and 6000 lb behind ask for a hoist of 12 000 lb with 3000 lb an arm. The rear arms are
     * at their rating; with one pad bearing nothing one of them would carry 4500 lb, half as much again, which is a caution.
     */
    @Test
    void thePublishedExampleIsLiftedWithACaution() {
        var body = new CarBody(kg(9000), 3000 / 9000.0, null, null, CarHeights.NOT_KNOWN, null, null);
        var finding = finding(body, hoist(kg(12_000), kg(3000)));
        assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(Facts.of(finding.title())).isEqualTo("OnHoist(H-1, 100 %, 150 %, none)");
        assertThat(Facts.of(finding.plainWords())).matches("ArmUneven\\([LR]R, 2041 kg, 150 %\\)");
        assertThat(finding(body, hoist(kg(10_000), kg(2500))).verdict()).isEqualTo(Verdict.UNSAFE);
    }

    /** 400 kg on each arm with even pads. */
    @ParameterizedTest
    @CsvSource({"400, RUNS_OUT, ArmUneven", "399, UNSAFE, CUSTOMER_TOO_HEAVY", "800, HOLDS, CUSTOMER_WITHIN"})
    void onlyTheEvenLoadForbidsTheLift(double armKg, Verdict verdict, String plainWords) {
        var finding = finding(body(1600, 180.0, POINTS), hoist(4000, armKg));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(Facts.of(finding.plainWords())).startsWith(plainWords);
    }

    /** 400 kg on an arm: an adapter rated 400 kg is enough, one rated 399 kg is not. */
    @ParameterizedTest
    @CsvSource({"450, HOLDS", "400, RUNS_OUT", "399, UNSAFE"})
    void adaptersCarryWhatTheirArmCarries(double adapterKg, Verdict verdict) {
        assertThat(finding(body(1600, 180.0, POINTS), fitted(40.0, adapterKg, null, null))
                        .verdict())
                .isEqualTo(verdict);
        assertThat(notJudged).isEmpty();
    }

    /** Base plate 150 mm with 10 mm of play under 160 mm of clearance. */
    @ParameterizedTest
    @CsvSource({"150, HOLDS", "151, SPENT"})
    void aLowCarMayNotGetToItsPlace(double driveOverMm, Verdict verdict) {
        assertThat(finding(body(1600, 180.0, POINTS), fitted(40.0, 1000, driveOverMm, null))
                        .verdict())
                .isEqualTo(verdict);
    }

    /** Pads to 1900 mm, adapter 40 mm, roof 1400 mm above the lift point, gap 100 mm: 3440 mm of ceiling are enough. */
    @ParameterizedTest
    @CsvSource({"3440, HOLDS, CUSTOMER_WITHIN", "3439, RUNS_OUT, 'RaiseNoHigher(1899 mm, 100 mm)'"})
    void aCeilingThatEndsTheLiftIsACaution(double ceilingMm, Verdict verdict, String plainWords) {
        var car = new CarBody(1600.0, 0.5, 2700.0, 1550.0, new CarHeights(160.0, 180.0, 1580.0), 22.0, POINTS);
        var finding = finding(car, fitted(40.0, 1000, null, ceilingMm));
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(Facts.of(finding.plainWords())).isEqualTo(plainWords);
        finding(body(1600, 180.0, POINTS), fitted(40.0, 1000, null, ceilingMm));
        assertThat(notJudged).containsExactly(new LiftSaid.CeilingNotKnown("H-1", List.of(LiftSaid.Part.CAR_HEIGHT)));
    }

    @Test
    void platesThatNobodyReadAreSaid() {
        var hoist = hoist(new Hoist(4, new HoistRating(4000, null, null), List.of(40.0), List.of()));
        assertThat(finding(body(1600, 180.0, POINTS), hoist).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(notJudged)
                .containsExactly(new LiftSaid.PlatesNotRead(
                        "H-1", List.of(LiftSaid.Part.ARM_RATING, LiftSaid.Part.ADAPTER_RATING)));
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
                .isEqualTo("OnHoist(H-1, 40 %, 80 %, 750 mm)");
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
        var unweighed = new CarBody(1600.0, 0.5, 2700.0, 1550.0, new CarHeights(160.0, 180.0, null), null, POINTS);
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
        finding(
                new CarBody(1600.0, 0.5, 2700.0, 1550.0, new CarHeights(null, 180.0, null), 22.0, POINTS),
                hoist(4000, 1000));
        assertThat(notJudged)
                .containsExactly(new LiftSaid.UnderNotKnown("H-1", List.of(LiftSaid.Part.GROUND_CLEARANCE)));
    }

    @Test
    void ofAHoistWithTwoArmsOnlyItsOwnRatingIsJudged() {
        var two = new ShopTool(
                "H-2",
                ShopTool.Kind.HOIST,
                "Invented hoist",
                120,
                1900,
                0,
                Cars.AUTUMN.plusMonths(5),
                new Hoist(2, rated(1000, 4000), List.of(), List.of()));
        assertThat(findings(body(1600, 180.0, POINTS), two)).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(Facts.of(finding.title())).isEqualTo("OnHoist(H-2, 40 %, none, none)");
        });
        assertThat(notJudged).containsExactly(new LiftSaid.OtherArmCount("H-2", 2));
    }
}
