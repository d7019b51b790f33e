package cornerbook.core.brake.seizing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The chance that a pad seizes in its bracket: a Weibull hazard over the months since its guides were last cleaned and
 * lubricated, with salt, garage, distance and friction-brake share as covariates. Between visits nobody looks, so the month
 * of seizing is known only to lie in an interval; {@link WeibullRegression} takes that as it is. The priors hold the hazard
 * where a shop has seen little, and give way as pads are seen.
 *
 * <p>Months are those of the {@link SaltClock}. Assumes that exposure does not change between two services. That the pads of
 * a car hang together does not move the hazard over all cars, and its limits allow for it; the chance of a car's pads
 * together is {@link PadsOfACar}'s. The prior says: at the centre 4 % of pads have seized a year after service and 15 % after two, in keeping with
 * the yearly cleaning that makers ask for in salt regions; all of its figures are common practice, no source.
 */
public final class SeizingHazard {
    /** Months by which 63 % have seized, and the relative spread of that belief. */
    private static final NormalPrior LOG_LIFE_MONTHS = new NormalPrior(Math.log(60), 0.5);
    /** From no salt to salt all year: the life falls to 45 %. */
    private static final NormalPrior SALT = new NormalPrior(-0.8, 0.4);
    /** A warm garage dries the bracket and keeps the salt wet: either sign. */
    private static final NormalPrior GARAGE = new NormalPrior(0, 0.3);

    private static final NormalPrior DISTANCE = new NormalPrior(0, 0.2);
    /** Pads that work stay free. */
    private static final NormalPrior FRICTION = new NormalPrior(0.5, 0.4);
    /** Shape 2: the hazard grows in proportion to the time since service. */
    private static final NormalPrior LOG_SCALE = new NormalPrior(Math.log(0.5), 0.25);

    /** Fewer cars do not tell how their pads hang together. Common practice, no source. */
    private static final int FEWEST_CARS = 20;

    private static final List<NormalPrior> COEFFICIENTS = List.of(LOG_LIFE_MONTHS, SALT, GARAGE, DISTANCE, FRICTION);

    private static final WeibullRegression REGRESSION = new WeibullRegression(COEFFICIENTS, LOG_SCALE);
    /** What the priors say before any pad. */
    private static final WeibullFit USUAL = REGRESSION.fit(List.of(), List.of());

    private final WeibullFit fit;

    private SeizingHazard(WeibullFit fit) {
        this.fit = fit;
    }

    /** The hazard as the priors and these pads of one car have it; without pads, the priors'. */
    public static SeizingHazard learn(List<PadHistory> pads) {
        return learnFrom(List.of(pads));
    }

    /** The same of the pads of many cars, which hang together car by car. */
    public static SeizingHazard learnFrom(List<List<PadHistory>> cars) {
        return learnFrom(cars, REGRESSION);
    }

    /** The same about what other shops' cars taught in place of the priors; without pads, as they taught it. */
    public static SeizingHazard learnFrom(List<List<PadHistory>> cars, WeibullFit others) {
        var priors = new ArrayList<NormalPrior>();
        for (int j = 0; j < COEFFICIENTS.size(); j++) {
            priors.add(about(others.coefficients().get(j), others.standardError(j), COEFFICIENTS.get(j)));
        }
        return learnFrom(
                cars,
                new WeibullRegression(
                        priors, about(Math.log(others.scale()), others.standardErrorOfLogScale(), LOG_SCALE)));
    }

    /** A shop is taken to differ from others half as much as is believed of any: common practice, no source. */
    private static NormalPrior about(double mean, double error, NormalPrior usual) {
        return new NormalPrior(mean, Math.min(usual.sd(), Math.hypot(error, usual.sd() / 2)));
    }

    private static SeizingHazard learnFrom(List<List<PadHistory>> cars, WeibullRegression regression) {
        var pads = cars.stream().flatMap(List::stream).toList();
        var groups = new ArrayList<int[]>();
        int row = 0;
        for (var car : cars) {
            groups.add(IntStream.range(row, row + car.size()).toArray());
            row += car.size();
        }
        return new SeizingHazard(regression.fit(
                pads.stream().map(PadHistory::seized).toList(),
                pads.stream().map(pad -> pad.exposure().covariates()).toList(),
                cars.size() < FEWEST_CARS ? List.of() : groups));
    }

    /** The hazard of a fit that was kept. */
    static SeizingHazard of(WeibullFit fit) {
        return new SeizingHazard(fit);
    }

    /** Coefficients, scale and their covariance. */
    public WeibullFit fit() {
        return fit;
    }

    /**
     * The chance that a pad that is free now seizes before the next visit, with its 95 % limits.
     *
     * @param monthsSinceService of its guides, 0 or more
     * @param monthsToNextVisit above 0
     */
    public Chance chance(SeizingExposure exposure, double monthsSinceService, double monthsToNextVisit) {
        return fit.chance(monthsSinceService, monthsSinceService + monthsToNextVisit, exposure.covariates());
    }

    /**
     * How much of the logarithm of the hazard comes from the pads that it was learned from, 0 to 1, the rest from the priors.
     *
     * @param months since the service until the day that is asked for, above 0
     */
    public double shareOfPads(SeizingExposure exposure, double months) {
        return fit.shareOfTimes(USUAL, months, exposure.covariates());
    }

    /**
     * Months from one service to the next within which the chance that at least one of {@code pads} pads of a car seizes stays at
     * or below {@code risk}.
     *
     * @param risk above 0 and below 1
     * @param pads that must stay free, 1 to 32
     * @param car what its pads of earlier services tell of it
     */
    public double serviceIntervalMonths(SeizingExposure exposure, double risk, int pads, PadsOfACar car) {
        if (!(pads >= 1 && pads <= 32)) {
            throw new IllegalArgumentException("%s pads, expected 1 to 32".formatted(pads));
        }
        if (!(risk > 0 && risk < 1)) {
            throw new IllegalArgumentException("risk is %s, expected above 0 and below 1".formatted(risk));
        }
        return fit.timeUntil(car.chanceOfOne(risk, pads), 0, exposure.covariates());
    }
}
