package cornerbook.core.tyre;

import cornerbook.core.quantity.Quoted;
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
            var use = take("LT|HL|P|");
            int sectionWidthMm = number(3, "section width in mm, as 225");
            expect("/", "a slash after the section width");
            int aspectRatioPercent = number(3, "aspect ratio in per cent, as 55");
            expect("ZRF|ZR|RF|R", "construction R after the aspect ratio");
            int rimDiameterCode = number(2, "rim diameter code, as 18");
            boolean commercial = !take("C").isEmpty();
            boolean before = extraLoad();
            var service = service();
            return new TyreSize(
                    use,
                    sectionWidthMm,
                    aspectRatioPercent,
                    rimDiameterCode,
                    commercial,
                    service,
                    extraLoad() || before);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("tyre size %s: %s".formatted(Quoted.of(written), e.getMessage()), e);
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
        var loadIndex = new LoadIndex(number(3, "load index, as 98"));
        var twin = take("/").isEmpty() ? null : new LoadIndex(number(3, "load index for twin fitting, as 107"));
        return new ServiceDescription(loadIndex, twin, SpeedSymbol.parse(speedSymbol()));
    }

    /** Up to the marks that may follow it. */
    private String speedSymbol() {
        var letters = take("[A-Z](?=XL$|EXTRALOAD$|REINFORCED$)");
        return letters.isEmpty() ? take(".*") : letters;
    }

    private int number(int mostDigits, String expected) {
        var digits = take("[0-9]{1,%d}".formatted(mostDigits));
        if (digits.isEmpty()) {
            throw bad(expected);
        }
        return Integer.parseInt(digits);
    }

    private void expect(String pattern, String expected) {
        if (take(pattern).isEmpty()) {
            throw bad(expected);
        }
    }

    private String take(String pattern) {
        var matcher = Pattern.compile(pattern).matcher(rest);
        if (!matcher.lookingAt()) {
            return "";
        }
        rest = rest.substring(matcher.end());
        return matcher.group();
    }

    private IllegalArgumentException bad(String expected) {
        var found = rest.isEmpty() ? "ends" : "has " + Quoted.of(rest);
        return new IllegalArgumentException("%s where it needs %s".formatted(found, expected));
    }
}
