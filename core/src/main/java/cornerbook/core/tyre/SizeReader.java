package cornerbook.core.tyre;

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
        var use = take("LT|HL|P|");
        int sectionWidthMm = number(3, "section width in mm, as 225");
        expect("/", "a slash after the section width");
        int aspectRatioPercent = number(3, "aspect ratio in per cent, as 55");
        expect("ZRF|ZR|RF|R", "construction R after the aspect ratio");
        int rimDiameterCode = number(2, "rim diameter code, as 18");
        try {
            boolean commercial = !take("C").isEmpty();
            return new TyreSize(use, sectionWidthMm, aspectRatioPercent, rimDiameterCode, commercial, service());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("tyre size \"%s\": %s".formatted(written, e.getMessage()), e);
        }
    }

    private @Nullable ServiceDescription service() {
        if (rest.isEmpty()) {
            return null;
        }
        var loadIndex = new LoadIndex(number(3, "load index, as 98"));
        var twin = take("/").isEmpty() ? null : new LoadIndex(number(3, "load index for twin fitting, as 107"));
        return new ServiceDescription(loadIndex, twin, SpeedSymbol.parse(rest));
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
        var found = rest.isEmpty() ? "ends" : "has \"" + rest + "\"";
        return new IllegalArgumentException(
                "tyre size \"%s\" %s where it needs %s".formatted(written, found, expected));
    }
}
