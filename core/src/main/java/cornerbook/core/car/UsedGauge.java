package cornerbook.core.car;

import cornerbook.core.tool.ShopTool;
import org.jspecify.annotations.Nullable;

/**
 * The pressure gauge of one visit, if it is known: takes from its readings what it shows too much. A reading that no gauge
 * is known for counts as it stands.
 */
public record UsedGauge(@Nullable ShopTool gauge) {
    public static UsedGauge of(Visit visit) {
        return new UsedGauge(visit.findTool(ShopTool.Kind.PRESSURE_GAUGE).orElse(null));
    }

    /** The pressure that the reading stands for, kPa. */
    public double kpa(Reading reading) {
        return gauge == null ? reading.value() : gauge.corrected(reading.value());
    }

    /** How it was come by. */
    public String how(Reading reading) {
        var written = "reading, written \"" + reading.asWritten() + "\"";
        return gauge == null || gauge.offset() == 0
                ? written
                : "%s, less the %s kPa that gauge %s shows too much"
                        .formatted(written, "%.1f".formatted(gauge.offset()).replace('-', '−'), gauge.id());
    }
}
