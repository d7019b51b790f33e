package cornerbook.app.web;

import cornerbook.app.picture.VerdictMark;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.season.Dates;
import cornerbook.core.visit.Finding;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Subject;
import cornerbook.core.visit.Verdict;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How values are written for people on the pages. */
public final class Words {
    private static final Pattern BEFORE_UNIT = Pattern.compile("(?<=[0-9]) (?=(mm|km|kPa|N·m|V|A|°C|%)(?![\\p{L}]))");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=[0-9]),(?=[0-9]{3}\\b)");

    private Words() {}

    public static String day(@Nullable LocalDate date) {
        return date == null ? "–" : Dates.written(date);
    }

    /** Whole kilometres with a thin space between the thousands. */
    public static String km(double distanceKm) {
        return String.format(Locale.ROOT, "%,d", Math.round(distanceKm))
                        .replace(',', '\u202f')
                        .replace('-', '\u2212')
                + "\u00a0km";
    }

    /** A sentence of core for people: a thin space between the thousands, each number on one line with its unit. */
    public static String prose(String sentence) {
        return BEFORE_UNIT
                .matcher(THOUSANDS.matcher(sentence).replaceAll("\u202f"))
                .replaceAll("\u00a0");
    }

    public static String sentenceStart(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Up to three digits after the point, none without need. */
    public static String number(double value) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(value);
    }

    public static String percent(double share) {
        return share > 0.995 && share < 1
                ? "over 99\u00a0%"
                : share < 0.005 && share > 0 ? "under 1\u00a0%" : Math.round(share * 100) + "\u00a0%";
    }

    public static String season(SeasonKind season) {
        return switch (season) {
            case SUMMER -> "Summer";
            case WINTER -> "Winter";
            case ALL_SEASON -> "All-season";
        };
    }

    public static String drive(DriveLayout drive) {
        return switch (drive) {
            case FRONT -> "front-wheel drive";
            case REAR -> "rear-wheel drive";
            case ALL -> "all-wheel drive";
        };
    }

    public static String corner(Corner corner) {
        return switch (corner) {
            case LF -> "left front";
            case RF -> "right front";
            case LR -> "left rear";
            case RR -> "right rear";
        };
    }

    public static String part(Subject.Part part) {
        return switch (part) {
            case WHEEL_SET -> "Wheel set";
            case TREAD_PATTERN -> "Tread pattern";
            case TYRE_AGE -> "Tyre age";
            case TYRE_LOAD -> "Tyre load";
            case PRESSURE -> "Pressure";
            case WHEEL_TORQUE -> "Wheel torque";
            case PAD -> "Pads";
            case PAD_SEIZING -> "Pads seizing";
            case DISC -> "Disc";
            case BRAKE_FLUID -> "Brake fluid";
            case BATTERY -> "12 V battery";
        };
    }

    /** The measure as a label, with its spot. */
    public static String measure(Measure measure, @Nullable Spot spot) {
        var name = switch (measure) {
            case TREAD_DEPTH -> "Tread";
            case PRESSURE_FOUND -> "Pressure found";
            case PRESSURE_SET -> "Pressure set";
            case WHEEL_TORQUE -> "Wheel torque";
            case PAD_THICKNESS -> "Pad";
            case PAD_MOVEMENT -> "Pad movement";
            case PAD_MOVEMENT_AFTER_SERVICE -> "Pads after cleaning";
            case SLIDE_PIN_MOVEMENT -> "Slide pins";
            case DISC_THICKNESS -> "Disc thickness";
            case DISC_THICKNESS_VARIATION -> "Thickness variation, or the thickness at 4 points or more";
            case DISC_RUNOUT -> "Runout";
            case TYRE_TEMPERATURE -> "Tyre temperature";
            case BATTERY_VOLTAGE -> "12 V battery at rest";
            case BATTERY_CRANKING_CURRENT -> "Cranking current";
            case BATTERY_TEMPERATURE -> "Battery temperature";
            case BRAKE_FLUID_BOILING_POINT -> "Brake fluid boiling point";
        };
        return spot == null ? name : name + " " + spot.name().toLowerCase(Locale.ROOT);
    }

    /** What a pad did when it was moved by hand. */
    public static String movement(double value) {
        return value >= 1.5 ? "seized" : value >= 0.5 ? "tight" : "free";
    }

    /** The mark and its size on a page; the word stands beside it. */
    public static String mark(Finding finding, int sizePx) {
        return mark(finding.verdict(), finding.lifeLeft(), sizePx);
    }

    public static String mark(Verdict verdict, double lifeLeft, int sizePx) {
        return VerdictMark.svg(verdict, lifeLeft, sizePx);
    }
}
