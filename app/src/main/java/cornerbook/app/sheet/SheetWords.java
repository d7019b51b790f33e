package cornerbook.app.sheet;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Subject;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** How values are written on the sheet, for a customer. */
final class SheetWords {
    /** NIST Special Publication 811 (2008), appendix B.8: 1 psi = 6.894 757 kPa. */
    private static final double KPA_PER_PSI = 6.894757;

    private static final int LONGEST_LINE = 240;
    private static final int LONGEST_NAME = 60;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private static final Pattern DAY_IN_WORDS = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

    private SheetWords() {}

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** Words of a finding, with its dates written as everywhere on the sheet, cut where they fill several lines. */
    static String line(String words) {
        var dated = DAY_IN_WORDS.matcher(words).replaceAll(match -> day(LocalDate.parse(match.group())));
        return Xhtml.shorten(dated, LONGEST_LINE);
    }

    static String name(String words) {
        return Xhtml.shorten(words, LONGEST_NAME);
    }

    /** Whole kilometres, the thousands apart. */
    static String km(double distanceKm) {
        return String.format(Locale.ROOT, "%,.0f km", distanceKm).replace(',', '\u00a0');
    }

    /** As the gauges of both kinds show it. */
    static String pressure(double pressureKpa) {
        return String.format(Locale.ROOT, "%.0f kPa (%.0f psi)", pressureKpa, pressureKpa / KPA_PER_PSI);
    }

    static String torque(double torqueNm) {
        return String.format(Locale.ROOT, "%.0f N·m", torqueNm);
    }

    static String millimetres(double valueMm) {
        return String.format(Locale.ROOT, "%.1f mm", valueMm);
    }

    static String season(SeasonKind season) {
        return switch (season) {
            case SUMMER -> "Summer";
            case WINTER -> "Winter";
            case ALL_SEASON -> "All-season";
        };
    }

    static String corner(Corner corner) {
        return switch (corner) {
            case LF -> "Left front (LF)";
            case RF -> "Right front (RF)";
            case LR -> "Left rear (LR)";
            case RR -> "Right rear (RR)";
        };
    }

    /** All four in words, fewer by their names. */
    static String corners(List<Corner> corners) {
        return corners.size() == Corner.values().length
                ? "all four corners"
                : String.join(", ", corners.stream().map(Corner::name).toList());
    }

    static String part(Subject.Part part) {
        return switch (part) {
            case PAD -> "Brake pads";
            case PAD_SEIZING -> "Brake pads seizing";
            case DISC -> "Brake discs";
            case CALIPER -> "Brake calipers";
            case BRAKE_PAIR -> "Brakes of an axle";
            case PRESSURE -> "Tyre pressures";
            case BATTERY -> "12 V battery";
            case LIFT -> "On the hoist";
            case SHOP_TOOL -> "Tools used";
            default -> {
                var words = part.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                yield words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
            }
        };
    }
}
