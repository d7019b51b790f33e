package cornerbook.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTableTest {
    private static final Limit WINTER_RULE = dated("SE", 12, 1, 3, 31);

    /** From 1 December to 31 March, both days counted, whatever the year. */
    @ParameterizedTest
    @CsvSource({
        "2026-10-20, 2027-04-15, true",
        "2027-04-01, 2027-11-30, false",
        "2027-04-01, 2027-12-01, true",
        "2027-03-31, 2027-10-20, true",
        "2027-01-10, 2027-01-11, true",
        "2026-12-31, 2026-12-31, true",
        "2027-05-01, 2029-05-01, true"
    })
    void aRuleWithDatesBindsSpansThatMeetThem(LocalDate first, LocalDate last, boolean binds) {
        assertThat(WINTER_RULE.bindsWithin(first, last)).isEqualTo(binds);
    }

    @Test
    void aRuleWithinOneYearBindsBetweenItsDays() {
        var summer = dated("X", 5, 1, 8, 31);
        assertThat(summer.bindsWithin(LocalDate.of(2026, 10, 1), LocalDate.of(2027, 4, 30)))
                .isFalse();
        assertThat(summer.bindsWithin(LocalDate.of(2026, 10, 1), LocalDate.of(2027, 5, 1)))
                .isTrue();
    }

    @Test
    void outsideItsDaysTheNextRuleServes() {
        var table = new LimitTable(List.of(
                WINTER_RULE,
                new Limit("SE", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, Said.verbatim("all year"))));
        assertThat(legal(table, LocalDate.of(2026, 10, 20), LocalDate.of(2027, 4, 15)))
                .isEqualTo(3.0);
        assertThat(legal(table, LocalDate.of(2027, 4, 20), LocalDate.of(2027, 10, 20)))
                .isEqualTo(1.6);
    }

    /** 49 CFR 570.9 holds in Vermont as in every state. */
    @Test
    void aRegionWithoutARuleOfItsOwnHasThatOfItsCountry() {
        var table = new LimitTable(List.of(
                new Limit("*", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, Said.verbatim("house")),
                new Limit("US", Limit.Kind.TREAD_LEGAL, null, 1.5875, null, null, Said.verbatim("of the country")),
                new Limit("CA-QC", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, Said.verbatim("of the region"))));
        assertThat(table.get("US-VT", Limit.Kind.TREAD_LEGAL, null).citation())
                .isEqualTo(Said.verbatim("of the country"));
        assertThat(table.findLaw("US-VT", Limit.Kind.TREAD_LEGAL))
                .map(Limit::citation)
                .hasValue(Said.verbatim("of the country"));
        assertThat(table.get("CA-NB", Limit.Kind.TREAD_LEGAL, null).citation()).isEqualTo(Said.verbatim("house"));
        assertThat(table.findLaw("CA-NB", Limit.Kind.TREAD_LEGAL)).isEmpty();
        assertThat(table.places()).containsExactly("CA-QC", "US");
    }

    private static double legal(LimitTable table, LocalDate first, LocalDate last) {
        return table.get("SE", Limit.Kind.TREAD_LEGAL, SeasonKind.WINTER, first, last)
                .value();
    }

    private static Limit dated(String place, int fromMonth, int fromDay, int untilMonth, int untilDay) {
        return new Limit(
                place,
                Limit.Kind.TREAD_LEGAL,
                SeasonKind.WINTER,
                3.0,
                MonthDay.of(fromMonth, fromDay),
                MonthDay.of(untilMonth, untilDay),
                Said.verbatim("invented for tests"));
    }
}
