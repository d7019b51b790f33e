package cornerbook.core.wear;

/** Mean and standard deviation of something that is not known exactly; the unit is that of the thing. */
public record Estimate(double mean, double sd) {}
