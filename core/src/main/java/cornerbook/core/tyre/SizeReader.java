package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.tyre.TyreSaid.SizePart;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a size designation part by part, so that an error can name the part. */
final class SizeReader {
    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00a0\\u202f]");
    private static final Pattern USE = Pattern.compile("LT|HL|P|T|");
    private static final Pattern SLASH = Pattern.compile("/");
    private static final Pattern CONSTRUCTION = Pattern.compile("ZRF|ZR|RF|R");
    private static final Pattern CONSTRUCTION_OF_SPARE = Pattern.compile("R|D|B");
    private static final Pattern COMMERCIAL = Pattern.compile("C");
    private static final Pattern UP_TO_TWO_DIGITS = Pattern.compile("[0-9]{1,2}");
    private static final Pattern UP_TO_THREE_DIGITS = Pattern.compile("[0-9]{1,3}");
    private static final Pattern EXTRA_LOAD = Pattern.compile("XL|EXTRALOAD|REINFORCED");
    private static final Pattern LETTER_BEFORE_EXTRA_LOAD = Pattern.compile("[A-Z](?=XL$|EXTRALOAD$|REINFORCED$)");
    private static final Pattern REST = Pattern.compile(".*");

    private final String written;
    private String rest;

    SizeReader(String text) {
        written = text.strip();
        rest = BLANKS.matcher(written.toUpperCase(Locale.ROOT)).replaceAll("");
    }

    TyreSize read() {
        try {
            var use = take(USE);
            int sectionWidthMm = number(UP_TO_THREE_DIGITS, SizePart.SECTION_WIDTH);
            expect(SLASH, SizePart.SLASH);
            int aspectRatioPercent = number(UP_TO_THREE_DIGITS, SizePart.ASPECT_RATIO);
            var construction = expect(use.equals("T") ? CONSTRUCTION_OF_SPARE : CONSTRUCTION, SizePart.CONSTRUCTION);
            int rimDiameterCode = number(UP_TO_TWO_DIGITS, SizePart.RIM_DIAMETER_CODE);
            boolean commercial = !take(COMMERCIAL).isEmpty();
            boolean before = extraLoad();
            var service = service();
            return new TyreSize(
                    use,
                    sectionWidthMm,
                    aspectRatioPercent,
                    construction.contains("R") ? "R" : construction,
                    rimDiameterCode,
                    commercial,
                    service,
                    extraLoad() || before);
        } catch (IllegalArgumentException e) {
            throw new Refused(new TyreSaid.SizeUnread(Quoted.of(written), Refused.said(e)));
        }
    }

    /** Makers write it before or behind the service description. */
    private boolean extraLoad() {
        return !take(EXTRA_LOAD).isEmpty();
    }

    private @Nullable ServiceDescription service() {
        if (rest.isEmpty()) {
            return null;
        }
        var loadIndex = new LoadIndex(number(UP_TO_THREE_DIGITS, SizePart.LOAD_INDEX));
        var twin = take(SLASH).isEmpty() ? null : new LoadIndex(number(UP_TO_THREE_DIGITS, SizePart.TWIN_LOAD_INDEX));
        return new ServiceDescription(loadIndex, twin, SpeedSymbol.parse(speedSymbol()));
    }

    /** Up to the marks that may follow it. */
    private String speedSymbol() {
        var letters = take(LETTER_BEFORE_EXTRA_LOAD);
        return letters.isEmpty() ? take(REST) : letters;
    }

    private int number(Pattern digits, SizePart expected) {
        return Integer.parseInt(expect(digits, expected));
    }

    private String expect(Pattern pattern, SizePart expected) {
        var found = take(pattern);
        if (found.isEmpty()) {
            throw bad(expected);
        }
        return found;
    }

    private String take(Pattern pattern) {
        var matcher = pattern.matcher(rest);
        if (!matcher.lookingAt()) {
            return "";
        }
        rest = rest.substring(matcher.end());
        return matcher.group();
    }

    private Refused bad(SizePart expected) {
        return new Refused(new TyreSaid.SizeNeeds(rest.isEmpty() ? null : Quoted.of(rest), expected));
    }
}
