package cornerbook.core.tyre.judge;

import static cornerbook.core.tyre.judge.FittedCar.SIZE;
import static cornerbook.core.tyre.judge.FittedCar.at;
import static cornerbook.core.tyre.judge.FittedCar.tyre;
import static cornerbook.core.tyre.judge.FittedCar.wheel;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.Assessor;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Side;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.tyre.judge.FittingSaid.Advice;
import cornerbook.core.wheelplan.judge.DifferenceSaid;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Tyres that do not go together on a car, and those that do. The expectations were written before the judge. Cars and tyres are
 * invented; where a verdict has a source it is named beside it, else it is common practice, no source.
 */
class FittingFindingsTest {
    private static final Map<Corner, String> ALL_A = at("A-LF", "A-RF", "A-LR", "A-RR");

    @Test
    void fourTyresOfOneSetAreNotAccused() {
        assertThat(judge(new FittedCar().four("A", SeasonKind.SUMMER).leaves(ALL_A)))
                .isEmpty();
    }

    /** Trade literature: four tyres of one kind. */
    @Test
    void summerAndWinterTyresOnOneCarAreTold() {
        var car = new FittedCar().four("A", SeasonKind.SUMMER).four("B", SeasonKind.WINTER);
        assertThat(judge(car.leaves(at("A-LF", "A-RF", "B-LR", "B-RR"))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    assertThat(finding.plainWords()).isEqualTo(Advice.MIXED_SEASONS);
                    assertThat(((FittingSaid.WheelsOfSets) finding.title()).sets())
                            .isEqualTo(2);
                });
    }

    /** A tyre bought for the one that was punctured may be in a set of its own: told, and nothing is condemned. */
    @Test
    void wheelsOfTwoSetsForOneSeasonMayStay() {
        var car = new FittedCar().four("A", SeasonKind.SUMMER).four("B", SeasonKind.SUMMER);
        assertThat(judge(car.leaves(at("B-LF", "A-RF", "A-LR", "A-RR"))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    assertThat(finding.plainWords()).isEqualTo(Advice.MIXED_SETS);
                });
    }

    /** What the car came on, and does not leave on, is not accused of it. */
    @Test
    void aMixedCarThatLeavesOnOneSetIsPutRight() {
        var car = new FittedCar().four("A", SeasonKind.SUMMER).four("B", SeasonKind.WINTER);
        assertThat(judge(car.leaves(at("A-LF", "B-RF", "A-LR", "B-RR"), at("B-LF", "B-RF", "B-LR", "B-RR"))))
                .isEmpty();
    }

    /**
     * UK inspection manual, tyres: another nominal size or aspect ratio on one axle is a reason for rejection. 225/55R18 is 704.7 mm high,
     * 225/60R18 727.2, 3.2 % more.
     */
    @Test
    void twoHeightsOnOneAxleAreUnsafe() {
        var car = new FittedCar().set("A", SeasonKind.SUMMER, four(SIZE, "225/60R18", SIZE, SIZE));
        assertThat(TyrePlacardFindings.judge(car.leaves(ALL_A)).findings())
                .as("one cause, one card")
                .isEmpty();
        assertThat(judge(car.leaves(ALL_A))).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.UNSAFE);
            assertThat(finding.title()).isEqualTo(new FittingSaid.SizesDiffer(Axle.FRONT, SIZE, "225/60R18"));
        });
    }

    /** 245/50R18 is 702.2 mm high, 0.4 % less than 225/55R18: makers' tyres of one size differ as much. */
    @Test
    void twoWidthsOfOneHeightOnOneAxleAreSpent() {
        var car = new FittedCar().set("A", SeasonKind.SUMMER, four(SIZE, SIZE, "245/50R18", SIZE));
        assertThat(judge(car.leaves(ALL_A))).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
            assertThat(finding.title()).isEqualTo(new FittingSaid.SizesDiffer(Axle.REAR, "245/50R18", SIZE));
        });
    }

    /** A P before the size, or a service description behind it, is the same nominal size. */
    @Test
    void theSameSizeWrittenOtherwiseIsNotAccused() {
        var car = new FittedCar().set("A", SeasonKind.SUMMER, four(SIZE, "P225/55R18", "225/55 R18 98V", SIZE));
        assertThat(judge(car.leaves(ALL_A))).isEmpty();
    }

    @Test
    void aStaggeredCarFittedRightIsNotAccused() {
        var car = staggered().set("A", SeasonKind.SUMMER, four("235/45R19", "235/45R19", "265/40R19", "265/40R19"));
        assertThat(judge(car.leaves(ALL_A))).isEmpty();
    }

    /** One cause, one card: the placard's findings on both axles do not say it again. */
    @Test
    void sizesOnTheWrongAxlesAreToldOnce() {
        var car = staggered().set("A", SeasonKind.SUMMER, four("265/40R19", "265/40R19", "235/45R19", "235/45R19"));
        var given = car.leaves(ALL_A);
        assertThat(judge(given)).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
            assertThat(finding.title()).isEqualTo(new FittingSaid.SizesSwapped("265/40R19", "235/45R19"));
        });
        assertThat(TyrePlacardFindings.judge(given).findings())
                .noneMatch(finding -> finding.subject().part() == Subject.Part.WHEEL_FIT);
    }

    private static FittedCar staggered() {
        return new FittedCar().on(FittedCar.drive(DriveLayout.REAR, "CA-QC", "235/45R19", "265/40R19"));
    }

    /** No inspection manual known here rejects another pattern on an axle: told, and not condemned. */
    @Test
    void twoModelsOnOneAxleAreToldNotCondemned() {
        var car = new FittedCar()
                .set(
                        "A",
                        SeasonKind.SUMMER,
                        wheel("A-LF", tyre("Invented tread", SIZE, false)),
                        wheel("A-RF", tyre("Other tread", SIZE, false)),
                        wheel("A-LR", tyre("Invented tread", SIZE, false)),
                        wheel("A-RR", tyre("invented-TREAD ", SIZE, false)));
        assertThat(judge(car.leaves(ALL_A))).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(finding.title())
                    .isEqualTo(new FittingSaid.ModelsDiffer(Axle.FRONT, "Invented tread", "Other tread"));
        });
    }

    /** A rim keeps its tyre's direction: on the other side of the car the arrow points backwards. */
    @Test
    void aDirectionalTyreThatChangedSidesIsTold() {
        var findings = judge(directional().ranOn(ALL_A).leaves(at("A-LR", "A-RF", "A-LF", "A-RR")));
        assertThat(findings).as("front to rear on its side is what is done").isEmpty();
        findings = judge(directional().ranOn(ALL_A).leaves(at("A-RF", "A-LF", "A-LR", "A-RR")));
        assertThat(findings).extracting(Finding::verdict).containsExactly(Verdict.SPENT, Verdict.SPENT);
        assertThat(findings.getFirst().title()).isEqualTo(new FittingSaid.ChangedSide(Corner.LF, "A-RF", Side.RIGHT));
    }

    @Test
    void aTyreThatIsNotDirectionalMayChangeSides() {
        assertThat(judge(new FittedCar()
                        .four("A", SeasonKind.SUMMER)
                        .ranOn(ALL_A)
                        .leaves(at("A-RR", "A-LR", "A-RF", "A-LF"))))
                .isEmpty();
    }

    /** Turned on its rim it is right again; whoever looked knows it. */
    @Test
    void whatWasSeenAtTheTyreOutranksWhereItStood() {
        var crossed = at("A-RF", "A-LF", "A-LR", "A-RR");
        assertThat(judge(directional()
                        .ranOn(ALL_A)
                        .read(Cars.reading(Measure.MOUNTED, Corner.LF, "A-RF", null, 0))
                        .read(Cars.reading(Measure.MOUNTED, Corner.RF, "A-LF", null, 0))
                        .leaves(crossed)))
                .isEmpty();
    }

    /** Guidance of a motoring association, 2017: not dangerous, and a reason to fail the UK inspection. */
    @Test
    void aTyreThatWasSeenToStandWrongIsSpentNotUnsafe() {
        var findings = judge(directional()
                .read(Cars.reading(Measure.MOUNTED, Corner.LF, "A-LF", null, 1))
                .read(Cars.reading(Measure.MOUNTED, Corner.RR, "A-RR", null, 2))
                .leaves(ALL_A));
        assertThat(findings).extracting(Finding::verdict).containsExactly(Verdict.SPENT, Verdict.SPENT);
        assertThat(findings)
                .extracting(Finding::title)
                .containsExactly(
                        new FittingSaid.StandsWrong(Corner.LF, "A-LF", false),
                        new FittingSaid.StandsWrong(Corner.RR, "A-RR", true));
    }

    private static FittedCar directional() {
        return new FittedCar()
                .set(
                        "A",
                        SeasonKind.SUMMER,
                        wheel("A-LF", tyre("Invented tread", SIZE, true)),
                        wheel("A-RF", tyre("Invented tread", SIZE, true)),
                        wheel("A-LR", tyre("Invented tread", SIZE, true)),
                        wheel("A-RR", tyre("Invented tread", SIZE, true)));
    }

    /** Owner's manuals: 80 km/h, at the rear, never two at once. This car drives its front wheels. */
    @Test
    void aSpareIsNeverANormalWheel() {
        var car = spares();
        assertThat(judge(car.leaves(at("A-LF", "A-RF", "A-LR", "T-1"))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    assertThat(finding.title())
                            .isEqualTo(new FittingSaid.SpareFitted(Corner.RR, "T-1", Amount.of(80, "km/h")));
                    assertThat(finding.evidence())
                            .noneMatch(evidence -> evidence.value() == Advice.SPARE_OFF_DRIVEN_AXLE);
                });
        assertThat(judge(spares().leaves(at("T-1", "A-RF", "A-LR", "A-RR"))))
                .singleElement()
                .satisfies(finding -> assertThat(finding.evidence())
                        .anyMatch(evidence -> evidence.value() == Advice.SPARE_OFF_DRIVEN_AXLE));
        assertThat(judge(spares().leaves(at("A-LF", "A-RF", "T-1", "T-2"))))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.UNSAFE, Verdict.UNSAFE);
    }

    private static FittedCar spares() {
        return new FittedCar()
                .four("A", SeasonKind.SUMMER)
                .set(
                        "T",
                        SeasonKind.ALL_SEASON,
                        wheel("T-1", tyre("Invented spare", "T125/70R17", false)),
                        wheel("T-2", tyre("Invented spare", "T125/70R17", false)));
    }

    /** 7.5 beside 4.4 mm on the driven axle: one tyre was replaced, and the set has five wheels since. */
    @Test
    void oneReplacedTyreIsToldByItsDepthAndPlanned() {
        var wheels = List.of(four(SIZE, SIZE, SIZE, SIZE));
        var car = new FittedCar()
                .set(
                        "A",
                        SeasonKind.SUMMER,
                        wheels.get(0),
                        wheels.get(1),
                        wheels.get(2),
                        wheels.get(3),
                        wheel("A-NEW", tyre("Invented tread", SIZE, false)))
                .day(2026, 7, 1);
        depths(car, "A-NEW", 7.5, "A-RF", 4.4, "A-LR", 5.0, "A-RR", 5.0);
        var history = car.history(ALL_A, at("A-NEW", "A-RF", "A-LR", "A-RR"));
        var assessor = new Assessor(Cars.LIMITS);
        var assessment = assessor.assess(history, "v");
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.subject().part() == Subject.Part.TREAD_DIFFERENCE)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(((DifferenceSaid.Differ) finding.title()).tyres())
                            .isEqualTo(new DifferenceSaid.Tyres(Axle.FRONT));
                    assertThat(((DifferenceSaid.Differ) finding.title()).now().value())
                            .isBetween(2.9, 3.3);
                });
        assertThat(assessor.plan(history, "v"))
                .hasValueSatisfying(plan -> assertThat(plan.plan().wheelAt().values())
                        .contains("A-NEW")
                        .doesNotContain("A-LF"));
    }

    /** Of all-wheel drive, 7.5 mm on one axle and 4.4 on the other strain it though each axle is even. */
    @Test
    void allWheelDriveHasAToleranceOfTheHouseWhereItsMakerSaysNothing() {
        var car = new FittedCar()
                .on(FittedCar.drive(DriveLayout.ALL, "CA-QC", SIZE, SIZE))
                .four("A", SeasonKind.SUMMER)
                .day(2026, 7, 1);
        depths(car, "A-LF", 7.5, "A-RF", 7.5, "A-LR", 4.4, "A-RR", 4.4);
        assertThat(new Assessor(Cars.LIMITS)
                        .assess(car.history(ALL_A, ALL_A), "v")
                        .findings())
                .filteredOn(finding -> finding.subject().part() == Subject.Part.TREAD_DIFFERENCE)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
                    assertThat(((DifferenceSaid.Differ) finding.title()).tyres())
                            .isEqualTo(new DifferenceSaid.Tyres(null));
                });
    }

    private static void depths(FittedCar car, Object... tagsAndDepths) {
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                car.read(Cars.reading(
                        Measure.TREAD_DEPTH, corner, (String) tagsAndDepths[2 * corner.ordinal()], spot, (double)
                                tagsAndDepths[2 * corner.ordinal() + 1]));
            }
        }
    }

    private static Wheel[] four(String... sizes) {
        return List.of(Corner.values()).stream()
                .map(corner -> wheel("A-" + corner, tyre("Invented tread", sizes[corner.ordinal()], false)))
                .toArray(Wheel[]::new);
    }

    private static List<Finding> judge(Case given) {
        var judged = FittingFindings.judge(given);
        assertThat(judged.notJudged()).isEmpty();
        assertThat(judged.findings())
                .allSatisfy(finding -> assertThat(finding.subject().part()).isEqualTo(Subject.Part.TYRE_FITTING));
        return judged.findings();
    }
}
