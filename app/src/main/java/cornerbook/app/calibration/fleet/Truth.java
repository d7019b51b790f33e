package cornerbook.app.calibration.fleet;

import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What only the simulator knows of one car: the days before its first visit, and the years after its last, too. */
public final class Truth {
    private final Calendar calendar;
    private final Map<String, Tread> treads;
    private final double[] kmUntil;
    private final Map<String, List<Integer>> padsStickOn;

    /**
     * What was lived.
     *
     * @param treads by set
     * @param kmUntil odometer at the end of each day
     * @param padsStickOn by visit, the day on which each pad would stick if it were left alone
     */
    Truth(
            Calendar calendar,
            Map<String, Tread> treads,
            double[] kmUntil,
            Map<String, List<Integer>> padsStickOn) {
        this.calendar = calendar;
        this.treads = Map.copyOf(treads);
        this.kmUntil = kmUntil.clone();
        this.padsStickOn = Map.copyOf(padsStickOn);
    }

    /** Whether all grooves of a set are at or above a limit at the end of a day, had it never been replaced. */
    public boolean holds(WheelSet set, double limitMm, LocalDate day) {
        return lowestMm(set, day) >= limitMm;
    }

    /** Lowest groove of a set at the end of a day, mm, had it never been replaced. */
    public double lowestMm(WheelSet set, LocalDate day) {
        return treads.get(set.id()).lowestMm(place(day));
    }

    /** Distance between the ends of two days. */
    public double km(LocalDate from, LocalDate until) {
        return kmUntil[place(until)] - kmUntil[place(from)];
    }

    /** Whether a pad that was left free at a visit sticks by a day, nobody touching it in between. */
    public boolean padSticks(String visitId, LocalDate by) {
        int day = place(by);
        return padsStickOn.getOrDefault(visitId, List.of()).stream().anyMatch(sticks -> sticks <= day);
    }

    private int place(LocalDate date) {
        return Math.clamp(calendar.dayOf(date), 0, kmUntil.length - 1);
    }
}
