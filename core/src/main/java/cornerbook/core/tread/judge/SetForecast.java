package cornerbook.core.tread.judge;

import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How the tread of one wheel set will go on; its parts are the fields of a forecast in the JSON of an assessment.
 *
 * @param role the set that goes on, or the one that comes off and waits for its next season
 * @param from first day of the time looked at: today, or the day that the stored set goes on again
 * @param until the day that it has to hold to
 * @param limitMm the season's minimum that it is judged by
 * @param legalLimitMm the legal minimum
 * @param probabilityHolds that every groove of every tyre is at or above the limit on {@code until}
 * @param horizon day on which that probability falls through the confidence, the time in the store not counted as run; null
 *     when it is beyond four years on the car
 * @param kmPerDay mean distance per day in this season kind
 * @param kmPerDaySd its standard deviation
 * @param distanceBasis where the distance comes from
 * @param wearStart wear rates that the model started from
 * @param wearBasis where those come from
 * @param contrasts left against right, by axle
 */
public record SetForecast(
        WheelSet set,
        SetSpan.Role role,
        LocalDate from,
        LocalDate until,
        double limitMm,
        double legalLimitMm,
        double probabilityHolds,
        @Nullable LocalDate horizon,
        double confidence,
        double kmPerDay,
        double kmPerDaySd,
        Said distanceBasis,
        Said wearStart,
        Said wearBasis,
        List<TyreForecast> tyres,
        List<CornerContrast> contrasts) {
    public SetForecast {
        tyres = List.copyOf(tyres);
        contrasts = List.copyOf(contrasts);
    }

    /** Whether a groove was read at two distances or more, so that its wear is this car's own and not what is usual. */
    public boolean wearWasSeen() {
        return tyres.stream()
                .flatMap(tyre -> tyre.grooves().stream())
                .anyMatch(groove -> groove.readings().stream()
                                .mapToDouble(DepthReading::distanceKm)
                                .distinct()
                                .count()
                        > 1);
    }

    /** The shallowest of what was last measured in each groove, mm; infinite when none was. */
    public double lowestReadingMm() {
        return tyres.stream()
                .flatMap(tyre -> tyre.grooves().stream())
                .filter(groove -> !groove.readings().isEmpty())
                .mapToDouble(groove -> groove.readings().getLast().depthMm())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** The axles on which a groove was last measured below the limit, or is reckoned to be by now. */
    Set<Axle> axlesBelow() {
        return tyres.stream()
                .filter(tyre -> tyre.grooves().stream().anyMatch(groove -> groove.depthMm() < limitMm))
                .map(tyre -> tyre.corner().axle())
                .collect(Collectors.toSet());
    }

    /** One tyre at the corner where it will run; grooves in the order of {@link Spot}, those never read left out. */
    public record TyreForecast(Wheel wheel, Corner corner, List<GrooveForecast> grooves) {
        public TyreForecast {
            grooves = List.copyOf(grooves);
        }
    }

    /**
     * One groove. Depths are of what is left: 0 where a tread would be worn out, and not below.
     *
     * @param ownShareOfRate how much of the rate comes from this set's readings, 0 to 1; the rest from what is usual
     * @param readings what was measured, at which distance the tyre had run, earliest first
     * @param band depth to come, from the distance run now onwards
     */
    public record GrooveForecast(
            Spot groove,
            double depthMm,
            double depthSdMm,
            double rateMmPer1000Km,
            double rateSdMmPer1000Km,
            double ownShareOfRate,
            List<DepthReading> readings,
            List<BandPoint> band) {
        public GrooveForecast {
            readings = List.copyOf(readings);
            band = List.copyOf(band);
        }
    }

    /** A depth that was measured when the tyre had run {@code distanceKm} since it was new to the book. */
    public record DepthReading(double distanceKm, LocalDate date, double depthMm) {}

    /** Expected depth at a distance, with the band that holds it at 90 %. */
    public record BandPoint(double distanceKm, double meanMm, double lowMm, double highMm) {}
}
