package cornerbook.app.book.car;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A value of a wheel or its set that can be put right. */
enum WheelValue implements Said {
    SEASON("season") {
        @Override
        Said read(String written) {
            return SeasonKind.valueOf(written.toUpperCase(Locale.ROOT).replace(' ', '_'));
        }
    },
    STORE_PLACE("store place"),
    MODEL("model"),
    SIZE("size"),
    LOAD_INDEX("load index"),
    SPEED_SYMBOL("speed symbol"),
    TIN("TIN"),
    DIRECTIONAL("directional") {
        @Override
        Said read(String written) {
            return YesOrNo.valueOf(written.toUpperCase(Locale.ROOT));
        }
    },
    ASYMMETRIC("asymmetric") {
        @Override
        Said read(String written) {
            return DIRECTIONAL.read(written);
        }
    },
    DEPTH_WHEN_NEW("depth when new") {
        @Override
        Said read(String written) {
            return Amount.of(Quantities.parse(written, "mm"), "mm");
        }
    },
    SENSOR_IDENTITY("sensor identity"),
    MOUNTING("mounting"),
    SENSOR_TYPE("sensor type"),
    SENSOR_BATTERY_FROM("sensor's battery from") {
        @Override
        Said read(String written) {
            return new Day(LocalDate.parse(written));
        }
    };

    private final String written;

    WheelValue(String written) {
        this.written = written;
    }

    /** As it is named in the book and in visit files. */
    String written() {
        return written;
    }

    static Optional<WheelValue> find(String written) {
        return Arrays.stream(values())
                .filter(each -> each.written.equals(written))
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

    Said read(String written) {
        return Said.verbatim(written);
    }
}
