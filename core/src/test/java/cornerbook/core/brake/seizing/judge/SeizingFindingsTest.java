package cornerbook.core.brake.seizing.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.seizing.judge.SeizingSaid.Label;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SeizingFindingsTest {
    /** Before a summer, in which little rusts. */
    private static final LocalDate FIRST = LocalDate.of(2024, 4, 20);

    @Test
    void withoutAServiceInTheBookThereIsNoChance() {
        assertThat(judge(FIRST.plusMonths(6), visit(0, 0)))
                .isEqualTo(Judgement.missing(SeizingSaid.NotJudged.NO_CLEANING));
    }

    @Test
    void freshGuidesHoldAndOldOnesRunOut() {
        var fresh = finding(serviced(0));
        assertThat(fresh.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(fresh.horizon()).isAfter(FIRST.plusMonths(6));
        var old = finding(serviced(0), visit(6, 0));
        assertThat(old.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(old.probability()).isLessThan(fresh.probability());
        assertThat(old.plainWords()).isEqualTo(new SeizingSaid.MaySeize());
        var unseen = at(FIRST.plusMonths(30), List.of());
        assertThat(finding(serviced(0), unseen).verdict()).isEqualTo(Verdict.SPENT);
    }

    @Test
    void cleaningStartsTheClockAgain() {
        var again = finding(serviced(0), serviced(12));
        assertThat(again.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(again.evidence())
                .anyMatch(e -> e.what() == Label.GUIDES_CLEANED && e.value() == BrakeSaid.Label.AT_THIS_VISIT);
    }

    /** One pad that is found seized leaves seven, and makes the chance of the others greater. */
    @Test
    void aSeizedPadTeaches() {
        var free = finding(serviced(0), visit(6, 0));
        var seized = finding(serviced(0), visit(6, 2));
        assertThat(pads(seized)).isEqualTo(7);
        assertThat(seized.probability()).isLessThan(free.probability());
    }

    @Test
    void correctionsCount() {
        var wrong = Cars.reading(Measure.PAD_MOVEMENT, Corner.RR, null, Spot.OUTER, 2);
        var right = new Reading(
                "r-right", Measure.PAD_MOVEMENT, Corner.RR, null, Spot.OUTER, 0, "free", wrong.id(), "mistyped");
        var visit = at(FIRST.plusMonths(6), List.of(wrong, right));
        assertThat(pads(finding(serviced(0), visit))).isEqualTo(8);
    }

    private static Finding finding(Visit... visits) {
        return judge(visits[visits.length - 1].date().plusMonths(6), visits)
                .findings()
                .getFirst();
    }

    /** A chance of 10 % is taken. */
    private static Judgement judge(LocalDate nextVisit, Visit... visits) {
        return SeizingFindings.judge(
                Cases.of(Cars.vehicle(), visits).running(40, 8).until(nextVisit).last());
    }

    /** All pads move, but for the outer one of the right rear. */
    private static Visit visit(int month, double rightRearOuter) {
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : List.of(Spot.INNER, Spot.OUTER)) {
                double movement = corner == Corner.RR && spot == Spot.OUTER ? rightRearOuter : 0;
                readings.add(Cars.reading(Measure.PAD_MOVEMENT, corner, null, spot, movement));
            }
        }
        return at(FIRST.plusMonths(month), readings);
    }

    private static Visit serviced(int month) {
        var readings = new ArrayList<>(visit(month, 0).readings());
        for (var corner : Corner.values()) {
            readings.add(Cars.reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, null, 0));
        }
        return at(FIRST.plusMonths(month), readings);
    }

    private static Visit at(LocalDate date, List<Reading> readings) {
        return new Visit("v-" + date, date, 40_000, Cars.at("S-"), Cars.at("S-"), readings);
    }

    /** The date is the last day on which the chance, 10 % here (invented), is still taken: a visit on it holds, the day after not. */
    @Test
    void theDateIsTheLastDayThatIsStillTaken() {
        var horizon = Objects.requireNonNull(finding(serviced(0)).horizon());
        assertThat(until(horizon).map(Finding::verdict)).contains(Verdict.HOLDS);
        assertThat(until(horizon.plusDays(1)).map(Finding::verdict)).contains(Verdict.RUNS_OUT);
        assertThat(until(horizon).orElseThrow().probability()).isBetween(0.9, 0.91);
    }

    /** The day of the visit itself is no time in which anything could seize: then the season's change-over counts. */
    @Test
    void aNextVisitHasToLieAhead() {
        var tomorrow = until(FIRST.plusDays(1)).map(Finding::probability).orElseThrow();
        assertThat(tomorrow).isGreaterThan(0.99);
        assertThat(until(FIRST).map(Finding::probability).orElseThrow()).isLessThan(tomorrow);
    }

    /** More likely than not to seize until then: now. */
    @Test
    void moreLikelyThanNotIsSpent() {
        boolean ranOut = false;
        for (int days = 1; days < 2000; days += 20) {
            var looked = visit(1, 0);
            var finding = judge(looked.date().plusDays(days), serviced(0), looked)
                    .findings()
                    .getFirst();
            double free = Objects.requireNonNull(finding.probability());
            assertThat(finding.verdict())
                    .as("%.3f free after %d days", free, days)
                    .isEqualTo(free < 0.5 ? Verdict.SPENT : free < 0.9 ? Verdict.RUNS_OUT : Verdict.HOLDS);
            ranOut |= free > 0.5 && free < 0.7;
        }
        assertThat(ranOut).as("chances on both sides of one half were seen").isTrue();
    }

    /** However likely it is, what was cleaned today is not told to be cleaned now. */
    @Test
    void whatWasCleanedTodayComesBackSooner() {
        var finding = until(FIRST.plusDays(1999)).orElseThrow();
        assertThat(finding.probability()).isLessThan(0.5);
        assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(finding.horizon()).isBefore(FIRST.plusDays(1999));
    }

    /** The mark empties as the date comes nearer, and says when the guides were cleaned. */
    @Test
    void theMarkIsWhatIsLeftOfTheInterval() {
        var fresh = finding(serviced(0));
        var later = finding(serviced(0), visit(6, 0));
        assertThat(fresh.lifeLeft()).isCloseTo(1, within(0.05));
        assertThat(later.lifeLeft()).isBetween(0.05, 0.95);
        assertThat(evidence(later, Label.GUIDES_CLEANED))
                .isInstanceOfSatisfying(
                        SeizingSaid.MonthsAgo.class,
                        ago -> assertThat(ago.months().value()).isCloseTo(6, within(0.05)));
        assertThat(evidence(fresh, Label.EXPOSURE))
                .as("40 km a day, salt on the road as usual")
                .isInstanceOfSatisfying(SeizingSaid.Exposure.class, exposure -> {
                    assertThat(exposure.perYear()).isEqualTo(Amount.of(14_610, "km"));
                    assertThat(exposure.garaged()).isFalse();
                });
    }

    /** The limits hold the chance between them. */
    @Test
    void theLimitsLieAboutTheChance() {
        assertThat(evidence(finding(serviced(0), visit(6, 0)), Label.CHANCE_OF_SEIZING))
                .isInstanceOfSatisfying(SeizingSaid.ChanceWithin.class, told -> {
                    double percent = 100 * told.chance().probability();
                    assertThat(told.limits().lowest()).isLessThan(percent);
                    assertThat(told.limits().highest()).isGreaterThan(percent);
                });
    }

    /** Nothing was seen of pads cleaned today; the longer they stayed free, the more of the chance is the car's own. */
    @Test
    void whatWasSeenOfTheCarsPadsIsToldBesideTheChance() {
        assertThat(own(finding(serviced(0)))).isZero();
        assertThat(own(finding(serviced(0), visit(6, 0)))).as("a summer").isLessThan(20);
        assertThat(own(finding(serviced(0), visit(30, 0)))).as("three winters").isBetween(40, 80);
    }

    private static int own(Finding finding) {
        return finding.evidence().stream()
                .filter(each -> each.what().equals(Label.CHANCE_OF_SEIZING))
                .map(each -> ((SeizingSaid.FromThisCar) each.how()).own().percent())
                .findFirst()
                .orElseThrow();
    }

    private static int pads(Finding finding) {
        return ((SeizingSaid.Title) finding.title()).pads();
    }

    private static Said evidence(Finding finding, Said what) {
        return finding.evidence().stream()
                .filter(each -> each.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** Cleaned on the first day, judged on it. */
    private static Optional<Finding> until(LocalDate nextVisit) {
        return judge(nextVisit, serviced(0)).findings().stream().findFirst();
    }
}
