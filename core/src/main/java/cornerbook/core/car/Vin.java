package cornerbook.core.car;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.util.Locale;

/**
 * Vehicle identification number: 17 capital letters and digits without I, O and Q (ISO 3779, 49 CFR 565).
 *
 * <p>Check digit, position 9: each symbol has a value, each position a weight; the sum of the products modulo 11 is the
 * digit, 10 is X. Cars made for other places than North America may have anything there, so a digit that does not fit is
 * reported by {@link #checkDigitFits()} and not refused.
 */
public record Vin(String symbols) {
    private static final int LENGTH = 17;
    private static final int CHECK_POSITION = 8;
    private static final int YEAR_POSITION = 9;
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

    /** Values of the letters above, 49 CFR 565. */
    private static final String LETTER_VALUES = "12345678123457923456789";

    /** Weights of the positions, 49 CFR 565; A stands for 10. */
    private static final String WEIGHTS = "8765432A098765432";

    /** Refuses another length and symbols that are not used. */
    public Vin {
        if (symbols.length() != LENGTH) {
            throw new Refused(new CarSaid.VinLength(Quoted.of(symbols), symbols.length(), LENGTH));
        }
        for (int i = 0; i < LENGTH; i++) {
            if (!isDigit(symbols.charAt(i)) && LETTERS.indexOf(symbols.charAt(i)) < 0) {
                throw new Refused(
                        new CarSaid.VinSymbol(Quoted.of(symbols), Quoted.of(symbols.substring(i, i + 1)), i + 1));
            }
        }
    }

    /**
     * The number as written; small letters, blanks and hyphens do not matter.
     *
     * @throws Refused with one sentence that says what does not fit
     */
    public static Vin parse(String text) {
        return new Vin(text.toUpperCase(Locale.ROOT).replaceAll("[\\s\\u00a0-]", ""));
    }

    /** The check digit that the other symbols ask for, 0 to 9 or X. */
    public char expectedCheckDigit() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += Character.digit(WEIGHTS.charAt(i), 11) * value(symbols.charAt(i));
        }
        int remainder = sum % 11;
        return remainder == 10 ? 'X' : (char) ('0' + remainder);
    }

    /** Whether position 9 is the check digit of 49 CFR 565. */
    public boolean checkDigitFits() {
        return symbols.charAt(CHECK_POSITION) == expectedCheckDigit();
    }

    /**
     * Whether a car with the other number is of the same kind: maker, model, body, restraint and engine (positions 1 to 8), and
     * model year (position 10). ISO 3779; 49 CFR 565.15.
     */
    public boolean isOfSameKind(Vin other) {
        return symbols.substring(0, CHECK_POSITION).equals(other.symbols.substring(0, CHECK_POSITION))
                && symbols.charAt(YEAR_POSITION) == other.symbols.charAt(YEAR_POSITION);
    }

    @Override
    public String toString() {
        return symbols;
    }

    private static int value(char symbol) {
        return isDigit(symbol) ? symbol - '0' : LETTER_VALUES.charAt(LETTERS.indexOf(symbol)) - '0';
    }

    private static boolean isDigit(char symbol) {
        return symbol >= '0' && symbol <= '9';
    }
}
