package cornerbook.core.car;

import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One time that the car came in.
 *
 * @param arrivedOn wheel tag at each corner on arrival
 * @param leftOn wheel tag at each corner on leaving
 * @param card what was written down beside the readings
 * @param tightened where every fastener of the wheel that it left on was ticked as tightened; no torque is known by that
 */
public record Visit(
        String id,
        LocalDate date,
        double odometerKm,
        Map<Corner, String> arrivedOn,
        Map<Corner, String> leftOn,
        List<Reading> readings,
        JobCard card,
        Set<Corner> tightened) {
    /** No odometer reads more. Common practice, no source. */
    public static final double HIGHEST_ODOMETER_KM = 3_000_000;

    /** A visit at which nothing was written down and no tick is known. */
    public Visit(
            String id,
            LocalDate date,
            double odometerKm,
            Map<Corner, String> arrivedOn,
            Map<Corner, String> leftOn,
            List<Reading> readings) {
        this(id, date, odometerKm, arrivedOn, leftOn, readings, JobCard.BLANK, Set.of());
    }

    public Visit {
        Range.check(CarSaid.CarNumber.ODOMETER, odometerKm, 0, HIGHEST_ODOMETER_KM, "km");
        arrivedOn = cornerByCorner(arrivedOn);
        leftOn = cornerByCorner(leftOn);
        readings = List.copyOf(readings);
        tightened = Collections.unmodifiableSet(new TreeSet<>(tightened));
    }

    /** A copy that is walked in the order of the corners, whatever order it came in. */
    private static Map<Corner, String> cornerByCorner(Map<Corner, String> wheelAt) {
        var ordered = new EnumMap<Corner, String>(Corner.class);
        wheelAt.forEach((corner, tag) -> ordered.put(corner, Objects.requireNonNull(tag)));
        return Collections.unmodifiableMap(ordered);
    }

    /** The same visit with other readings. */
    public Visit withReadings(List<Reading> others) {
        return with(date, odometerKm, arrivedOn, leftOn, others, card, tightened);
    }

    /** The same visit with other wheels ticked as tightened. */
    public Visit withTightened(Set<Corner> corners) {
        return with(date, odometerKm, arrivedOn, leftOn, readings, card, corners);
    }

    /** The same visit on another day, or with another odometer. */
    public Visit withOdometer(LocalDate day, double km) {
        return with(day, km, arrivedOn, leftOn, readings, card, tightened);
    }

    /** The same visit with other wheels on arrival. */
    public Visit withArrivedOn(Map<Corner, String> cameOn) {
        return with(date, odometerKm, cameOn, leftOn, readings, card, tightened);
    }

    /** The same visit with other wheels on leaving; a wheel that is new at its corner is not tightened there. */
    public Visit withLeftOn(Map<Corner, String> wheelAt) {
        var stillTight = tightened.stream()
                .filter(corner -> Objects.equals(wheelAt.get(corner), leftOn.get(corner)))
                .collect(Collectors.toSet());
        return with(date, odometerKm, arrivedOn, wheelAt, readings, card, stillTight);
    }

    /** The same visit with other things written down. */
    public Visit withCard(JobCard other) {
        return with(date, odometerKm, arrivedOn, leftOn, readings, other, tightened);
    }

    private Visit with(
            LocalDate day,
            double km,
            Map<Corner, String> cameOn,
            Map<Corner, String> wheelAt,
            List<Reading> others,
            JobCard written,
            Set<Corner> corners) {
        return new Visit(id, day, km, cameOn, wheelAt, others, written, corners);
    }
}
