package cornerbook.core.tyre.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Weeks by 49 CFR 574.5: 4216 is the week of Sunday 16 October 2016 (the first Sunday of 2016 is 3 January), so ten years
 * of 365.25 days end on 17 October 2026. 0221 is 10 January 2021, and 6 × 365.25 = 2191.5 days later it is 11 January 2027.
 * 4218 is 21 October 2018, and 3653 days later it is 21 October 2028.
 */
class TyreAgeFindingsTest {
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 15);
    private static final SidewallSaid.TyreOf OLDEST = new SidewallSaid.TyreOf(null, new SetOf(SeasonKind.WINTER));
    private final List<Said> notJudged = new ArrayList<>();

    @Test
    void youngTyresHoldAndTheOldestIsNamed() {
        var finding = only("DOT 1YY WN BCDE 3524", "3524", "3424", "3524");
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.title()).isInstanceOfSatisfying(SidewallSaid.OldestTyre.class, title -> {
            assertThat(title.season()).isEqualTo(SeasonKind.WINTER);
            assertThat(title.tag()).isEqualTo("W-LR");
            assertThat(title.years().value()).isCloseTo(2.2, within(0.05));
            assertThat(title.yearsThen().value()).isCloseTo(2.6, within(0.05));
            assertThat(title.until()).isEqualTo(SPRING);
        });
        assertThat(finding.horizon()).isNull();
        assertThat(finding.subject().wheelTag()).isNull();
        assertThat(finding.evidence())
                .extracting(Evidence::what)
                .startsWith(
                        new SidewallSaid.DateCodeOf("W-LR"),
                        new SidewallSaid.DateCodeOf("W-LF, W-RF, W-RR"),
                        SidewallSaid.Label.AGE_AT_VISIT);
        assertThat(finding.evidence().get(1).how())
                .isEqualTo(new SidewallSaid.EndOfTin(Quoted.of("DOT 1YY WN BCDE 3524")));
        assertThat(finding.source()).isInstanceOf(SidewallSaid.AgeSource.class);
    }

    @Test
    void aLimitInsideTheComingSeasonIsToldWithItsDate() {
        var replaced = only("4316", "4316", "4316", "4316");
        assertThat(replaced.verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(replaced.horizon()).isEqualTo(LocalDate.of(2026, 10, 24));
        assertThat(replaced.plainWords())
                .isEqualTo(new SidewallSaid.ReachesReplacement(OLDEST, years(10), LocalDate.of(2026, 10, 24)));
        var inspected = only("0221", "0221", "0221", "0221");
        assertThat(inspected.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(inspected.plainWords())
                .isEqualTo(new SidewallSaid.ReachesInspection(OLDEST, years(6), LocalDate.of(2027, 1, 11)));
        assertThat(only("4218", "4218", "4218", "4218").plainWords())
                .isEqualTo(new SidewallSaid.Inspected(OLDEST, years(6), LocalDate.of(2028, 10, 21)));
    }

    @Test
    void theDayOfTheLimitItselfIsSpent() {
        assertThat(judge(LocalDate.of(2026, 10, 16), "4216", "4216", "4216", "4216"))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.RUNS_OUT);
        assertThat(judge(LocalDate.of(2026, 10, 17), "4216", "4216", "4216", "4216"))
                .extracting(Finding::verdict)
                .containsExactly(Verdict.SPENT);
    }

    @Test
    void wheelsThatDisagreeAreToldApart() {
        var findings = judge(Cars.AUTUMN, "3524", "0115", "3524", "3524");
        assertThat(findings).extracting(Finding::verdict).containsExactlyInAnyOrder(Verdict.HOLDS, Verdict.SPENT);
        assertThat(findings)
                .filteredOn(finding -> finding.verdict() == Verdict.SPENT)
                .singleElement()
                .satisfies(spent -> {
                    assertThat(spent.subject().wheelTag()).isEqualTo("W-RF");
                    assertThat(spent.plainWords())
                            .isEqualTo(new SidewallSaid.TooOld(
                                    new SidewallSaid.TyreOf("W-RF", new SetOf(SeasonKind.WINTER)), years(10)));
                });
    }

    @Test
    void whatCannotBeReadIsNotJudgedAndSaysWhy() {
        assertThat(judge(Cars.AUTUMN, null, "AB C2 347", "WINTER", "5226")).isEmpty();
        assertThat(notJudged)
                .containsExactlyInAnyOrder(
                        new SidewallSaid.TinNotRead("W-LF"),
                        new SidewallSaid.ThreeDigits("W-RF", Quoted.of("AB C2 347")),
                        new SidewallSaid.AgeUnread("W-LR", new TyreSaid.TinWithoutDate(Quoted.of("WINTER"))),
                        new SidewallSaid.DatedLater("W-RR", "5226", LocalDate.of(2026, 12, 27)));
    }

    private static Amount years(int years) {
        return new Amount(years, "", 0);
    }

    private Finding only(@Nullable String... tins) {
        var findings = judge(Cars.AUTUMN, tins);
        assertThat(findings).hasSize(1);
        return findings.getFirst();
    }

    private List<Finding> judge(LocalDate today, @Nullable String... tins) {
        var visit = new Visit("v", today, 48_000, Cars.at("W-"), Cars.at("W-"), List.of());
        var car = Cars.history(visit);
        var judged = TyreAgeFindings.judge(
                Cases.of(new CarHistory(car.vehicle(), car.customer(), List.of(Cars.withTins(tins)), car.visits()))
                        .until(SPRING)
                        .last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }

    /** 3521 is 29 August 2021, 1878 days before: of ten years of 365.25 days 48.6 % are left. */
    @Test
    void theMarkShowsTheYearsThatAreLeft() {
        assertThat(only("3521", "3521", "3521", "3521").lifeLeft()).isCloseTo(1 - 1878 / 3652.5, within(1e-9));
    }

    /** Six years on the day of the visit: inspected from today on, not on a day to come. */
    @Test
    void theDayOfTheInspectionItselfCounts() {
        assertThat(judge(LocalDate.of(2027, 1, 11), "0221", "0221", "0221", "0221"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.plainWords())
                        .isEqualTo(new SidewallSaid.Inspected(OLDEST, years(6), LocalDate.of(2031, 1, 11))));
        assertThat(judge(LocalDate.of(2027, 1, 10), "0221", "0221", "0221", "0221"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.plainWords())
                        .isEqualTo(new SidewallSaid.ReachesInspection(OLDEST, years(6), LocalDate.of(2027, 1, 11))));
    }

    /** Ten years on the last day of its season run out; a day later they hold. */
    @Test
    void theLastDayOfTheSeasonCounts() {
        // 1517 is Sunday 9 April 2017 and 1617 a week later; ten years of 365.25 days end on 10 and 17 April 2027.
        assertThat(only("1517", "1517", "1517", "1517").verdict()).isEqualTo(Verdict.RUNS_OUT);
        assertThat(only("1617", "1617", "1617", "1617").verdict()).isEqualTo(Verdict.HOLDS);
    }
}
