package cornerbook.app.unit;

/** How a value of the book is shown to a person. */
@FunctionalInterface
public interface Shown {
    /** Metric with US customary behind it, as "133 N·m (98 lbf·ft)". */
    Shown BOTH = (value, bookUnit) -> {
        var metric = UnitSystem.METRIC.show(value, bookUnit);
        return UnitSystem.US.unitOf(bookUnit).equals(bookUnit)
                ? metric
                : "%s (%s)".formatted(metric, UnitSystem.US.show(value, bookUnit));
    };

    /**
     * The value with its unit.
     *
     * @param bookUnit the unit of {@code value}, as the book keeps it: "kPa"
     */
    String show(double value, String bookUnit);
}
