package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.tyre.TyreSaid.SizePart;
import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SidewallTest {
    private static final Said HOUSE = Said.verbatim("house");

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
        "225/55R18 XL, 225/55R18 XL",
        "T145/80D18 103M, T145/80D18 103M",
        "T125/70 R 17 98M, T125/70R17 98M",
        "t135/80B16, T135/80B16"
    })
    void sizesAsPeopleWriteThem(String written, String shown) {
        assertThat(TyreSize.parse(written)).hasToString(shown);
        assertThat(TyreSize.parse(shown)).isEqualTo(TyreSize.parse(written));
    }

    @ParameterizedTest
    @MethodSource
    void theWrongPartOfASizeIsNamed(String written, Said why) {
        assertThat(refused(() -> TyreSize.parse(written))).isEqualTo(new TyreSaid.SizeUnread(Quoted.of(written), why));
    }

    static Stream<Arguments> theWrongPartOfASizeIsNamed() {
        return Stream.of(
                arguments("X225/55R18", needs("X225/55R18", SizePart.SECTION_WIDTH)),
                arguments("225-55R18", needs("-55R18", SizePart.SLASH)),
                arguments("225/R18", needs("R18", SizePart.ASPECT_RATIO)),
                arguments("225/55B18", needs("B18", SizePart.CONSTRUCTION)),
                arguments("225/55R", new TyreSaid.SizeNeeds(null, SizePart.RIM_DIAMETER_CODE)),
                arguments("225/155R18", outside(Input.ASPECT_RATIO, 155, 20, 100, "%")),
                arguments("22/55R18", outside(Input.SECTION_WIDTH, 22, 100, 455, "mm")),
                arguments("225/55R31", outside(Input.RIM_DIAMETER_CODE, 31, 10, 30, "")),
                arguments("225/55R18 V", needs("V", SizePart.LOAD_INDEX)),
                arguments("225/55R18 198V", outside(Input.LOAD_INDEX, 198, 0, 150, "")),
                arguments("195/75R16C 107/109R", new TyreSaid.TwinAboveSingle(109, 107)),
                arguments("195/75R16C 109/R", needs("R", SizePart.TWIN_LOAD_INDEX)),
                arguments("225/55R18 98Z", noSymbol("Z")),
                arguments("225/55R18 98V X", noSymbol("VX")),
                arguments("LT235/85D16", needs("D16", SizePart.CONSTRUCTION)),
                arguments("T145/80D18 103M XL", new TyreSaid.ExtraLoadBeside("T")),
                arguments("T145/80D18 103/100M", new TyreSaid.SecondIndexBeside(100, "T")),
                arguments("HL275/40R22 110Y XL", new TyreSaid.ExtraLoadBeside("HL")),
                arguments("LT245/75R17 121/118S XL", new TyreSaid.ExtraLoadBeside("LT")),
                arguments("205/65R16C 107/105T XL", new TyreSaid.ExtraLoadBeside("C")),
                arguments("P205/65R16C", new TyreSaid.CommercialBeside("P")),
                arguments("P225/55R18 98/96V", new TyreSaid.SecondIndexBeside(96, "P")));
    }

    private static Said needs(String found, SizePart needed) {
        return new TyreSaid.SizeNeeds(Quoted.of(found), needed);
    }

    private static Said outside(Input what, int value, int lowest, int highest, String unit) {
        return new QuantitySaid.OutOfRange(what, new Amount(value, unit, 0), new Between(lowest, highest, unit, 0));
    }

    private static Said noSymbol(String written) {
        return new TyreSaid.NoSpeedSymbol(Quoted.of(written), "L M N P Q R S T U H V W Y");
    }

    private static Said refused(ThrowingCallable asked) {
        return catchThrowableOfType(Refused.class, asked).said();
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
    @MethodSource
    void otherNumbersAreRefused(String written, Said why) {
        assertThat(refused(() -> Tin.parse(written))).isEqualTo(why);
    }

    static Stream<Arguments> otherNumbersAreRefused() {
        return Stream.of(
                arguments("5419", new TyreSaid.NoWeek("54")),
                arguments("0019", new TyreSaid.NoWeek("00")),
                arguments("AB C2 35", new TyreSaid.TinWithoutDate(Quoted.of("AB C2 35"))),
                arguments("DOT", new TyreSaid.TinWithoutDate(Quoted.of("DOT"))),
                arguments("1ABC2DEFGH34563519", new TyreSaid.NoTin(Quoted.of("1ABC2DEFGH34563519"), 13)),
                arguments("1AB_3519", new TyreSaid.NoTin(Quoted.of("1AB_3519"), 13)));
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
        var rule = new AgeRule(6, HOUSE, 10, HOUSE);
        var tin = Tin.parse("DOT 1AB C2D EFH 0120");
        var day = LocalDate.of(2026, 1, 4);
        assertThat(TyreAge.of(tin, day, rule).answer()).isEqualTo(TyreAge.Answer.YOUNG);
        assertThat(TyreAge.of(tin, day.plusDays(2), rule).answer()).isEqualTo(TyreAge.Answer.INSPECT);
        var old = TyreAge.of(tin, LocalDate.of(2030, 1, 6), rule);
        assertThat(old.answer()).isEqualTo(TyreAge.Answer.REPLACE);
        assertThat(old.madeTo()).isEqualTo("2020-01-11");
        assertThat(old.cautions()).containsExactly(TyreSaid.Caution.REPLACE);
        var misread = TyreAge.of(Tin.parse("DOT OAB C2D GGH 0120"), day, rule);
        assertThat(misread.cautions()).containsExactly(new TyreSaid.UnusualLetters("O, G"));
        var before2000 = TyreAge.of(Tin.parse("AB C2 347"), day, rule);
        assertThat(before2000.answer()).isEqualTo(TyreAge.Answer.REPLACE);
        assertThat(before2000.madeFrom()).isNull();
        assertThat(before2000.ageYears()).isGreaterThan(25);
        assertThat(refused(() -> TyreAge.of(tin, LocalDate.of(2019, 12, 1), rule)))
                .isEqualTo(new TyreSaid.MadeLater("0120", LocalDate.of(2020, 1, 5), LocalDate.of(2019, 12, 1)));
        assertThat(refused(() -> new AgeRule(6, HOUSE, 5, HOUSE)))
                .isEqualTo(outside(Input.REPLACE_AGE, 5, 6, 30, "years"));
    }

    @Test
    void ageCountsFromTheWeekOfManufacture() {
        var code = Objects.requireNonNull(Tin.parse("0120").dateCode());
        assertThat(code.dated()).isEqualTo(LocalDate.of(2020, 1, 5));
        assertThat(code.ageYears(LocalDate.of(2026, 1, 5))).isCloseTo(6, within(0.003));
        assertThat(refused(() -> code.ageYears(LocalDate.of(2020, 1, 4))))
                .isEqualTo(new TyreSaid.MadeLater("0120", LocalDate.of(2020, 1, 5), LocalDate.of(2020, 1, 4)));
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
        assertThat(refused(() -> Mounting.parse("99999999999x114.3 M14x1.5 cone 64.1 ET45 7.5J")))
                .isEqualTo(new TyreSaid.NoMounting(new Quoted("99999999999x114.3 M14x1.5 cone 64.1 ET45…")));
        assertThat(refused(() -> TyreSize.parse("LT\n" + "x".repeat(1000))))
                .isEqualTo(new TyreSaid.SizeUnread(
                        new Quoted("LT %s…".formatted("x".repeat(37))),
                        new TyreSaid.SizeNeeds(new Quoted("X".repeat(40) + "…"), SizePart.SECTION_WIDTH)));
    }
}
