package cornerbook.core.tyre.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * The placard of these tests is that of {@link Cars}; half of its axle's load is 550 kg. UN R30: index 88 is 560 kg; T is 190
 * km/h. Diameters by hand: 18 × 25.4 + 2 × 225 × 0.55 = 704.7 mm, with 0.60 of 225 it is 727.2 mm, with 0.50 of 235 692.2 mm.
 */
class TyrePlacardFindingsTest {
    private static final AxleSpecification ASKED = Cars.vehicle().rear();
    private static final int LOAD_INDEX = Objects.requireNonNull(ASKED.loadIndex());
    private static final String SPEED_SYMBOL = Objects.requireNonNull(ASKED.speedSymbol());
    private final List<Said> notJudged = new ArrayList<>();

    @Test
    void aTyreAsThePlacardAsksHasNoFinding() {
        assertThat(judge(SeasonKind.SUMMER, ASKED.tyreSize(), LOAD_INDEX, SPEED_SYMBOL))
                .isEmpty();
        assertThat(judge(SeasonKind.SUMMER, ASKED.tyreSize(), LOAD_INDEX + 4, "Y"))
                .isEmpty();
        assertThat(notJudged).isEmpty();
    }

    @Test
    void aLowerLoadIndexIsSpent() {
        assertThat(judge(SeasonKind.WINTER, ASKED.tyreSize(), 88, SPEED_SYMBOL))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    assertThat(finding.title())
                            .isEqualTo(new SidewallSaid.LowLoadIndex("W", Corner.RR, 88, LOAD_INDEX));
                    assertThat(finding.evidence().getFirst().value())
                            .isInstanceOfSatisfying(
                                    SidewallSaid.ServiceAllows.class,
                                    allowed -> assertThat(allowed.capacity()).isEqualTo(Amount.of(560, "kg")));
                });
    }

    @Test
    void aLowerSpeedSymbolIsSpentButOfWinterTyresTold() {
        assertThat(judge(SeasonKind.SUMMER, ASKED.tyreSize(), LOAD_INDEX, "Q"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.SPENT));
        assertThat(judge(SeasonKind.WINTER, ASKED.tyreSize(), LOAD_INDEX, "Q"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    assertThat(finding.plainWords())
                            .isEqualTo(new SidewallSaid.SlowWinterTyre(Corner.RR, Amount.of(160, "km/h")));
                });
    }

    @Test
    void aLargerSizeIsPutRightASmallerOneTold() {
        assertThat(ASKED.tyreSize()).isEqualTo("225/55R18");
        assertThat(judge(SeasonKind.SUMMER, "225/60R18", LOAD_INDEX, SPEED_SYMBOL))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    // 727.2 / 704.7 − 1
                    assertThat(otherSize(finding).placard()).isEqualTo("225/55R18");
                    assertThat(otherSize(finding).circumference().value()).isCloseTo(3.19, within(0.01));
                    assertThat(otherSize(finding).circumference().signed()).isTrue();
                });
        assertThat(judge(SeasonKind.SUMMER, "235/50R18", LOAD_INDEX, SPEED_SYMBOL))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    // 692.2 / 704.7 − 1
                    assertThat(otherSize(finding).circumference().value()).isCloseTo(-1.77, within(0.01));
                });
    }

    @Test
    void aSizeThatCannotBeReadIsNotJudged() {
        assertThat(judge(SeasonKind.SUMMER, "225-55R18", LOAD_INDEX, SPEED_SYMBOL))
                .isEmpty();
        assertThat(notJudged)
                .containsExactly(new SidewallSaid.PlacardUnread(
                        "W",
                        new TyreSaid.SizeUnread(
                                Quoted.of("225-55R18"),
                                new TyreSaid.SizeNeeds(Quoted.of("-55R18"), TyreSaid.SizePart.SLASH))));
    }

    /**
     * A light-truck tyre carries its index at a far higher pressure than the placard of a passenger tyre asks: the two numbers
     * say nothing of each other, but the diameters do (245/75R16: 406.4 + 2 × 183.75 = 773.9 mm).
     */
    @Test
    void aLightTruckIndexIsNotHeldAgainstAPassengerPlacard() {
        assertThat(judge(SeasonKind.SUMMER, "LT245/75R16", 90, "S"))
                .extracting(finding -> finding.subject().part())
                .containsExactly(Subject.Part.WHEEL_FIT);
        assertThat(notJudged).containsExactly(new SidewallSaid.OtherTables("W", "LT245/75R16", ASKED.tyreSize()));
    }

    /** A temporary spare is smaller and slower by its kind; that its load is not judged the findings on load say. */
    @Test
    void aTemporarySpareIsNoTyreOfAnotherSize() {
        assertThat(judge(SeasonKind.SUMMER, "T145/80D18", 99, "M")).isEmpty();
        assertThat(notJudged).isEmpty();
    }

    private static SidewallSaid.OtherSize otherSize(Finding finding) {
        return (SidewallSaid.OtherSize) finding.title();
    }

    private List<Finding> judge(SeasonKind season, String size, int loadIndex, String speedSymbol) {
        var tyre = new Tyre("Invented tread", size, loadIndex, speedSymbol, null, false, false, 8.0);
        var set = new WheelSet("S", season, null, List.of(new Wheel("W", tyre, null)));
        var judged = TyrePlacardFindings.judge(Cases.onlyOn(set, Corner.RR).last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }

    /** UN R30: index 87 is 545 kg, less than half of the axle's 1100 kg. That is a finding on load by itself, not told twice. */
    @Test
    void whatCarriesLessThanHalfTheAxleIsToldOnce() {
        assertThat(judge(SeasonKind.SUMMER, ASKED.tyreSize(), 87, SPEED_SYMBOL)).isEmpty();
    }

    /** Of the same width a rim an inch larger rolls 3.6 % farther; a tyre one per cent taller is within what makers differ by. */
    @Test
    void theAxleThatHasAnotherSizeIsNamed() {
        assertThat(judge(SeasonKind.SUMMER, "225/55R19", LOAD_INDEX, SPEED_SYMBOL))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(otherSize(finding).axle()).isEqualTo(Axle.REAR);
                    assertThat(otherSize(finding).fitted()).isEqualTo("225/55R19");
                    assertThat(otherSize(finding).circumference().value()).isCloseTo(3.6, within(0.05));
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    assertThat(finding.lifeLeft()).isZero();
                });
        // 457.2 + 2 × 235 × 0.55 = 715.7 mm: 1.56 % more; 457.2 + 2 × 215 × 0.60 = 715.2 mm: 1.49 % more.
        assertThat(judge(SeasonKind.SUMMER, "235/55R18", LOAD_INDEX, SPEED_SYMBOL))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.SPENT);
        assertThat(judge(SeasonKind.SUMMER, "215/60R18", LOAD_INDEX, SPEED_SYMBOL))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    assertThat(finding.lifeLeft()).isEqualTo(1);
                });
    }
}
