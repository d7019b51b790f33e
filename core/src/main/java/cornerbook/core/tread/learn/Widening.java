package cornerbook.core.tread.learn;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.tread.Drivers;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * By how much a book's bands are too narrow. The readings of each set's latest visit are forecast from those before it; nine in
 * ten should lie within {@link #BAND_Z} standard deviations. Where for sure fewer do, the cars do something that the model does
 * not know, and every standard deviation is multiplied by
 *
 * <pre>  S = q / z,   q the 0.90 quantile of how many standard deviations the readings are off, z = 1.645         (1)</pre>
 *
 * so that nine in ten would have lain within. One factor on all standard deviations of the model leaves its means as they are. It is
 * what physicists do with measurements that scatter by more than their errors (Birge 1932, Physical Review 40, 207–227; the scale
 * factor of the Particle Data Group), by the share that is promised and not by χ², for a few readings far off.
 */
final class Widening {
    /** Half the width of a band that holds nine in ten, in standard deviations. */
    private static final double BAND_Z = 1.6448536269514722;

    private static final double PROMISED = 0.90;
    /** What so many standard errors lies below is no accident. */
    private static final double SURELY = 2;
    /** Of fewer cars it cannot be told. Common practice, no source. */
    private static final int LEAST_CARS = 20;
    /** A book that is off by more is of something else than wear: its bands would say nothing. */
    private static final double MOST = 3;

    private Widening() {}

    /**
     * The factor of cars that are alike.
     *
     * @param otherwise of fewer cars than it can be told of
     * @return 1 where their readings do not lie outside for sure, else above 1 and at most 3
     */
    static double of(List<WearHistory> alike, WearParameters learned, double otherwise) {
        var model = new WearModel(learned);
        var offByCar = new TreeMap<String, List<Double>>();
        for (var history : alike) {
            var off = off(history, model, learned.readingErrorMm());
            if (!off.isEmpty()) {
                offByCar.computeIfAbsent(history.car(), car -> new ArrayList<>())
                        .addAll(off);
            }
        }
        if (offByCar.size() < LEAST_CARS) {
            return otherwise;
        }
        return tooFewInside(offByCar) ? factor(offByCar) : 1;
    }

    /** How many standard deviations each reading of the latest visit is off, whichever way; empty when no visit is before it. */
    private static List<Double> off(WearHistory history, WearModel model, double readingErrorMm) {
        int last =
                history.readings().stream().mapToInt(TreadReading::visit).max().orElseThrow();
        var before =
                history.readings().stream().filter(read -> read.visit() < last).toList();
        if (before.isEmpty()) {
            return List.of();
        }
        var posterior = model.fitDoubting(history.newDepths(), before, Drivers.ONE);
        return history.readings().stream()
                .filter(read -> read.visit() == last)
                .map(read -> {
                    Estimate depth = posterior
                            .depth(read.groove(), read.tyre(), read.run())
                            .left();
                    return Math.abs(read.depthMm() - depth.mean()) / Math.hypot(depth.sd(), readingErrorMm);
                })
                .toList();
    }

    /** Readings of one car are alike, so it is the cars that the standard error of a ratio counts (Cochran 1977, section 2.11). */
    private static boolean tooFewInside(Map<String, List<Double>> offByCar) {
        double inside = 0;
        double readings = 0;
        for (var off : offByCar.values()) {
            inside += inside(off);
            readings += off.size();
        }
        double share = inside / readings;
        double squares = 0;
        for (var off : offByCar.values()) {
            double residual = inside(off) - share * off.size();
            squares += residual * residual;
        }
        int cars = offByCar.size();
        double standardError = Math.sqrt(squares * cars / (cars - 1)) / readings;
        return share + SURELY * standardError < PROMISED;
    }

    private static long inside(List<Double> off) {
        return off.stream().filter(deviations -> deviations <= BAND_Z).count();
    }

    /** Equation (1). */
    private static double factor(Map<String, List<Double>> offByCar) {
        var sorted = offByCar.values().stream()
                .flatMap(List::stream)
                .sorted(Comparator.naturalOrder())
                .toList();
        return Math.min(MOST, sorted.get((int) Math.ceil(PROMISED * sorted.size()) - 1) / BAND_Z);
    }
}
