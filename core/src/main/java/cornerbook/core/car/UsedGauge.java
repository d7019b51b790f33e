package cornerbook.core.car;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import org.jspecify.annotations.Nullable;

/**
 * The pressure gauge of one visit, if it is known: takes from its readings what it shows too much. A reading that no gauge
 * is known for counts as it stands.
 */
public record UsedGauge(@Nullable ShopTool gauge) {
    public static UsedGauge of(Visit visit) {
        return new UsedGauge(visit.card().findTool(ShopTool.Kind.PRESSURE_GAUGE).orElse(null));
    }

    /** The pressure that the reading stands for, kPa. */
    public double kpa(Reading reading) {
        return gauge == null ? reading.value() : gauge.corrected(reading.value());
    }

    /** How it was come by. */
    public Said how(Reading reading) {
        return gauge == null || gauge.offset() == 0
                ? new CarSaid.HowRead(reading.asWritten())
                : new CarSaid.HowReadByGauge(reading.asWritten(), new Amount(gauge.offset(), "kPa", 1), gauge.id());
    }
}
