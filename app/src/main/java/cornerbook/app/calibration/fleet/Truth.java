package cornerbook.app.calibration.fleet;

import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** What only the simulator knows of one car: how its tyres and pads went on after each visit, for years after the last. */
public final class Truth {
    private final Calendar calendar;
    private final Days days;
    private final Map<String, List<Tread>> treads;
    private final Map<String, List<Integer>> padsStickOn;
    private final Map<String, Course> courses = new HashMap<>();

    /**
     * What was lived.
     *
     * @param treads by visit, the tyres as they came off and went on
     * @param padsStickOn by visit, the day on which each pad would stick if it were left alone
     */
    Truth(Calendar calendar, Days days, Map<String, List<Tread>> treads, Map<String, List<Integer>> padsStickOn) {
        this.calendar = calendar;
        this.days = days;
        this.treads = Map.copyOf(treads);
        this.padsStickOn = Map.copyOf(padsStickOn);
    }

    /**
     * Lowest groove of a set at the end of a day, mm, had it stayed at the corners that it had at a visit, on the car in its
     * seasons and in the store between them, and had nobody replaced it.
     *
     * @param set that came off at the visit or went on
     * @param day not before the visit
     */
    public double lowestMm(WheelSet set, Visit visit, LocalDate day) {
        return courses.computeIfAbsent(visit.id() + " " + set.id(), key -> course(set, visit))
                .lowestMm(place(day));
    }

    private Course course(WheelSet set, Visit visit) {
        return new Course(
                Objects.requireNonNull(treads.get(visit.id())).stream()
                        .filter(each -> each.set().id().equals(set.id()))
                        .findFirst()
                        .orElseThrow()
                        .copy(),
                calendar.dayOf(visit.date()));
    }

    /** How a set wears on from a visit, as far as somebody has asked. */
    private final class Course {
        private final Tread tread;
        private final int first;
        private final List<Double> lowestMm = new ArrayList<>();

        Course(Tread tread, int first) {
            this.tread = tread;
            this.first = first;
        }

        double lowestMm(int day) {
            while (lowestMm.size() <= day - first) {
                days.wear(tread, first + lowestMm.size());
                lowestMm.add(tread.lowestMm());
            }
            return lowestMm.get(day - first);
        }
    }

    /** Distance between the ends of two days. */
    public double km(LocalDate from, LocalDate until) {
        return days.kmUntil(place(until)) - days.kmUntil(place(from));
    }

    /** Whether a pad that was left free at a visit sticks by a day, nobody touching it in between. */
    public boolean padSticks(Visit visit, LocalDate by) {
        int day = place(by);
        return Objects.requireNonNull(padsStickOn.get(visit.id())).stream().anyMatch(sticks -> sticks <= day);
    }

    private int place(LocalDate date) {
        return Math.clamp(calendar.dayOf(date), 0, days.count() - 1);
    }
}
