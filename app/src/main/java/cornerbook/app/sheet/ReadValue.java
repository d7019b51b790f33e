package cornerbook.app.sheet;

import cornerbook.core.car.Reading;
import cornerbook.core.say.Amount;
import cornerbook.words.Reader;
import java.util.regex.Pattern;

/** What was read, with the digits that the gauge showed. */
final class ReadValue {
    private static final Pattern WRITTEN = Pattern.compile("[+−-]?\\d+(?:[.,](\\d{1,3}))?\\s*(\\D*)");

    private ReadValue() {}

    static String of(Reading reading, Reader reader) {
        var scale = reading.measure().scale();
        return reader.say(scale == null ? amount(reading) : scale.told(reading.value()));
    }

    /** The digits of another unit say nothing of those in this one. */
    static Amount amount(Reading reading) {
        var unit = reading.measure().unit();
        var usual = Amount.of(reading.value(), unit);
        var written = WRITTEN.matcher(reading.asWritten().strip());
        if (!written.matches() || !written.group(2).equals(unit)) {
            return usual;
        }
        int digits = written.group(1) == null ? 0 : written.group(1).length();
        return new Amount(reading.value(), unit, Math.max(digits, usual.decimals() > 1 ? 0 : usual.decimals()));
    }
}
