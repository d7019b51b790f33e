package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Tyre identification number, or only its date code. The last four digits are week and year of manufacture (49 CFR
 * 574.5); tyres made before 2000 end in three digits and a letter before them (64 FR 36807) and are known here only as that.
 *
 * @param symbols capital letters and digits without blanks and without the letters DOT
 * @param dateCode null for a tyre made before 2000
 */
public record Tin(String symbols, @Nullable DateCode dateCode) {
    /** Plant 3, description 6, date 4 (80 FR 19553). */
    private static final int LONGEST = 13;

    /** Plant 3, date 4: of a retreaded tyre (80 FR 19553). */
    private static final int RETREADED = 7;

    /** Week and last digit of the year. */
    private static final int DATE_BEFORE_2000 = 3;

    /** Plant 2, size 2, date 4, the shortest of a new tyre before the plant had three symbols (64 FR 36807). */
    private static final int SHORTEST_OF_TWO_SYMBOL_PLANTS = 8;

    /** The letters that 49 CFR 574.5 leaves out, as they are taken for digits or each other; from memory. */
    private static final String NOT_USED = "GIOQSZ";

    private static final Pattern SYMBOLS = Pattern.compile("[A-Z0-9]{3," + LONGEST + "}");
    private static final Pattern BETWEEN_GROUPS = Pattern.compile("[\\s\\u00a0\\u202f.·-]+");
    private static final Pattern DOT = Pattern.compile("^DOT ?");
    private static final Pattern THREE_DIGITS = Pattern.compile("(.*[A-Z])?[0-9]{3}");
    private static final Pattern FOUR_DIGITS = Pattern.compile(".*[0-9]{4}");

    /** Refuses what is no TIN. */
    public Tin {
        if (!SYMBOLS.matcher(symbols).matches()) {
            throw new Refused(new TyreSaid.NoTin(Quoted.of(symbols), LONGEST));
        }
    }

    /**
     * What was read from the sidewall: "DOT 1AB C2D EFG 3519", "1ABC2DEFG3519", "3519", or "AB C2 347" of before 2000.
     *
     * @throws IllegalArgumentException with one sentence that says which part does not fit
     */
    public static Tin parse(String text) {
        var parted = BETWEEN_GROUPS
                .matcher(text.toUpperCase(Locale.ROOT))
                .replaceAll(" ")
                .strip();
        var groups = DOT.matcher(parted).replaceFirst("");
        var symbols = groups.replace(" ", "");
        var last = groups.substring(groups.lastIndexOf(' ') + 1);
        if (THREE_DIGITS.matcher(last).matches()) {
            return new Tin(symbols, null);
        }
        if (!FOUR_DIGITS.matcher(last).matches()) {
            throw new Refused(new TyreSaid.TinWithoutDate(Quoted.of(text)));
        }
        return new Tin(symbols, DateCode.parse(last.substring(last.length() - 4)));
    }

    /** Whether the date code has three digits, as it had before 2000. */
    public boolean madeBefore2000() {
        return dateCode == null;
    }

    /**
     * Code of the plant that made or retreaded the tyre: three symbols of a TIN of 13 or of a retreaded tyre's 7, else two
     * (49 CFR 574.5, 80 FR 19553). Empty when only the date was read, or of a tyre of before 2000.
     */
    public Optional<String> plantCode() {
        int length = symbols.length();
        if (dateCode == null || (length < SHORTEST_OF_TWO_SYMBOL_PLANTS && length != RETREADED)) {
            return Optional.empty();
        }
        return Optional.of(symbols.substring(0, length == LONGEST || length == RETREADED ? 3 : 2));
    }

    /** Letters that no TIN uses, parted by commas, each once; empty when there are none. Such a number was misread. */
    String unusualLetters() {
        return symbols.chars()
                .filter(symbol -> NOT_USED.indexOf(symbol) >= 0)
                .mapToObj(Character::toString)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** As it is read again: three digits of before 2000 stand apart, or a digit before them would be taken for the week. */
    @Override
    public String toString() {
        int date = symbols.length() - DATE_BEFORE_2000;
        return madeBefore2000()
                ? "DOT %s %s"
                        .formatted(symbols.substring(0, date), symbols.substring(date))
                        .replace("  ", " ")
                : "DOT " + symbols;
    }
}
