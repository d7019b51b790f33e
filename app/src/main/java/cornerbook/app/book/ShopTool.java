package cornerbook.app.book;

import cornerbook.core.fastener.WrenchScale;
import cornerbook.core.quantity.Range;
import java.time.LocalDate;

/**
 * A torque wrench or pressure gauge of the shop.
 *
 * @param id as it is marked: "W-2"
 * @param lowest least value of its scale, in the unit of its kind
 * @param highest most value of its scale
 * @param offset what it shows too much against a master, in the same unit
 * @param calibrationDue the day from which it is not to be trusted
 */
public record ShopTool(
        String id, Kind kind, String name, double lowest, double highest, double offset, LocalDate calibrationDue) {
    private static final double HIGHEST_GAUGE_KPA = 2000;
    private static final double MOST_OFFSET_SHARE = 0.1;

    /** What it measures. */
    public enum Kind {
        TORQUE_WRENCH("N·m", "Torque wrench"),
        PRESSURE_GAUGE("kPa", "Pressure gauge");

        private final String unit;
        private final String title;

        Kind(String unit, String title) {
            this.unit = unit;
            this.title = title;
        }

        /** Unit of its values in the book. */
        public String unit() {
            return unit;
        }

        /** For people. */
        public String title() {
            return title;
        }
    }

    public ShopTool {
        if (!id.matches("[\\p{L}\\d][\\p{L}\\d ._-]{0,19}")) {
            throw new IllegalArgumentException(
                    "mark of the tool is \"%s\", expected up to 20 letters, digits, points and dashes".formatted(id));
        }
        if (name.isBlank() || name.length() > 80) {
            throw new IllegalArgumentException("name of the tool is missing or longer than 80 letters");
        }
        if (kind == Kind.TORQUE_WRENCH) {
            var scale = new WrenchScale(lowest, highest);
            Range.check(
                    "offset of the tool",
                    offset,
                    -scale.highestNm() * MOST_OFFSET_SHARE,
                    scale.highestNm() * MOST_OFFSET_SHARE,
                    "N·m");
        } else {
            Range.check("top of the scale", highest, 1, HIGHEST_GAUGE_KPA, "kPa");
            Range.check("bottom of the scale", lowest, 0, highest, "kPa");
            Range.check("offset of the tool", offset, -highest * MOST_OFFSET_SHARE, highest * MOST_OFFSET_SHARE, "kPa");
        }
    }

    /** Whether its calibration is due on a day. */
    public boolean due(LocalDate day) {
        return !day.isBefore(calibrationDue);
    }
}
