package cornerbook.core.quantity;

/**
 * What a person wrote, as a sentence about it repeats it: in quotation marks.
 *
 * @param line on one line; its beginning where it is longer than 40 characters
 */
public record Quoted(String line) implements QuantitySaid {
    private static final int LONGEST = 40;

    public static Quoted of(String written) {
        var line = written.replaceAll("[\\s\\p{Cntrl}\u2028\u2029]+", " ").strip();
        return new Quoted(line.length() <= LONGEST ? line : beginning(line) + "…");
    }

    /** Never half of a character that takes two places. */
    private static String beginning(String line) {
        return line.substring(0, Character.isHighSurrogate(line.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST);
    }

    @Override
    public String toString() {
        return "\"" + line + "\"";
    }
}
