package cornerbook.words;

/** How a value of the book is shown to a person. */
public interface Shown {
    /** Metric with US customary behind it, as "133 N·m (98 lbf·ft)". */
    Shown BOTH = new BothUnits();

    /**
     * The value with its unit.
     *
     * @param bookUnit the unit of {@code value}, as the book keeps it: "kPa"
     */
    String show(double value, String bookUnit);

    /** The value in the unit that comes first, as for a scale. */
    double in(double value, String bookUnit);

    /** The unit that comes first. */
    String unitOf(String bookUnit);
}
