package cornerbook.app.book.visit;

import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** A value of a visit that can be put right. */
enum VisitValue implements Said {
    DATE {
        @Override
        String write(Visit visit) {
            return visit.date().toString();
        }

        @Override
        Said read(String written) {
            return new Day(LocalDate.parse(written));
        }
    },
    ODOMETER {
        @Override
        String write(Visit visit) {
            return BigDecimal.valueOf(visit.odometerKm()).stripTrailingZeros().toPlainString() + " km";
        }

        @Override
        Said read(String written) {
            return Amount.of(Quantities.parse(written, "km"), "km");
        }
    },
    TECHNICIAN {
        @Override
        String write(Visit visit) {
            return Objects.requireNonNullElse(visit.card().technician(), NOTHING);
        }
    },
    NOTES {
        @Override
        String write(Visit visit) {
            return Objects.requireNonNullElse(visit.card().notes(), NOTHING);
        }
    },
    CAME_ON {
        @Override
        String write(Visit visit) {
            return wheels(visit.arrivedOn());
        }
    },
    LEFT_ON {
        @Override
        String write(Visit visit) {
            return wheels(visit.leftOn());
        }
    },
    /** A reading that was taken at the wrong car, and the plate of the right one that it stands at since. */
    READING {
        @Override
        String write(Visit visit) {
            return NOTHING;
        }

        @Override
        Said read(String written) {
            var parts = written.split(" ", 4);
            return parts.length < 4
                    ? Said.verbatim(written)
                    : new VisitSaid.ReadAt(
                            parts[1].equals(NOTHING) ? null : Corner.valueOf(parts[1]),
                            new MeasureAt(
                                    Measure.valueOf(parts[0]),
                                    parts[2].equals(NOTHING) ? null : Spot.valueOf(parts[2])),
                            parts[3]);
        }
    },
    /** Whether the visit counts; a visit that is in a history does. */
    STANDING {
        @Override
        String write(Visit visit) {
            return Standing.COUNTS.written();
        }

        @Override
        Said read(String written) {
            return Standing.valueOf(written.toUpperCase(Locale.ROOT));
        }
    };

    enum Standing implements VisitSaid {
        COUNTS,
        CANCELLED;

        String written() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What stands in the place of what was not known. */
    private static final String NOTHING = "–";

    /** As it is named in the book and in visit files. */
    String written() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
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

    /** The value of a visit, as the book and visit files write it. */
    abstract String write(Visit visit);

    Said read(String written) {
        return Said.verbatim(written);
    }

    /** A reading as {@link #READING} keeps it: measure, corner, spot, and what was written. */
    static String write(Reading reading) {
        return "%s %s %s %s"
                .formatted(
                        reading.measure().name(),
                        reading.corner() == null ? NOTHING : reading.corner().name(),
                        reading.spot() == null ? NOTHING : reading.spot().name(),
                        reading.asWritten());
    }

    private static String wheels(Map<Corner, String> wheelAt) {
        return wheelAt.isEmpty()
                ? NOTHING
                : wheelAt.entrySet().stream()
                        .map(at -> at.getKey() + " " + at.getValue())
                        .collect(Collectors.joining(", "));
    }
}
