package cornerbook.core.changeover;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The days of one autumn or one spring for changing over. A car changed on day D runs on the wrong tyres on each cold day, with a
 * mean below 7 °C, that it spends on summer tyres and on each warm day that it spends on winter tyres:
 *
 * <pre>  cost(D) = Σ over days on summer tyres of 3 · P(cold) + Σ over days on winter tyres of P(warm)                (1)</pre>
 *
 * least where P(cold) passes 1/4, for one cold day on summer tyres counts as three warm ones on winter tyres. As the cost falls to
 * its least and then rises, the days that a shop does best to work are those of least cost, one after the other.
 *
 * @param toWinter autumn, to winter tyres; else spring, to summer tyres
 * @param from first day on which a cold day is as likely as 1 in 10 (autumn) or no longer likelier than not (spring)
 * @param until last day before it is likelier than not (autumn) or less likely than 1 in 10 (spring)
 * @param best day of least cost
 * @param lawDay last day on which the law lets it be done in autumn, first in spring; null without a law
 * @param byLaw whether the law, and not the climate, sets an end of the days
 * @param weeks what a shop does in each week; empty where its work is not known
 */
public record ChangeOverSeason(
        boolean toWinter,
        LocalDate from,
        LocalDate until,
        LocalDate best,
        @Nullable LocalDate lawDay,
        boolean byLaw,
        List<Week> weeks) {
    private static final double COLD_WEIGHS = 3;
    private static final double SELDOM = 0.1;
    private static final double EVEN = 0.5;
    private static final int TWO_WEEKS = 13;

    public ChangeOverSeason {
        weeks = List.copyOf(weeks);
    }

    /**
     * A week of a shop.
     *
     * @param first working day of it that is used
     * @param cars how many are changed over
     */
    public record Week(LocalDate first, int cars) {}

    /**
     * Of a season.
     *
     * @param first day that is looked at, of at least as many as the season has
     * @param last day that is looked at
     * @param cold chance that a day is cold, falling or rising from first to last
     * @param notBefore today; a day that is over is none to plan
     * @return null where the chance does not pass through 1 in 10 and 1 in 2 between the first and the last day
     */
    static @Nullable ChangeOverSeason find(
            boolean toWinter,
            LocalDate first,
            LocalDate last,
            ToDoubleFunction<LocalDate> cold,
            @Nullable LocalDate lawDay,
            @Nullable ShopWork work,
            LocalDate notBefore) {
        var begins = passes(first, last, cold, toWinter ? SELDOM : EVEN, toWinter);
        var ends = passes(first, last, cold, toWinter ? EVEN : SELDOM, toWinter);
        if (begins == null || ends == null) {
            return null;
        }
        var from = begins;
        var until = ends.minusDays(1);
        boolean byLaw = lawDay != null && (toWinter ? until.isAfter(lawDay) : from.isBefore(lawDay));
        if (byLaw && lawDay != null) {
            from = toWinter ? (from.isAfter(lawDay.minusDays(TWO_WEEKS)) ? lawDay.minusDays(TWO_WEEKS) : from) : lawDay;
            until = toWinter
                    ? lawDay
                    : (until.isBefore(lawDay.plusDays(TWO_WEEKS)) ? lawDay.plusDays(TWO_WEEKS) : until);
        }
        var earliest = later(first, !toWinter && lawDay != null ? lawDay : first);
        var latest = toWinter && lawDay != null && lawDay.isBefore(last) ? lawDay : last;
        var cost = costs(toWinter, first, last, cold);
        var best = earliest.datesUntil(latest.plusDays(1))
                .min(Comparator.comparingDouble(cost))
                .orElseThrow();
        return new ChangeOverSeason(
                toWinter,
                from,
                until,
                best,
                lawDay,
                byLaw,
                work == null ? List.of() : weeks(later(earliest, notBefore), latest, cost, work));
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    /** The first day on which the chance is at least so much where it rises, at most where it falls; null when none is. */
    private static @Nullable LocalDate passes(
            LocalDate first, LocalDate last, ToDoubleFunction<LocalDate> cold, double chance, boolean rises) {
        for (var day = first.plusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            double before = cold.applyAsDouble(day.minusDays(1));
            double now = cold.applyAsDouble(day);
            if (rises ? before < chance && now >= chance : before > chance && now <= chance) {
                return day;
            }
        }
        return null;
    }

    /** Equation (1) by the day of the change, apart from what is the same for all of them. */
    private static ToDoubleFunction<LocalDate> costs(
            boolean toWinter, LocalDate first, LocalDate last, ToDoubleFunction<LocalDate> cold) {
        var costs = new HashMap<LocalDate, Double>();
        double cost = 0;
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            costs.put(day, cost);
            double chance = cold.applyAsDouble(day);
            double onSummer = COLD_WEIGHS * chance;
            double onWinter = 1 - chance;
            cost += toWinter ? onSummer - onWinter : onWinter - onSummer;
        }
        return day -> Objects.requireNonNull(costs.get(day));
    }

    private static List<Week> weeks(
            LocalDate earliest, LocalDate latest, ToDoubleFunction<LocalDate> cost, ShopWork work) {
        if (earliest.isAfter(latest)) {
            return List.of();
        }
        var days = earliest.datesUntil(latest.plusDays(1))
                .filter(day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue())
                .sorted(Comparator.comparingDouble(cost))
                .limit(work.days())
                .sorted()
                .toList();
        var weeks = new ArrayList<Week>();
        int left = work.cars();
        for (var day : days) {
            int cars = Math.min(left, work.carsPerDay());
            left -= cars;
            var latestWeek = weeks.isEmpty() ? null : weeks.getLast();
            if (latestWeek != null && monday(latestWeek.first()).equals(monday(day))) {
                weeks.set(weeks.size() - 1, new Week(latestWeek.first(), latestWeek.cars() + cars));
            } else {
                weeks.add(new Week(day, cars));
            }
        }
        return weeks;
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
