package cornerbook.core.tread;

/** Relative standard errors of learned {@link WearParameters}: 0.1 is ten percent. */
public record WearUncertainty(
        double readingSd,
        double newDepthSd,
        double frontRate,
        double rearRate,
        double vehicleSpread,
        double cornerSpread) {}
