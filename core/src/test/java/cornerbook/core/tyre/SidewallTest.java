package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SidewallTest {
    @ParameterizedTest
    @CsvSource({
        "225/55R18, 225/55R18",
        "P225/55R18, P225/55R18",
        "LT245/75R17, LT245/75R17",
        "HL275/40R22, HL275/40R22",
        "225/55 r18 98v, 225/55R18 98V",
        "225/55R1898V, 225/55R18 98V",
        "245/40 ZR 18 97Y, 245/40R18 97Y",
        "LT 245/75 R17 112R, LT245/75R17 112R",
        "205/65 R16 C 107/105T, 205/65R16C 107/105T",
        "195/75R16C 109/107R, 195/75R16C 109/107R",
        "205/65R16C, 205/65R16C",
        "225/55R18 98V XL, 225/55R18 98V XL",
        "225/55 R18 XL 102 W, 225/55R18 102W XL",
        "P225/55R18 102H extra load, P225/55R18 102H XL",
        "225/55R18 XL, 225/55R18 XL"
    })
    void sizesAsPeopleWriteThem(String written, String shown) {
        assertThat(TyreSize.parse(written)).hasToString(shown);
        assertThat(TyreSize.parse(shown)).isEqualTo(TyreSize.parse(written));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X225/55R18 | has \"X225/55R18\" where it needs section width",
                "225-55R18 | where it needs a slash after the section width",
                "225/R18 | where it needs aspect ratio",
                "225/55B18 | where it needs construction R",
                "225/55R | ends where it needs rim diameter code",
                "225/155R18 | aspect ratio is 155 %, expected 20 to 100 %",
                "22/55R18 | section width is 22 mm, expected 100 to 455 mm",
                "225/55R31 | rim diameter code is 31, expected 10 to 30",
                "225/55R18 V | where it needs load index",
                "225/55R18 198V | load index is 198, expected 0 to 150",
                "195/75R16C 107/109R | load index for twin fitting is 109, expected at most 107",
                "195/75R16C 109/R | where it needs load index for twin fitting",
                "225/55R18 98Z | speed symbol is \"Z\", expected one of L M",
                "225/55R18 98V X | speed symbol is \"VX\", expected one of",
                "HL275/40R22 110Y XL | XL stands with HL, expected only one of HL, LT, C and XL",
                "LT245/75R17 121/118S XL | XL stands with LT",
                "205/65R16C 107/105T XL | XL stands with C",
                "P205/65R16C | C stands with P, expected only one of them",
                "P225/55R18 98/96V | second load index 96 stands with P, expected it only on LT and C tyres"
            })
    void theWrongPartOfASizeIsNamed(String written, String part) {
        assertThatThrownBy(() -> TyreSize.parse(written))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("tyre size \"" + written + "\"")
                .hasMessageContaining(part);
    }

    @Test
    void aTallerTyreRollsFarther() {
        double lowMm = TyreSize.parse("225/50R18").rollingCircumferenceMm();
        double tallMm = TyreSize.parse("225/55R18").rollingCircumferenceMm();
        assertThat(tallMm - lowMm).isCloseTo(3.05 * 2 * 225 * 0.05, within(1e-9));
    }

    @Test
    void fasterThanTheSymbolIsRefused() {
        assertThatThrownBy(() -> SpeedSymbol.H.loadShare(211))
                .hasMessageContaining("expected 0 to 210.0 km/h for speed symbol H");
    }

    @ParameterizedTest
    @CsvSource({
        "DOT 1AB C2D EFG 3519, 1ABC2DEFG3519, 3519",
        "dot-1AB-C2DE-3519, 1ABC2DE3519, 3519",
        "1ABC2DEFG3519, 1ABC2DEFG3519, 3519",
        "3519, 3519, 3519"
    })
    void datesFromTheEndOfTheNumber(String written, String symbols, String code) {
        var tin = Tin.parse(written);
        assertThat(tin.symbols()).isEqualTo(symbols);
        assertThat(tin.dateCode()).hasToString(code);
        assertThat(tin.madeBefore2000()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"347", "DOT AB C2 347", "ABC2D347"})
    void threeDigitsAreOfBefore2000(String written) {
        assertThat(Tin.parse(written).madeBefore2000()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5419 | week of manufacture is 54, expected 01 to 53",
                "0019 | week of manufacture is 00, expected 01 to 53",
                "AB C2 35 | expected four digits for week and year",
                "DOT | expected four digits for week and year",
                "1ABC2DEFGH34563519 | expected 3 to 13 letters and digits",
                "1AB_3519 | expected 3 to 13 letters and digits"
            })
    void otherNumbersAreRefused(String written, String part) {
        assertThatThrownBy(() -> Tin.parse(written))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(part);
    }

    /** 80 FR 19553: 13 symbols of a new tyre and 7 of a retreaded one begin with three of the plant; before, with two. */
    @ParameterizedTest
    @CsvSource({
        "DOT 1AB C2D EFH 3519, 1AB",
        "DOT 1ABC2DEFH3519, 1AB",
        "DOT AB C2 DEF 3519, AB",
        "ABC23519, AB",
        "CJX 3519, CJX",
        "3519,",
        "AB 3519,",
        "DOT AB C2 347,"
    })
    void thePlantStandsFirst(String written, @Nullable String plant) {
        assertThat(Tin.parse(written).plantCode().orElse(null)).isEqualTo(plant);
    }

    @Test
    void ageIsHeldAgainstTheRule() {
        var rule = new AgeRule(6, "house", 10, "house");
        var tin = Tin.parse("DOT 1AB C2D EFH 0120");
        var day = LocalDate.of(2026, 1, 4);
        assertThat(TyreAge.of(tin, day, rule).answer()).isEqualTo(TyreAge.Answer.YOUNG);
        assertThat(TyreAge.of(tin, day.plusDays(2), rule).answer()).isEqualTo(TyreAge.Answer.INSPECT);
        var old = TyreAge.of(tin, LocalDate.of(2030, 1, 6), rule);
        assertThat(old.answer()).isEqualTo(TyreAge.Answer.REPLACE);
        assertThat(old.madeTo()).isEqualTo("2020-01-11");
        assertThat(old.cautions()).containsExactly("Rubber ages: replace this tyre, whatever tread is left.");
        var misread = TyreAge.of(Tin.parse("DOT OAB C2D GGH 0120"), day, rule);
        assertThat(misread.cautions()).containsExactly("The number has O, G, which no TIN uses: read it again.");
        var before2000 = TyreAge.of(Tin.parse("AB C2 347"), day, rule);
        assertThat(before2000.answer()).isEqualTo(TyreAge.Answer.REPLACE);
        assertThat(before2000.madeFrom()).isNull();
        assertThat(before2000.ageYears()).isGreaterThan(25);
        assertThatThrownBy(() -> TyreAge.of(tin, LocalDate.of(2019, 12, 1), rule))
                .hasMessageContaining("expected one not after 2019-12-01");
        assertThatThrownBy(() -> new AgeRule(6, "house", 5, "house"))
                .hasMessageContaining("age at which a tyre is replaced");
    }

    @Test
    void ageCountsFromTheWeekOfManufacture() {
        var code = Objects.requireNonNull(Tin.parse("0120").dateCode());
        assertThat(code.dated()).isEqualTo(LocalDate.of(2020, 1, 5));
        assertThat(code.ageYears(LocalDate.of(2026, 1, 5))).isCloseTo(6, within(0.003));
        assertThatThrownBy(() -> code.ageYears(LocalDate.of(2020, 1, 4)))
                .hasMessage("date code 0120 is the week of 2020-01-05, expected one not after 2020-01-04");
    }

    /** A tyre moulded in an ISO week 53 of a year that has 52 weeks by the rule. */
    @Test
    void aWeek53IsAlwaysTaken() {
        assertThat(new DateCode(53, 2020).dated()).isEqualTo(LocalDate.of(2021, 1, 3));
    }

    @ParameterizedTest
    @CsvSource({"AB C2 347, DOT ABC2 347", "347, DOT 347", "DOT 1AB C2D EFG 3519, DOT 1ABC2DEFG3519"})
    void tinIsReadBackAsItIsShown(String written, String shown) {
        assertThat(Tin.parse(written)).hasToString(shown);
        assertThat(Tin.parse(shown)).isEqualTo(Tin.parse(written));
    }

    @Test
    void refusalRepeatsTheBeginningOfWhatWasWrittenAndIsOneLine() {
        assertThatThrownBy(() -> Mounting.parse("99999999999x114.3 M14x1.5 cone 64.1 ET45 7.5J"))
                .hasMessage(
                        "mounting is \"99999999999x114.3 M14x1.5 cone 64.1 ET45…\", expected as in 5x114.3 M14x1.5 cone 64.1 ET45 7.5J");
        assertThatThrownBy(() -> TyreSize.parse("LT\n" + "x".repeat(1000)))
                .hasMessage("tyre size \"LT %s…\": has \"%s…\" where it needs section width in mm, as 225"
                        .formatted("x".repeat(37), "X".repeat(40)));
    }
}
