package cornerbook.core.changeover;

import cornerbook.core.changeover.ChangeOverSaid.Caution;
import cornerbook.core.changeover.ChangeOverSaid.Computed;
import cornerbook.core.changeover.ChangeOverSaid.Input;
import cornerbook.core.changeover.ChangeOverSaid.Origin;
import cornerbook.core.changeover.ChangeOverSaid.Way;
import cornerbook.core.numeric.NormalDistribution;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.time.Month;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The days of the coming autumn and spring on which wheels are changed over with the least risk. The mean temperature of a day is
 * normal about that of {@link DailyNormals} with the same spread on each day; a day is cold when its mean is below 7 °C (common
 * practice, no source).
 *
 * @param autumn to winter tyres; null where the place has no such season
 * @param spring to summer tyres; null where the place has no such season
 * @param course the chance of a cold day over the year that holds both, every fifth day
 */
public record ChangeOverDays(
        @Nullable ChangeOverSeason autumn,
        @Nullable ChangeOverSeason spring,
        List<Point> course,
        Explanation explanation)
        implements Explained {
    /** Below this mean of the day winter tyres are the right ones: common practice, no source. */
    public static final double COLD_C = 7;
    /** How the mean of a day varies about its normal: one standard deviation, common practice, no source. */
    public static final double USUAL_SPREAD_C = 4.5;

    private static final int COURSE_DAYS = 5;
    private static final double LEAST_SPREAD_C = 0.5;
    private static final double MOST_SPREAD_C = 15;
    private static final double PERCENT = 100;

    public ChangeOverDays {
        course = List.copyOf(course);
    }

    /** The chance of a cold day. */
    public record Point(LocalDate day, double chance) {}

    /**
     * Of a place.
     *
     * @param spreadC standard deviation of a day's mean about its normal, 0.5 to 15 °C
     * @param law null where none asks for winter tyres on any road
     * @param work null where a shop's is not known
     */
    public static ChangeOverDays of(
            DailyNormals normals, double spreadC, @Nullable WinterLaw law, @Nullable ShopWork work, LocalDate today) {
        Range.check(Input.SPREAD, spreadC, LEAST_SPREAD_C, MOST_SPREAD_C, "");
        ToDoubleFunction<LocalDate> cold =
                day -> NormalDistribution.cumulative((COLD_C - normals.meanC(day)) / spreadC);
        int year = today.getYear();
        var autumn = autumn(year, cold, law, work, today);
        if (autumn != null && isOver(autumn, today)) {
            autumn = autumn(year + 1, cold, law, work, today);
        }
        var spring = spring(year, cold, law, work, today);
        if (spring != null && isOver(spring, today)) {
            spring = spring(year + 1, cold, law, work, today);
        }
        boolean springFirst = autumn != null
                && spring != null
                && autumn.from().getYear() == spring.from().getYear();
        int autumnYear = autumn == null ? year : autumn.from().getYear();
        var begins = LocalDate.of(autumnYear, springFirst ? Month.JANUARY : Month.JULY, 1);
        var course = begins.datesUntil(begins.plusYears(1).plusDays(1), Period.ofDays(COURSE_DAYS))
                .map(day -> new Point(day, cold.applyAsDouble(day)))
                .toList();
        return new ChangeOverDays(
                autumn, spring, course, new Explanation(cautions(law), steps(autumn, spring, normals, spreadC)));
    }

    private static @Nullable ChangeOverSeason autumn(
            int year,
            ToDoubleFunction<LocalDate> cold,
            @Nullable WinterLaw law,
            @Nullable ShopWork work,
            LocalDate today) {
        return ChangeOverSeason.find(
                true,
                LocalDate.of(year, Month.AUGUST, 1),
                LocalDate.of(year, Month.DECEMBER, 31),
                cold,
                law == null ? null : law.from().atYear(year).minusDays(1),
                work,
                today);
    }

    private static @Nullable ChangeOverSeason spring(
            int year,
            ToDoubleFunction<LocalDate> cold,
            @Nullable WinterLaw law,
            @Nullable ShopWork work,
            LocalDate today) {
        return ChangeOverSeason.find(
                false,
                LocalDate.of(year, Month.FEBRUARY, 1),
                LocalDate.of(year, Month.JUNE, 30),
                cold,
                law == null ? null : law.until().atYear(year).plusDays(1),
                work,
                today);
    }

    /** Whether no day of it is left, nor one before the law binds. */
    private static boolean isOver(ChangeOverSeason season, LocalDate today) {
        var lawDay = season.lawDay();
        return season.until().isBefore(today) && (!season.toWinter() || lawDay == null || !lawDay.isAfter(today));
    }

    private static List<Said> cautions(@Nullable WinterLaw law) {
        var cautions = new ArrayList<Said>();
        if (law != null) {
            cautions.add(Caution.LAW_FIRST);
        }
        cautions.addAll(List.of(Caution.FORECAST_FIRST, Caution.SPREAD_IS_USUAL));
        return cautions;
    }

    private static List<Step> steps(
            @Nullable ChangeOverSeason autumn,
            @Nullable ChangeOverSeason spring,
            DailyNormals normals,
            double spreadC) {
        var steps = new ArrayList<Step>();
        if (autumn != null) {
            add(steps, Computed.NORMAL_IN_AUTUMN, Computed.CHANCE_IN_AUTUMN, normals.meanC(autumn.best()), spreadC);
        }
        if (spring != null) {
            add(steps, Computed.NORMAL_IN_SPRING, Computed.CHANCE_IN_SPRING, normals.meanC(spring.best()), spreadC);
        }
        return steps;
    }

    private static void add(List<Step> steps, Computed normal, Computed chance, double meanC, double spreadC) {
        steps.add(new Step(normal, Way.HARMONICS, meanC, "°C", Origin.EPSTEIN));
        steps.add(new Step(
                chance,
                Formula.of(
                        "100 × Φ(({} − {}) / {})",
                        Amount.exact(COLD_C, ""),
                        Amount.significant(meanC, "", 4),
                        Amount.exact(spreadC, "")),
                PERCENT * NormalDistribution.cumulative((COLD_C - meanC) / spreadC),
                "%",
                Origin.SEVEN_DEGREES));
    }
}
