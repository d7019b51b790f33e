package cornerbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.finding.OwnShare;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Day;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Margin;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How values are written. French: Office québécois de la langue française, Banque de dépannage linguistique (decimal comma, blank between
 * thousands and before units, "1er"); units: NIST Special Publication 811 (2008), appendix B.
 */
class ReaderTest {
    private static final Reader ENGLISH = Reader.DEFAULT;
    private static final Reader FRENCH = ENGLISH.in(Language.FRENCH);
    private static final Reader US = ENGLISH.in(UnitSystem.US);

    private static String plain(String words) {
        return words.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    /** Rounded to tens nothing is none of it, or all. */
    @Test
    void aShareIsNeverSaidToBeNothingOrAll() {
        assertThat(plain(ENGLISH.say(OwnShare.of(0.04))))
                .startsWith("under 5 % of this figure comes from what was read");
        assertThat(plain(ENGLISH.say(OwnShare.of(0.27)))).startsWith("30 % of this figure");
        assertThat(plain(FRENCH.say(OwnShare.of(0.27)))).startsWith("30 % de ce chiffre vient");
        assertThat(plain(FRENCH.say(OwnShare.of(0.97)))).startsWith("plus de 95 % de ce chiffre");
    }

    /** A gauge has no digit that a conversion makes: 1 psi is 6.894757 kPa, 1 lbf·ft 1.355818 N·m (NIST SP 811, appendix B). */
    @Test
    void numbersHaveTheGaugesDigits() {
        for (double writtenKpa : new double[] {38 * 6.894757, 262}) {
            assertThat(plain(US.say(Amount.of(writtenKpa, "kPa")))).isEqualTo("38 psi");
            assertThat(plain(US.say(Amount.exact(writtenKpa, "kPa")))).isEqualTo("38 psi");
            assertThat(plain(ENGLISH.say(Amount.of(writtenKpa, "kPa")))).isEqualTo("262 kPa");
        }
        assertThat(plain(US.say(Amount.of(240, "kPa")))).isEqualTo("34.8 psi");
        assertThat(plain(US.say(Amount.of(-0.1, "kPa")))).isEqualTo("0 psi");
        assertThat(plain(ENGLISH.say(Amount.of(80 * 1.355818, "N·m")))).isEqualTo("108 N·m");
        assertThat(plain(US.say(Amount.of(80 * 1.355818, "N·m")))).isEqualTo("80 lbf·ft");
        assertThat(plain(US.say(new Between(35 * 6.894757, 38 * 6.894757, "kPa", 0))))
                .isEqualTo("35 to 38 psi");
    }

    /** A change of which nobody noted who made it is told without a name. */
    @Test
    void aLabelChoosesByWhatIsNotThere() {
        var labels = ENGLISH.labels("app/desk");
        assertThat(labels.of(
                        "changed-because",
                        "day",
                        LocalDate.of(2026, 11, 2),
                        "what",
                        "Odometer",
                        "before",
                        "1",
                        "after",
                        "2",
                        "reason",
                        "typed wrong",
                        "person",
                        null))
                .endsWith("was 1, now 2 (typed wrong)");
    }

    @Test
    void fromAndToThatReadAlikeAreOneNumber() {
        assertThat(plain(ENGLISH.say(new Between(0.2, 0.4, "km", 0)))).isEqualTo("0 km");
        assertThat(plain(FRENCH.say(new Between(-0.04, 0.04, "mm", 1)))).isEqualTo("0,0 mm");
        assertThat(plain(FRENCH.say(new Amount(47, "km/day", 0)))).isEqualTo("47 km par jour");
    }

    /** Nothing that was reckoned is certain. */
    @Test
    void noChanceIsACertainty() {
        assertThat(plain(ENGLISH.say(new Chance(0.9999)))).isEqualTo("more than 99 %");
        assertThat(plain(ENGLISH.say(new Chance(0.0004)))).isEqualTo("less than 1 %");
        assertThat(plain(FRENCH.say(new Chance(0.9999)))).isEqualTo("plus de 99 %");
        assertThat(plain(FRENCH.say(new Chance(0)))).isEqualTo("moins de 1 %");
    }

    @Test
    void amountsInEachLanguage() {
        assertThat(plain(ENGLISH.say(Amount.of(7.25, "mm")))).isEqualTo("7.3 mm");
        assertThat(plain(FRENCH.say(Amount.of(7.2, "mm")))).isEqualTo("7,2 mm");
        assertThat(plain(FRENCH.say(Amount.of(38200, "km")))).isEqualTo("38 200 km");
        assertThat(plain(ENGLISH.say(Amount.of(-0.04, "°C")))).isEqualTo("0 °C");
        assertThat(plain(ENGLISH.say(Amount.of(-4, "°C")))).isEqualTo("−4 °C");
    }

    @Test
    void whatWasTypedIsShownWithTheMarkOfTheLanguage() {
        assertThat(FRENCH.typed("27.31 27,30 27.3 mm")).isEqualTo("27,31 27,30 27,3 mm");
        assertThat(FRENCH.typed("6.5/32 in.")).isEqualTo("6,5/32 in.");
        assertThat(ENGLISH.typed("7,4 mm")).as("a comma may group thousands").isEqualTo("7,4 mm");
    }

    @Test
    void thinThingsAreReadIn32nds() {
        assertThat(plain(US.say(new Amount(1.6, "mm", 1)))).isEqualTo("2.0/32 in");
        assertThat(plain(US.in(Language.FRENCH).say(new Amount(1.6, "mm", 1)))).isEqualTo("2,0/32 po");
        assertThat(plain(US.say(new Amount(22.4, "mm", 1)))).isEqualTo("0.882 in");
        assertThat(plain(US.say(new Between(4, 5.2, "mm", 1)))).isEqualTo("5.0 to 6.6/32 in");
    }

    @Test
    void pressureTorqueAndTemperature() {
        assertThat(plain(US.say(Amount.of(250, "kPa")))).isEqualTo("36.3 psi");
        assertThat(plain(US.say(Amount.of(133, "N·m")))).isEqualTo("98 lbf·ft");
        assertThat(plain(US.say(Amount.of(-10, "°C")))).isEqualTo("14 °F");
        assertThat(plain(US.say(Amount.of(502, "J/(kg·K)")))).isEqualTo("502 J/(kg·K)");
        assertThat(plain(US.say(new Margin(10, "°C", 0, true)))).isEqualTo("+18 °F");
    }

    /** NIST Special Publication 811 (2008), appendix B: 1 mi = 1.609 344 km, 1 lb = 0.453 592 37 kg, 1 lbf = 4.448 222 N. */
    @Test
    void distancesMassesAndForces() {
        assertThat(plain(US.say(Amount.of(48_200, "km")))).isEqualTo("29 950 mi");
        assertThat(plain(US.say(Amount.of(100, "km/h")))).isEqualTo("62 mph");
        assertThat(plain(US.say(Amount.of(1600, "kg")))).isEqualTo("3 527 lb");
        assertThat(plain(US.say(new Amount(40, "kN", 0)))).isEqualTo("8 992 lbf");
        assertThat(plain(US.say(new Amount(0.2, "mm/1000 km", 2)))).isEqualTo("0.41/32 in per 1 000 mi");
        assertThat(plain(US.say(new PlusMinus(6.7, 0.2, "mm", 1)))).isEqualTo("8.4 ± 0.3/32 in");
    }

    @Test
    void estimatesAndRanges() {
        assertThat(plain(ENGLISH.say(new PlusMinus(6.72, 0.21, "mm", 1)))).isEqualTo("6.7 ± 0.2 mm");
        assertThat(plain(FRENCH.say(Between.exact(0, 25.5, "mm")))).isEqualTo("0,0 à 25,5 mm");
    }

    @Test
    void chancesAreNeverCertain() {
        assertThat(plain(ENGLISH.say(new Chance(1)))).isEqualTo("more than 99 %");
        assertThat(plain(FRENCH.say(new Chance(0)))).isEqualTo("moins de 1 %");
        assertThat(plain(ENGLISH.say(new Chance(0.955)))).isEqualTo("96 %");
    }

    @Test
    void daysAndLists() {
        assertThat(ENGLISH.say(new Day(LocalDate.of(2027, 10, 20)))).isEqualTo("20 Oct 2027");
        assertThat(FRENCH.say(new Day(LocalDate.of(2027, 12, 1)))).isEqualTo("1er déc. 2027");
        var three = List.of(Said.verbatim("a"), Said.verbatim("b"), Said.verbatim("c"));
        assertThat(FRENCH.say(Listed.and(three))).isEqualTo("a, b et c");
        assertThat(ENGLISH.say(Listed.or(three.subList(0, 1)))).isEqualTo("a");
    }

    @Test
    void formulasKeepTheirSigns() {
        assertThat(FRENCH.say(Formula.of("{} × {}", Amount.significant(1.5, "", 4), Amount.significant(20, "", 4))))
                .isEqualTo("1,5 × 20");
    }

    @Test
    void languageByTag() {
        assertThat(Language.find("fr_CA.UTF-8")).contains(Language.FRENCH);
        assertThat(Language.find("de")).isEmpty();
        assertThat(new Reader(Language.FRENCH, UnitSystem.METRIC, ZoneOffset.UTC).language())
                .isEqualTo(Language.FRENCH);
    }
}
