package cornerbook.app.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LimitsFileTest {
    private static final String HEAD = "jurisdiction,kind,season,value,from,until,citation,citation in French\n";

    @Test
    void everyRowHasACitation() {
        assertThat(LimitsFile.load())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.citation().toString()).isNotBlank());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPlaceThatHasALawIsCalledByItsName(Language language) {
        var reader = Reader.DEFAULT.in(language);
        assertThat(new LimitTable(LimitsFile.load()).places())
                .contains("CA-QC", "US")
                .allSatisfy(code -> assertThat(reader.say(PlaceOfLaw.of(code)))
                        .isNotEqualTo(code)
                        .isNotBlank());
        assertThat(reader.say(PlaceOfLaw.of("US-OH"))).isEqualTo("US-OH");
    }

    /** Where no law is on file, the house rule has to serve: for all seasons at once, or for each. What only a law sets has none. */
    @ParameterizedTest
    @EnumSource(Limit.Kind.class)
    void everyKindAndSeasonHasAHouseRule(Limit.Kind kind) {
        var house = LimitsFile.load().stream()
                .filter(row -> row.jurisdiction().equals("*") && row.kind() == kind)
                .map(Limit::season)
                .toList();
        if (kind.onlyByLaw()) {
            assertThat(house).isEmpty();
        } else if (!house.contains(null)) {
            assertThat(house).contains(SeasonKind.values());
        }
    }

    /** The house asks no less than any law on file of the season, and a season's minimum is never under the law. */
    @Test
    void theHouseRuleOfASeasonIsNotBelowALaw() {
        var limits = LimitsFile.load();
        for (var season : SeasonKind.values()) {
            double house = limits.stream()
                    .filter(row -> row.jurisdiction().equals("*")
                            && row.kind() == Limit.Kind.TREAD_SEASON
                            && row.season() == season)
                    .mapToDouble(Limit::value)
                    .findFirst()
                    .orElseThrow();
            assertThat(limits)
                    .filteredOn(row -> row.kind() == Limit.Kind.TREAD_LEGAL)
                    .filteredOn(row -> row.season() == null || row.season() == season)
                    .allSatisfy(row -> assertThat(row.value()).isLessThanOrEqualTo(house));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "*,TREAD_LEGAL,,deep,,,source,la source | line 2, value: \"deep\", expected a number",
                "*,TREAD_LEGAL,,NaN,,,source,la source | line 2, value: \"NaN\", expected a number above 0",
                "*,TREAD_LEGAL,,-1,,,source,la source | line 2, value: \"-1\", expected a number above 0",
                "*,TREAD_LEGAL,,1.6,,,,la source | line 2, citation: nothing, expected where the limit comes from",
                "*,TREAD_LEGAL,,1.6,,,source, | line 2, citation in French: nothing, expected the same in French",
                ",TREAD_LEGAL,,1.6,,,source,la source | line 2, jurisdiction: nothing, expected a code",
                "*,TREAD,,1.6,,,source,la source | line 2, kind: \"TREAD\", expected one of [TREAD_LEGAL, TREAD_SEASON",
                "*,TREAD_LEGAL,SPRING,1.6,,,source,la source | line 2, season: \"SPRING\", expected one of [",
                "*,TREAD_LEGAL,,1.6,13-01,03-15,source,la source | line 2, from: \"13-01\", expected month and day as 12-01",
                "*,TREAD_LEGAL,,1.6,12-01,,source,la source | line 2, until: nothing, expected both days or none",
                "*,TREAD_LEGAL,,1.6 | line 2, row: 4 columns, expected 8 columns"
            })
    void aBadCellIsNamedByLineAndColumn(String row, String part) {
        assertThatThrownBy(() -> LimitsFile.parse(HEAD + row + "\n"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("limits file " + part);
    }

    @Test
    void aSecondRowOfTheSameKindIsRefused() {
        var row = "*,TREAD_LEGAL,,1.6,,,source,la source\n";
        assertThatThrownBy(() -> LimitsFile.parse(HEAD + row + row)).hasMessageContaining("line 3, row: a second one");
    }

    @Test
    void columnsInAnotherOrderAreRefused() {
        assertThatThrownBy(() -> LimitsFile.parse("kind,jurisdiction\n")).hasMessageContaining("line 1, head");
    }
}
