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
import org.jspecify.annotations.Nullable;

/** A value of a visit that can be put right. */
public enum VisitValue implements Said {
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
    /** A reading that was entered in the wrong place, and the corner or the plate where it stands since. */
    READING {
        @Override
        String write(Visit visit) {
            return NOTHING;
        }

        @Override
        Said read(String written) {
            var parts = written.split(" ", 4);
            return parts.length < 4
                    ? cornerOr(written)
                    : new VisitSaid.ReadAt(
                            parts[1].equals(NOTHING) ? null : Corner.valueOf(parts[1]),
                            new MeasureAt(
                                    Measure.valueOf(parts[0]),
                                    parts[2].equals(NOTHING) ? null : Spot.valueOf(parts[2])),
                            parts[3]);
        }
    },
    /** A tick in the wrong place, by the name of its step, and the corner or the plate where it stands since. */
    TICK {
        @Override
        String write(Visit visit) {
            return NOTHING;
        }

        @Override
        Said read(String written) {
            if (!written.startsWith(STEP)) {
                return cornerOr(written);
            }
            var parts = written.substring(STEP.length()).split("\\.", -1);
            return parts.length == 3
                    ? new VisitSaid.FastenerAt(Corner.valueOf(parts[1]), parts[2])
                    : new VisitSaid.StepTicked(parts[0]);
        }
    },
    /** A photo in the wrong place, by its corner, and the corner or the plate where it stands since. */
    PHOTO {
        @Override
        String write(Visit visit) {
            return NOTHING;
        }

        @Override
        Said read(String written) {
            return cornerOr(written);
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

    /** Begins what a change keeps of a tick; its name follows. */
    private static final String STEP = "step ";

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

    /** A tick as {@link #TICK} keeps it. */
    public static String ofTick(String tick) {
        return STEP + tick;
    }

    /** As a change keeps the place where something stands since: the corner of the same car, or the plate of another. */
    public static String place(@Nullable Corner corner, @Nullable String plate) {
        return plate != null ? plate : corner == null ? NOTHING : corner.name();
    }

    private static boolean isCorner(String written) {
        return Arrays.stream(Corner.values()).map(Corner::name).anyMatch(written::equals);
    }

    private static Said cornerOr(String written) {
        return isCorner(written) ? Corner.valueOf(written) : Said.verbatim(written);
    }

    private static String wheels(Map<Corner, String> wheelAt) {
        return wheelAt.isEmpty()
                ? NOTHING
                : wheelAt.entrySet().stream()
                        .map(at -> at.getKey() + " " + at.getValue())
                        .collect(Collectors.joining(", "));
    }
}
