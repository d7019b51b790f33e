package cornerbook.app.demo;

import cornerbook.core.days.PlannedWork;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the invented shop has agreed with its customers for the days around a day. */
record DemoDays(LocalDate today) {
    List<AgreedDay> agreed() {
        return List.of(
                of(2, -6, LocalTime.of(9, 0), PlannedWork.RETORQUE, "", true),
                of(8, 0, LocalTime.of(8, 0), PlannedWork.WHEELS_AND_BRAKES, "", false),
                of(3, 0, LocalTime.of(15, 30), PlannedWork.RETORQUE, "", false),
                of(2, 1, LocalTime.of(9, 0), PlannedWork.RETORQUE, "", false),
                of(4, 1, LocalTime.of(10, 0), PlannedWork.BRAKES, "invented: pulls to the left", false),
                of(5, 2, null, PlannedWork.OTHER, "invented: noise from the rear", false),
                of(6, 3, LocalTime.of(8, 0), PlannedWork.WHEELS_AND_BRAKES, "", false),
                of(7, 3, LocalTime.of(9, 30), PlannedWork.WHEELS, "", false),
                of(9, 6, LocalTime.of(13, 0), PlannedWork.RETORQUE, "", false));
    }

    private AgreedDay of(
            int car, int daysAhead, @Nullable LocalTime time, PlannedWork work, String note, boolean missed) {
        var carId = DemoShop.CAR_ID_BEGINS + (car < 10 ? "0" : "") + car;
        var day = today.plusDays(daysAhead);
        boolean isClosed = daysAhead > 0 && day.getDayOfWeek() == DayOfWeek.SUNDAY;
        return new AgreedDay(carId, isClosed ? day.plusDays(1) : day, time, work, note, missed);
    }
}
