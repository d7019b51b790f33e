package cornerbook.core.tool;

import cornerbook.core.lift.Hoist;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.torque.WrenchScale;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A tool of the shop whose numbers count: as the shop keeps it, or as it was on the day of a visit that was worked with it.
 *
 * @param id as it is marked: "W-2"
 * @param lowest least value of its scale, in the unit of its kind; for a hoist the height of its lowered pads
 * @param highest most value of its scale; for a hoist the height of its raised pads
 * @param offset what it shows too much against a master, in the same unit; 0 for a hoist
 * @param calibrationDue the day from which it is not to be trusted; for a hoist that of its inspection
 * @param hoist of a hoist; null for anything else
 */
public record ShopTool(
        String id,
        Kind kind,
        String name,
        double lowest,
        double highest,
        double offset,
        LocalDate calibrationDue,
        @Nullable Hoist hoist) {
    private static final Pattern MARK = Pattern.compile("[\\p{L}\\d][\\p{L}\\d ._-]{0,19}");
    private static final double HIGHEST_GAUGE_KPA = 2000;
    private static final double MOST_OFFSET_SHARE = 0.1;

    /** What it measures. */
    public enum Kind implements Said {
        TORQUE_WRENCH("N·m"),
        PRESSURE_GAUGE("kPa"),
        HOIST("mm");

        private final String unit;

        Kind(String unit) {
            this.unit = unit;
        }

        /** Unit of its values in the book. */
        public String unit() {
            return unit;
        }
    }

    /** A wrench or gauge. */
    public ShopTool(
            String id, Kind kind, String name, double lowest, double highest, double offset, LocalDate calibrationDue) {
        this(id, kind, name, lowest, highest, offset, calibrationDue, null);
    }

    public ShopTool {
        if (!MARK.matcher(id).matches()) {
            throw new Refused(new ToolSaid.UnfitMark(Quoted.of(id)));
        }
        if (name.isBlank() || name.length() > 80) {
            throw new Refused(new ToolSaid.UnfitName());
        }
        if ((kind == Kind.HOIST) != (hoist != null)) {
            throw new Refused(
                    kind == Kind.HOIST ? new ToolSaid.HoistWithoutRatings() : new ToolSaid.RatingsWithoutHoist());
        }
        if (kind == Kind.HOIST) {
            Range.check(ToolSaid.ToolNumber.RAISED_PADS, highest, 500, 3000, "mm");
            Range.check(ToolSaid.ToolNumber.LOWERED_PADS, lowest, 30, 500, "mm");
            Range.check(ToolSaid.ToolNumber.OFFSET, offset, 0, 0, "mm");
        } else if (kind == Kind.TORQUE_WRENCH) {
            var scale = new WrenchScale(lowest, highest);
            Range.check(
                    ToolSaid.ToolNumber.OFFSET,
                    offset,
                    -scale.highestNm() * MOST_OFFSET_SHARE,
                    scale.highestNm() * MOST_OFFSET_SHARE,
                    "N·m");
        } else {
            Range.check(ToolSaid.ToolNumber.TOP_OF_SCALE, highest, 1, HIGHEST_GAUGE_KPA, "kPa");
            Range.check(ToolSaid.ToolNumber.BOTTOM_OF_SCALE, lowest, 0, highest, "kPa");
            Range.check(
                    ToolSaid.ToolNumber.OFFSET,
                    offset,
                    -highest * MOST_OFFSET_SHARE,
                    highest * MOST_OFFSET_SHARE,
                    "kPa");
        }
    }

    /** Whether its calibration is due on a day. */
    public boolean due(LocalDate day) {
        return !day.isBefore(calibrationDue);
    }

    /** Its arms and ratings; empty when it is no hoist. */
    public Optional<Hoist> findHoist() {
        return Optional.ofNullable(hoist);
    }

    /** What is true when it shows a value. */
    public double corrected(double shown) {
        return shown - offset;
    }

    /** Whether a value lies on its scale. */
    public boolean reaches(double value) {
        return lowest <= value && value <= highest;
    }
}
