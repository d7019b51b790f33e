package cornerbook.app.calibration;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.judge.CornerContrast;
import java.util.List;
import java.util.stream.Stream;

/** How often a cause of uneven wear is named on simulated cars that have none. */
final class FalseAlarms {
    /** How far a sound tyre's grooves wear apart, of what they wear. Common practice, no source. */
    static final double GROOVE_SPREAD = 0.04;

    /** How far a sound tyre's moulded depth lies off, of which half is each groove's own. Common practice, no source. */
    private static final double NEW_DEPTH_SD_MM = 0.2;

    private FalseAlarms() {}

    /** Share of cars on which at least one cause is named. */
    static double share(int cars, long seed) {
        var parameters = WearParameters.defaults(DriveLayout.ALL);
        var sound = parameters
                .with(WearParameter.GROOVE_SPREAD, GROOVE_SPREAD)
                .with(WearParameter.NEW_DEPTH_SD, NEW_DEPTH_SD_MM);
        long alarmed = SimulatedFleet.make(cars, seed, sound).stream()
                .filter(car -> alarms(car, parameters))
                .count();
        return (double) alarmed / cars;
    }

    private static boolean alarms(SimulatedFleet.Car car, WearParameters parameters) {
        List<NewDepth> newDepths = car.before().newDepths();
        var readings = Stream.concat(car.before().readings().stream(), car.last().stream())
                .toList();
        var posterior = new WearModel(parameters).fit(newDepths, readings);
        for (int tyre = 0; tyre < newDepths.size(); tyre++) {
            int number = tyre;
            var run = car.last().stream()
                    .filter(reading -> reading.tyre() == number)
                    .map(TreadReading::run)
                    .findFirst()
                    .orElseThrow();
            var inner = posterior.depth(Spot.INNER, tyre, run);
            var centre = posterior.depth(Spot.CENTRE, tyre, run);
            var outer = posterior.depth(Spot.OUTER, tyre, run);
            double wornMm = newDepths.get(tyre).depthMm() - (inner.mean() + centre.mean() + outer.mean()) / 3;
            if (TreadPattern.name(inner, centre, outer, Math.max(0, wornMm)).isPresent()) {
                return true;
            }
        }
        return CornerContrast.of(posterior, Corner.LF, Corner.RF).told()
                || CornerContrast.of(posterior, Corner.LR, Corner.RR).told();
    }
}
