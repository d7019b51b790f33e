package cornerbook.app.book.visit;

import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A value of a visit that can be put right. */
enum VisitValue implements Said {
    DATE {
        @Override
        Said read(String written) {
            return new Day(LocalDate.parse(written));
        }
    },
    ODOMETER {
        @Override
        Said read(String written) {
            return Amount.of(Quantities.parse(written, "km"), "km");
        }
    };

    /** As it is named in the book and in visit files. */
    String written() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<VisitValue> find(String written) {
        return Arrays.stream(values())
                .filter(each -> each.written().equals(written))
                .findFirst();
    }

    /** What was written for it; a visit file may have brought anything, which is shown as it stands. */
    Said said(String written) {
        try {
            return read(written);
        } catch (IllegalArgumentException | DateTimeException e) {
            return Said.verbatim(written);
        }
    }

    abstract Said read(String written);
}
