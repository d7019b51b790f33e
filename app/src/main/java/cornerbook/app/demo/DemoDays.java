package cornerbook.app.demo;

import cornerbook.core.days.PlannedWork;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the invented shop has agreed with its customers for the days around a day. */
record DemoDays(LocalDate today) {
    private static final int WEEKS_AHEAD = 5;
    private static final int DAYS_WITH_CARS = 5;
    private static final int CARS_OF_FULL_DAY = 9;

    private static final List<PlannedWork> WORKS = List.of(
            PlannedWork.WHEELS_AND_BRAKES, PlannedWork.WHEELS_AND_BRAKES, PlannedWork.BRAKES, PlannedWork.WHEELS);

    List<AgreedDay> agreed() {
        return Stream.concat(around(), ahead()).toList();
    }

    private Stream<AgreedDay> around() {
        return Stream.of(
                of(2, today.minusDays(6), LocalTime.of(9, 0), PlannedWork.RETORQUE, null, "", true),
                of(8, today, LocalTime.of(8, 0), PlannedWork.WHEELS_AND_BRAKES, null, "", false),
                of(3, today, LocalTime.of(15, 30), PlannedWork.RETORQUE, DemoHours.REMI, "", false),
                of(2, open(1), LocalTime.of(9, 0), PlannedWork.RETORQUE, null, "", false),
                of(
                        4,
                        open(1),
                        LocalTime.of(10, 0),
                        PlannedWork.BRAKES,
                        DemoHours.ODILE,
                        "invented: pulls to the left",
                        false),
                of(5, open(2), null, PlannedWork.OTHER, null, "invented: noise from the rear", false),
                of(6, open(3), LocalTime.of(8, 0), PlannedWork.WHEELS_AND_BRAKES, DemoHours.ODILE, "", false),
                of(7, open(3), LocalTime.of(9, 30), PlannedWork.WHEELS, DemoHours.REMI, "", false),
                of(9, open(6), LocalTime.of(13, 0), PlannedWork.RETORQUE, null, "", false));
    }

    /** A Saturday with more than one person can do, and from the week after the next on full days, and fewer cars each week. */
    private Stream<AgreedDay> ahead() {
        var agreed = new ArrayList<AgreedDay>();
        for (int week = 2; week <= WEEKS_AHEAD; week++) {
            for (int place = 0; place < DAYS_WITH_CARS; place++) {
                var day = monday().plusWeeks(week).plusDays(place);
                for (int turn = 0;
                        turn < CARS_OF_FULL_DAY - place - week && !day.equals(DemoHours.closed(today));
                        turn++) {
                    int car = 1 + (place * 3 + week * 5 + turn) % DemoShop.TOLD_CARS;
                    var worker = turn % 2 == 0 ? DemoHours.ODILE : DemoHours.REMI;
                    agreed.add(of(
                            car,
                            day,
                            LocalTime.of(8 + 2 * (turn / 2), 30),
                            WORKS.get((place + turn) % WORKS.size()),
                            worker,
                            "",
                            false));
                }
            }
        }
        var saturday = monday().plusWeeks(1).with(TemporalAdjusters.next(DayOfWeek.SATURDAY));
        List.of(10, 11, 12)
                .forEach(car -> agreed.add(of(car, saturday, null, PlannedWork.WHEELS_AND_BRAKES, null, "", false)));
        return agreed.stream();
    }

    private LocalDate monday() {
        return today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** So many days ahead, or the Monday after it where that is a Sunday. */
    private LocalDate open(int daysAhead) {
        var day = today.plusDays(daysAhead);
        return day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }

    private static AgreedDay of(
            int car,
            LocalDate day,
            @Nullable LocalTime time,
            PlannedWork work,
            @Nullable String worker,
            String note,
            boolean missed) {
        return new AgreedDay(
                DemoShop.CAR_ID_BEGINS + (car < 10 ? "0" : "") + car, day, time, work, worker, note, missed);
    }
}
