package cornerbook.words;

/** Metric with US customary behind it, where the two differ. */
final class BothUnits implements Shown {
    @Override
    public String show(double value, String bookUnit) {
        var metric = UnitSystem.METRIC.show(value, bookUnit);
        return UnitSystem.US.unitOf(bookUnit).equals(bookUnit)
                ? metric
                : "%s (%s)".formatted(metric, UnitSystem.US.show(value, bookUnit));
    }

    @Override
    public double in(double value, String bookUnit) {
        return UnitSystem.METRIC.in(value, bookUnit);
    }

    @Override
    public String unitOf(String bookUnit) {
        return UnitSystem.METRIC.unitOf(bookUnit);
    }
}
