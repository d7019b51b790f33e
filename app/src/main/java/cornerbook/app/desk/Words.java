package cornerbook.app.desk;

import cornerbook.core.say.Said;

import cornerbook.app.request.Told;

import cornerbook.app.book.photo.Photo;
import cornerbook.app.picture.VerdictMark;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.util.List;
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

    /** What is said, for the person who asks. */
    public static String prose(Said said) {
        return prose(Told.say(said));
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

    /** A forecast is never certain, however a double rounds it. */
    public static String probability(double probability) {
        return percent(Math.clamp(probability, Double.MIN_NORMAL, Math.nextDown(1.0)));
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
            case TREAD_DIFFERENCE -> "Tread difference";
            case TYRE_AGE -> "Tyre age";
            case TYRE_LOAD -> "Tyre load";
            case PRESSURE -> "Pressure";
            case PRESSURE_SENSOR -> "Pressure sensor";
            case WHEEL_FIT -> "Wheel on its hub";
            case WHEEL_TORQUE -> "Wheel torque";
            case PAD -> "Pads";
            case PAD_SEIZING -> "Pads seizing";
            case DISC -> "Disc";
            case CALIPER -> "Caliper";
            case BRAKE_PAIR -> "Brakes of an axle";
            case PARKING_BRAKE -> "Parking brake";
            case BRAKE_FLUID -> "Brake fluid";
            case BATTERY -> "12 V battery";
            case LIFT -> "Lift";
            case SHOP_TOOL -> "Tool of the shop";
        };
    }

    /** What a photo of a corner, or of the car, may belong to. */
    public static List<Subject.Part> partsSeen(@Nullable Corner corner) {
        return corner == null
                ? List.of(Subject.Part.PARKING_BRAKE, Subject.Part.BRAKE_FLUID, Subject.Part.BATTERY)
                : List.of(
                        Subject.Part.PAD,
                        Subject.Part.CALIPER,
                        Subject.Part.DISC,
                        Subject.Part.TYRE_AGE,
                        Subject.Part.WHEEL_FIT,
                        Subject.Part.PRESSURE);
    }

    /** What a photo shows and who took it. */
    public static String photo(Photo photo) {
        var corner = photo.corner();
        var part = photo.part();
        return (corner == null ? "The car" : corner.name())
                + (part == null ? "" : ", " + part(part))
                + ", by " + photo.person();
    }

    /** The measure as a label, with its spot. */
    public static String measure(Measure measure, @Nullable Spot spot) {
        var name = switch (measure) {
            case TREAD_DEPTH -> "Tread";
            case PRESSURE_FOUND -> "Pressure found";
            case PRESSURE_SET -> "Pressure set";
            case SENSOR_PRESSURE -> "Sensor reads";
            case SENSOR_TEMPERATURE -> "Sensor temperature";
            case WHEEL_TORQUE -> "Wheel torque";
            case PAD_THICKNESS -> "Pad";
            case PAD_THICKNESS_TRAILING -> "Trailing edge,";
            case PAD_WEAR_INDICATOR -> "Wear indicator,";
            case PAD_EDGE_LIFT -> "Edge lift,";
            case PAD_MOVEMENT -> "Pad movement";
            case PAD_MOVEMENT_AFTER_SERVICE -> "Pads after cleaning";
            case SLIDE_PIN_MOVEMENT -> "Slide pins";
            case RETAINING_PIN_MOVEMENT -> "Retaining pins";
            case PISTON_MOVEMENT -> "Piston pressed back";
            case PISTON_RETURN -> "Return after 0.5 mm out";
            case BRAKE_HARDWARE -> "Clips and springs";
            case BRAKE_BOOTS -> "Boots";
            case DISC_THICKNESS -> "Disc thickness";
            case DISC_THICKNESS_VARIATION -> "Thickness variation, or the thickness at 4 points or more";
            case DISC_RUNOUT ->
                "Runout, or the dial at 4 or more equal steps from stud 1 (from another: stud 3: 0 12 30 11)";
            case HUB_RUNOUT -> "Hub face: runout, or the dial at equal steps from stud 1";
            case HUB_DIAL_RADIUS -> "Dial on the hub, radius";
            case DISC_DIAL_RADIUS -> "Dial on the disc, radius";
            case DISC_RUNOUT_MOVED -> "Disc moved on: runout, or the dial at equal steps from stud 1";
            case DISC_MOVED_BY -> "Moved on by";
            case DISC_RUST -> "Under rust,";
            case DISC_LIP -> "Lip at the edge";
            case DISC_PITTING -> "Pitting,";
            case DISC_CRACKS -> "Cracks";
            case BRACKET_CLEANED -> "Bracket cleaned";
            case PIN_LUBRICANT -> "On the pins";
            case ABUTMENT_LUBRICANT -> "On the abutments";
            case PADS_REPLACED -> "Pads replaced";
            case DISC_REPLACED -> "Disc replaced";
            case BRAKE_HARDWARE_REPLACED -> "Hardware replaced";
            case CALIPER_CLOSED -> "Caliper closed";
            case BRACKET_BOLTS_TORQUED -> "Bracket bolts at torque";
            case PARKING_BRAKE_IN_SERVICE_MODE -> "Parking brake in service mode";
            case PARKING_BRAKE_CYCLED -> "Out of service mode, cycled";
            case PARKING_BRAKE_HOLDING -> "Parking brake";
            case PEDAL_PUMPED -> "Pedal pumped hard";
            case BRAKE_FLUID_BOILING_POINT -> "Fluid boils at";
            case BRAKE_FLUID_WATER -> "Water in the fluid";
            case BRAKE_FLUID_REPLACED -> "Fluid replaced";
            case TYRE_TEMPERATURE -> "Tyre temperature";
            case OUTSIDE_TEMPERATURE -> "Outside temperature";
            case BATTERY_VOLTAGE -> "12 V battery at rest";
            case BATTERY_CRANKING_CURRENT -> "Cranking current";
            case BATTERY_TEMPERATURE -> "Battery temperature";
        };
        return spot == null ? name : name + " " + spot.name().toLowerCase(Locale.ROOT);
    }

    /** The mark and its size on a page; the word stands beside it. */
    public static String mark(Finding finding, int sizePx) {
        return mark(finding.verdict(), finding.lifeLeft(), sizePx);
    }

    public static String mark(Verdict verdict, double lifeLeft, int sizePx) {
        return VerdictMark.svg(verdict, lifeLeft, sizePx, Told.reader());
    }
}
