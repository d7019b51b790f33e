package cornerbook.core.tyre.judge;

import static cornerbook.core.tyre.judge.FittedCar.SIZE;
import static cornerbook.core.tyre.judge.FittedCar.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.judge.FittingSaid.Law;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Winter tyres and studs by the law of a place. Québec: from 1 December to 15 March four winter tyres, with the mountain and snowflake or
 * studs (SAAQ, winter preparation); studs from 15 October to 1 May (secondary source). Austria: in wintry conditions from 1 November to 15
 * April, M+S is enough (European consumer centre). The expectations were written before the judge.
 */
class TyreLawFindingsTest {
    private static final int NONE = 0;
    private static final int MUD_AND_SNOW = 1;
    private static final int SNOWFLAKE = 2;
    private static final String TAGS = "A-LF, A-RF, A-LR, A-RR";
    private static final FittingSaid.LawfulDays WINTER =
            new FittingSaid.LawfulDays(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 3, 15));

    @Test
    void summerTyresInDecemberAreAgainstTheLawButNotUnsafe() {
        assertThat(judge(car(SeasonKind.SUMMER).day(2026, 12, 10)).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.subject().part()).isEqualTo(Subject.Part.TYRE_LAW);
                    assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
                    assertThat(finding.title()).isEqualTo(new FittingSaid.NoWinterTyres(TAGS, WINTER, true));
                    assertThat(finding.source()).isEqualTo(Said.verbatim("law of CA-QC"));
                    assertThat(finding.plainWords()).isEqualTo(new FittingSaid.NoWinterTyresPlain(WINTER, true, true));
                });
    }

    /** A car that leaves on 20 October with summer tyres, and comes again in spring, meets the law on 1 December. */
    @Test
    void theDayOnWhichTheLawBeginsIsTheHorizon() {
        assertThat(judge(car(SeasonKind.SUMMER).day(2026, 10, 20)).findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
                    assertThat(finding.horizon()).isEqualTo(LocalDate.of(2026, 12, 1));
                });
    }

    @Test
    void theLawEndsOnTheFifteenthOfMarch() {
        assertThat(judge(car(SeasonKind.SUMMER).day(2027, 3, 15)).findings()).hasSize(1);
        assertThat(judge(car(SeasonKind.SUMMER).day(2027, 3, 16)).findings()).isEmpty();
    }

    /** All-weather tyres with the mark are winter tyres by the law of Québec. */
    @Test
    void anAllSeasonSetWithTheSnowflakePasses() {
        assertThat(judge(marked(car(SeasonKind.ALL_SEASON), SNOWFLAKE).day(2026, 12, 10)))
                .isEqualTo(Judgement.NONE);
    }

    @Test
    void mudAndSnowIsNotEnoughInQuebecButIsInAustria() {
        assertThat(judge(marked(car(SeasonKind.ALL_SEASON), MUD_AND_SNOW).day(2026, 12, 10))
                        .findings())
                .hasSize(1);
        assertThat(judge(marked(in("AT", SeasonKind.ALL_SEASON), MUD_AND_SNOW).day(2026, 12, 10)))
                .isEqualTo(Judgement.NONE);
    }

    /** Where the law asks in wintry conditions only, nobody breaks it by the date alone. */
    @Test
    void aLawForWintryConditionsNeverSaysThatItIsBrokenToday() {
        assertThat(judge(marked(in("AT", SeasonKind.ALL_SEASON), NONE).day(2026, 12, 10))
                        .findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.RUNS_OUT);
                    assertThat(finding.title())
                            .isEqualTo(new FittingSaid.NoWinterTyres(
                                    TAGS,
                                    new FittingSaid.LawfulDays(LocalDate.of(2026, 11, 1), LocalDate.of(2027, 4, 15)),
                                    false));
                });
    }

    @Test
    void aMarkThatNobodyReadIsNotJudged() {
        var judged = judge(car(SeasonKind.WINTER).day(2026, 12, 10));
        assertThat(judged.findings()).isEmpty();
        assertThat(judged.notJudged()).containsExactly(new FittingSaid.MarkNotRead(TAGS, LocalDate.of(2026, 12, 10)));
        assertThat(judge(car(SeasonKind.SUMMER).day(2027, 6, 1)))
                .as("until its next visit in autumn no law asks for it")
                .isEqualTo(Judgement.NONE);
    }

    /** SAAQ: tyres with the pictogram and studded tyres. */
    @Test
    void studdedTyresAreWinterTyres() {
        assertThat(judge(studded(car(SeasonKind.WINTER)).day(2026, 12, 10))).isEqualTo(Judgement.NONE);
    }

    @Test
    void studsAreForbiddenFromTheSecondOfMay() {
        assertThat(judge(studded(car(SeasonKind.WINTER)).day(2027, 5, 1)).findings())
                .extracting(Finding::verdict, Finding::horizon)
                .containsExactly(tuple(Verdict.RUNS_OUT, LocalDate.of(2027, 5, 2)));
        assertThat(judge(studded(car(SeasonKind.WINTER)).day(2027, 5, 2)).findings())
                .extracting(Finding::verdict)
                .containsExactly(Verdict.SPENT);
        assertThat(judge(studded(car(SeasonKind.WINTER)).day(2026, 10, 15)).findings())
                .isEmpty();
    }

    /** Seen before: on 10 May "which the law forbids from 10 May", though it does from the second to 14 October. */
    @ParameterizedTest
    @CsvSource({"2027-04-20, false", "2027-05-10, true", "2027-10-14, true"})
    void theWholeTimeOfTheLawIsSaid(LocalDate day, boolean now) {
        var summer = new FittingSaid.LawfulDays(LocalDate.of(2027, 5, 2), LocalDate.of(2027, 10, 14));
        var car = studded(car(SeasonKind.WINTER)).day(day.getYear(), day.getMonthValue(), day.getDayOfMonth());
        assertThat(judge(car).findings())
                .extracting(Finding::title, Finding::plainWords)
                .containsExactly(tuple(
                        new FittingSaid.StudsOutOfSeason(TAGS, summer),
                        new FittingSaid.StudsOutOfSeasonPlain(summer, now)));
    }

    /** Ontario, R.R.O. 1990, Reg. 625, s. 9: from 1 September to 31 May, on vehicles of Northern Ontario alone. */
    @Test
    void whereOnePartOfAPlaceForbidsStudsThePartIsAskedFor() {
        var january = judge(studded(in("CA-ON", SeasonKind.WINTER)).day(2027, 1, 10));
        assertThat(january.findings()).isEmpty();
        assertThat(january.notJudged())
                .contains(
                        new FittingSaid.StudsNotEverywhere(TAGS, PlaceOfLaw.of("CA-ON"), Said.verbatim("law of CA-ON")))
                .doesNotContain(new FittingSaid.NoLawOnFile(
                        PlaceOfLaw.of("CA-ON"), Listed.and(List.of(Law.TREAD_DEPTH, Law.WINTER_TYRES, Law.STUDS))));
        assertThat(judge(studded(in("CA-ON", SeasonKind.WINTER)).day(2027, 6, 1))
                        .findings())
                .map(Finding::verdict)
                .containsExactly(Verdict.SPENT);
    }

    /** Vermont sets no days: nothing is said of studs, not even that their law is not on file. */
    @Test
    void whereTheLawSetsStudsNoDaysNothingIsSaidOfThem() {
        assertThat(judge(studded(in("US-VT", SeasonKind.WINTER)).day(2026, 7, 10)))
                .isEqualTo(Judgement.missing(List.of(new FittingSaid.NoLawOnFile(
                        PlaceOfLaw.of("US-VT"), Listed.and(List.of(Law.TREAD_DEPTH, Law.WINTER_TYRES))))));
    }

    /** Austria: studded tyres must be fitted on all wheels; elsewhere common practice, no source. */
    @Test
    void studsOnSomeWheelsAreTold() {
        var car = marked(car(SeasonKind.WINTER), SNOWFLAKE)
                .read(Cars.reading(Measure.STUDS, Corner.LF, "A-LF", null, 1))
                .read(Cars.reading(Measure.STUDS, Corner.RF, "A-RF", null, 1))
                .read(Cars.reading(Measure.STUDS, Corner.LR, "A-LR", null, 0));
        assertThat(judge(car.day(2026, 12, 10)).findings())
                .extracting(Finding::title)
                .containsExactly(new FittingSaid.StudsOnSomeWheels("A-LF, A-RF"));
    }

    @Test
    void lawsThatAreNotOnFileAreSaid() {
        assertThat(judge(studded(in("XX", SeasonKind.WINTER)).day(2026, 12, 10)))
                .isEqualTo(Judgement.missing(new FittingSaid.NoLawOnFile(
                        PlaceOfLaw.of("XX"), Listed.and(List.of(Law.TREAD_DEPTH, Law.WINTER_TYRES, Law.STUDS)))));
        assertThat(judge(in("XX", SeasonKind.SUMMER).day(2027, 6, 1)).notJudged())
                .containsExactly(new FittingSaid.NoLawOnFile(
                        PlaceOfLaw.of("XX"), Listed.and(List.of(Law.TREAD_DEPTH, Law.WINTER_TYRES))));
    }

    /** That nobody knows whose law holds is said once, by the car's data; there is no place where one could look. */
    @Test
    void aPlaceThatIsNotKnownIsNoPlaceToLookTheLawUp() {
        assertThat(judge(in(Vehicle.ANY_PLACE, SeasonKind.SUMMER).day(2026, 5, 12))
                        .notJudged())
                .isEmpty();
    }

    private static FittedCar car(SeasonKind season) {
        return in("CA-QC", season);
    }

    private static FittedCar in(String place, SeasonKind season) {
        return new FittedCar()
                .on(FittedCar.drive(DriveLayout.FRONT, place, SIZE, SIZE))
                .four("A", season);
    }

    private static FittedCar marked(FittedCar car, int mark) {
        for (var corner : Corner.values()) {
            car.read(Cars.reading(Measure.WINTER_MARK, corner, "A-" + corner, null, mark));
        }
        return car;
    }

    private static FittedCar studded(FittedCar car) {
        for (var corner : Corner.values()) {
            car.read(Cars.reading(Measure.STUDS, corner, "A-" + corner, null, 1));
        }
        return car;
    }

    private static Judgement judge(FittedCar car) {
        return TyreLawFindings.judge(car.leaves(at("A-LF", "A-RF", "A-LR", "A-RR")));
    }
}
