package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.torque.Seat;
import cornerbook.core.tyre.TyreSaid.Input;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How a wheel sits on its hub, as the trade writes it: "5x114.3 M14x1.5 cone 64.1 ET45 7.5J".
 *
 * @param holes 3 to 10
 * @param circleMm diameter of the bolt circle, 80 to 230 mm
 * @param thread as "M14X1.5" or "1/2-20"
 * @param boreMm centre bore of the wheel, or pilot of the hub, 40 to 180 mm
 * @param offsetMm ET: mounting face outward of the rim's middle, −60 to 80 mm
 * @param rimCode rim width, 3 to 14 in
 */
public record Mounting(
        int holes, double circleMm, String thread, Seat seat, double boreMm, double offsetMm, double rimCode) {
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern WRITTEN =
            Pattern.compile("(\\d{1,2})X" + NUMBER + " (M\\d+X\\d(?:\\.\\d+)?|\\d+/\\d+-\\d+) (CONE|BALL|FLAT) "
                    + NUMBER + " ET(-?\\d+(?:\\.\\d+)?) " + NUMBER + "J?");

    public Mounting {
        check(Input.HOLES, holes, 3, 10, "");
        check(Input.BOLT_CIRCLE, circleMm, 80, 230, "mm");
        check(Input.CENTRE_BORE, boreMm, 40, 180, "mm");
        check(Input.OFFSET, offsetMm, -60, 80, "mm");
        check(Input.RIM_WIDTH, rimCode, 3, 14, "in");
    }

    /**
     * Reads it.
     *
     * @throws IllegalArgumentException with one sentence
     */
    public static Mounting parse(String text) {
        var match = WRITTEN.matcher(BLANKS.matcher(text.strip()
                        .toUpperCase(Locale.ROOT)
                        .replace('×', 'X')
                        .replace(',', '.')
                        .replace('−', '-'))
                .replaceAll(" "));
        if (!match.matches()) {
            throw new Refused(new TyreSaid.NoMounting(Quoted.of(text)));
        }
        return new Mounting(
                Integer.parseInt(match.group(1)),
                Double.parseDouble(match.group(2)),
                match.group(3),
                Seat.parse(match.group(4)),
                Double.parseDouble(match.group(5)),
                Double.parseDouble(match.group(6)),
                Double.parseDouble(match.group(7)));
    }

    /** As the trade writes it; {@link #parse} reads it back. */
    public String written() {
        return "%sx%s %s %s %s ET%s %sJ"
                .formatted(
                        holes,
                        plain(circleMm),
                        thread,
                        seat.name().toLowerCase(Locale.ROOT),
                        plain(boreMm),
                        plain(offsetMm),
                        plain(rimCode));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
