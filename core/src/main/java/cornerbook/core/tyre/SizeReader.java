package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.tyre.TyreSaid.SizePart;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads a size designation part by part, so that an error can name the part. */
final class SizeReader {
    private final String written;
    private String rest;

    SizeReader(String text) {
        written = text.strip();
        rest = written.toUpperCase(Locale.ROOT).replaceAll("[\\s\\u00a0\\u202f]", "");
    }

    TyreSize read() {
        try {
            var use = take("LT|HL|P|T|");
            int sectionWidthMm = number(3, SizePart.SECTION_WIDTH);
            expect("/", SizePart.SLASH);
            int aspectRatioPercent = number(3, SizePart.ASPECT_RATIO);
            var construction = expect(use.equals("T") ? "R|D|B" : "ZRF|ZR|RF|R", SizePart.CONSTRUCTION);
            int rimDiameterCode = number(2, SizePart.RIM_DIAMETER_CODE);
            boolean commercial = !take("C").isEmpty();
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
        return !take("XL|EXTRALOAD|REINFORCED").isEmpty();
    }

    private @Nullable ServiceDescription service() {
        if (rest.isEmpty()) {
            return null;
        }
        var loadIndex = new LoadIndex(number(3, SizePart.LOAD_INDEX));
        var twin = take("/").isEmpty() ? null : new LoadIndex(number(3, SizePart.TWIN_LOAD_INDEX));
        return new ServiceDescription(loadIndex, twin, SpeedSymbol.parse(speedSymbol()));
    }

    /** Up to the marks that may follow it. */
    private String speedSymbol() {
        var letters = take("[A-Z](?=XL$|EXTRALOAD$|REINFORCED$)");
        return letters.isEmpty() ? take(".*") : letters;
    }

    private int number(int mostDigits, SizePart expected) {
        return Integer.parseInt(expect("[0-9]{1,%s}".formatted(mostDigits), expected));
    }

    private String expect(String pattern, SizePart expected) {
        var found = take(pattern);
        if (found.isEmpty()) {
            throw bad(expected);
        }
        return found;
    }

    private String take(String pattern) {
        var matcher = Pattern.compile(pattern).matcher(rest);
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
