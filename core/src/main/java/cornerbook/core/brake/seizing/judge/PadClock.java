package cornerbook.core.brake.seizing.judge;

import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.seizing.CensoredTime;
import cornerbook.core.brake.seizing.SaltClock;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One pad from one service of its guides to the next, over the visits: when it still moved and when it was found seized.
 * Before the first service that is in the book nothing is known of its time.
 */
public final class PadClock {
    private static final double DAYS_PER_MONTH = 365.25 / 12;

    private final List<CensoredTime> times = new ArrayList<>();

    @Nullable
    private LocalDate serviced;

    private double lastFreeMonths;

    /** The clocks of all pads that a car has, over its visits, earliest first. */
    public static List<PadClock> of(Vehicle vehicle, List<Visit> visits) {
        return of(vehicle, visits, visits.stream().map(StandingReadings::new).toList());
    }

    /** The same of a car that is judged. */
    static List<PadClock> of(Case given) {
        return of(given.vehicle(), given.visits(), given.readingsByVisit());
    }

    private static List<PadClock> of(Vehicle vehicle, List<Visit> visits, List<StandingReadings> read) {
        var clocks = new ArrayList<PadClock>();
        for (var corner : Corner.values()) {
            if (vehicle.axle(corner.axle()).brake().hasDrum()) {
                continue;
            }
            for (var spot : BrakeCorner.SIDES) {
                var clock = new PadClock();
                for (int v = 0; v < read.size(); v++) {
                    var day = visits.get(v).date();
                    read.get(v)
                            .ofCorner(Measure.PAD_MOVEMENT, corner, spot)
                            .ifPresent(found -> clock.seen(day, isSeized(found)));
                    read.get(v)
                            .ofCorner(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null)
                            .filter(left -> !isSeized(left))
                            .ifPresent(left -> clock.serviced(day));
                }
                clocks.add(clock);
            }
        }
        return clocks;
    }

    private static boolean isSeized(Reading movement) {
        return Math.round(movement.value()) >= 2;
    }

    /** The pad was moved by hand. */
    void seen(LocalDate date, boolean seized) {
        if (serviced == null || !date.isAfter(serviced)) {
            return;
        }
        double months = SaltClock.months(serviced, date);
        if (seized) {
            times.add(CensoredTime.between(lastFreeMonths, months));
            serviced = null;
        } else {
            lastFreeMonths = months;
        }
    }

    /** Its guides were cleaned and lubricated, and it moved afterwards. */
    void serviced(LocalDate date) {
        end();
        serviced = date;
        lastFreeMonths = 0;
    }

    /** Day of the last service since which it has not been found seized; null when there is none. */
    @Nullable
    public LocalDate running() {
        return serviced;
    }

    /** What is known of its times before the one that runs. */
    List<CensoredTime> ended() {
        return List.copyOf(times);
    }

    /** What is known of it, the time that still runs as not ended. */
    List<CensoredTime> times() {
        var all = new ArrayList<>(times);
        if (serviced != null && lastFreeMonths > 0) {
            all.add(CensoredTime.notBy(lastFreeMonths));
        }
        return all;
    }

    static double months(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_PER_MONTH;
    }

    private void end() {
        if (serviced != null && lastFreeMonths > 0) {
            times.add(CensoredTime.notBy(lastFreeMonths));
        }
    }
}
