package cornerbook.core.battery;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Straight line through the health of one battery over its visits, by ordinary least squares, and the day on which it falls through the
 * least share. Health does not fall straight to its end, so the day is a reminder, not a promise. It is only given when the fall
 * is told apart from none by two standard errors.
 *
 * @param sharePerYear slope; negative when it falls
 * @param errorPerYear standard error of the slope
 * @param share of the line on the day of the last point
 * @param last day of the last point
 * @param meanBeforeLastYears how far the mean day of the points lies before it
 * @param meanError standard error of the line on that mean day
 * @param reaches day on which the line is at the least share; null when it does not fall, or is not told apart from flat
 */
public record HealthTrend(
        double sharePerYear,
        double errorPerYear,
        double share,
        LocalDate last,
        double meanBeforeLastYears,
        double meanError,
        @Nullable LocalDate reaches) {
    private static final double DAYS_PER_YEAR = 365.25;
    private static final int FEWEST = 3;
    /** Points nearer together than this tell more of the tester than of the battery. Common practice, no source. */
    private static final double LEAST_SPAN_DAYS = 90;

    private static final double STANDARD_ERRORS = 2;

    /** Measured health on a day, as a share of the rating. */
    public record Point(LocalDate day, double share) {}

    /**
     * The line.
     *
     * @param points in the order of their days
     * @param leastShare the share looked for, 0 to 1
     * @return empty with fewer than three points or with all of them inside three months
     */
    public static Optional<HealthTrend> of(List<Point> points, double leastShare) {
        if (points.size() < FEWEST) {
            return Optional.empty();
        }
        var first = points.getFirst().day();
        double spanDays = ChronoUnit.DAYS.between(first, points.getLast().day());
        if (spanDays < LEAST_SPAN_DAYS) {
            return Optional.empty();
        }
        int n = points.size();
        double meanX = points.stream().mapToDouble(point -> years(first, point)).sum() / n;
        double meanY = points.stream().mapToDouble(Point::share).sum() / n;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (var point : points) {
            double x = years(first, point) - meanX;
            double y = point.share() - meanY;
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
        }
        double slope = sxy / sxx;
        double variance = Math.max(0, syy - slope * sxy) / (n - 2);
        double error = Math.sqrt(variance / sxx);
        double share = meanY + slope * (years(first, points.getLast()) - meanX);
        boolean falls = slope + STANDARD_ERRORS * error < 0;
        var reaches = falls
                ? points.getLast().day().plusDays(Math.max(0, (long)
                        Math.floor((share - leastShare) / -slope * DAYS_PER_YEAR)))
                : null;
        return Optional.of(new HealthTrend(
                slope,
                error,
                share,
                points.getLast().day(),
                years(first, points.getLast()) - meanX,
                Math.sqrt(variance / n),
                reaches));
    }

    /** Share of the line on a day. */
    public double shareOn(LocalDate day) {
        return share + sharePerYear * years(last, day);
    }

    /** Half the width of the band about the line on a day: two standard errors of the line. */
    public double bandOn(LocalDate day) {
        return STANDARD_ERRORS * Math.hypot(meanError, errorPerYear * (years(last, day) + meanBeforeLastYears));
    }

    private static double years(LocalDate from, LocalDate day) {
        return ChronoUnit.DAYS.between(from, day) / DAYS_PER_YEAR;
    }

    private static double years(LocalDate first, Point point) {
        return years(first, point.day());
    }
}
