package cornerbook.app.demo;

import cornerbook.core.car.CarHistory;
import cornerbook.core.days.WorkHours;
import cornerbook.core.season.Climate;
import cornerbook.core.tool.ShopTool;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The demonstration shop. All of it is made up: the shop, the town, the people, the plates, the cars, the tyre models and
 * every reading; likeness to anything real is chance.
 */
public final class DemoShop {
    /** Name of the shop, as it stands on pages and sheets. */
    public static final String NAME = "Garage Brisegel, Val-Ombrelune (invented)";

    public static final String ADDRESS = "12, rue du Cric, Val-Ombrelune (invented)";

    /** Of the numbers that are kept for invented ones. */
    public static final String TELEPHONE = "418-555-0142";

    /** The cars with a story of their own. */
    public static final int TOLD_CARS = 12;

    /** The id of each of its cars, and of no other. */
    public static final String CAR_ID_BEGINS = "demo-";

    /** Mean daily minimum and maximum of each month, °C, January first. */
    private static final double[][] MONTHS_C = {
        {-15, -5}, {-14, -3}, {-8, 2}, {-1, 9}, {6, 17}, {11, 22}, {14, 25}, {13, 23}, {8, 18}, {2, 11}, {-4, 4},
        {-11, -2}
    };

    private DemoShop() {}

    /** Climate of the invented place. */
    public static Climate climate() {
        return new Climate(
                "Val-Ombrelune",
                "invented, no place has these normals",
                -27,
                Arrays.stream(MONTHS_C)
                        .map(month -> new Climate.MonthNormal(month[0], month[1]))
                        .toList());
    }

    /**
     * Twelve cars with six or seven visits each.
     *
     * @param today the day that the latest visits are dated by; three of them are of this very day and not finished
     */
    public static List<CarHistory> histories(LocalDate today) {
        return histories(today, 0, TOLD_CARS).toList();
    }

    /**
     * The twelve cars and others behind them, made one by one as they are taken.
     *
     * @param from how many are left out, of the twelve first
     * @param cars how many there are with those that are left out
     */
    public static Stream<CarHistory> histories(LocalDate today, int from, int cars) {
        var cast = Cast.members(today);
        var crowd = new Crowd(today);
        return IntStream.range(from, cars)
                .mapToObj(place -> place < cast.size()
                        ? ofCast(cast.get(place), today)
                        : new VisitWriter(crowd.member(place + 1), new SeasonDays(today)))
                .map(VisitWriter::write);
    }

    private static VisitWriter ofCast(CastMember member, LocalDate today) {
        return new VisitWriter(member, new RushDays(today, member.latestVisit()));
    }

    /** The tools that it keeps. */
    public static List<ShopTool> tools(LocalDate today) {
        return DemoTools.kept(today);
    }

    /** Its people, and when they work by the day of the week. */
    public static Map<String, Map<DayOfWeek, WorkHours>> people() {
        return DemoHours.people();
    }

    /** A day in the weeks ahead on which it is closed. */
    public static LocalDate closed(LocalDate today) {
        return DemoHours.closed(today);
    }

    /** What it has agreed with its customers for the days around today. */
    public static List<AgreedDay> agreed(LocalDate today) {
        return new DemoDays(today).agreed();
    }
}
