package cornerbook.core.days.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * What is worse than what, in points. In this order, each next one less than the one before: no place for what was agreed, no place at
 * all, another day than agreed, another day than wished, each day late, another person than agreed, another hoist, a car
 * that waits, uneven days. All of them are common
 * practice, no source.
 */
final class PlanCost {
    private static final long AGREED_UNPLACED = 1_000_000;
    private static final long UNPLACED = 150_000;
    private static final long MOVED = 10_000;
    private static final long NOT_WISHED = 3_000;
    private static final long DAY_FROM_WISHED = 200;
    private static final long DAY_LATE = 1_000;
    private static final long OTHER_PERSON = 1_000;
    private static final long OTHER_HOIST = 100;
    private static final long WAITING_MINUTE = 2;

    /** Of a day with L of its T minutes laid: 20 L² / T, so that the sum is least where all days have the same share. */
    static final long LOAD = 20;

    /** Longer than this no day is away from another: two months, so that every place is better than none. */
    private static final long MOST_DAYS = 60;

    long unplaced(Wanted visit) {
        return visit.agreed() == null ? UNPLACED : AGREED_UNPLACED;
    }

    long at(Wanted visit, Stretch stretch) {
        var day = stretch.day();
        return late(visit, day) + fromWished(visit, day) + fromAgreed(visit, stretch);
    }

    /** Of a car that waits. */
    long waiting(int minutes) {
        return WAITING_MINUTE * minutes;
    }

    private static long late(Wanted visit, LocalDate day) {
        var due = visit.due();
        return due == null || !day.isAfter(due) ? 0 : DAY_LATE * days(due, day);
    }

    private static long fromWished(Wanted visit, LocalDate day) {
        if (visit.wished().isEmpty() || visit.wished().contains(day)) {
            return 0;
        }
        return NOT_WISHED
                + DAY_FROM_WISHED
                        * visit.wished().stream()
                                .mapToLong(wished -> days(wished, day))
                                .min()
                                .orElse(0);
    }

    private static long fromAgreed(Wanted visit, Stretch stretch) {
        var agreed = visit.agreed();
        if (agreed == null) {
            return 0;
        }
        long points = 0;
        if (!agreed.day().equals(stretch.day())) {
            points += MOVED + DAY_FROM_WISHED * days(agreed.day(), stretch.day());
        }
        if (agreed.person() != null && !agreed.person().equals(stretch.station().person())) {
            points += OTHER_PERSON;
        }
        if (agreed.hoist() != null && !agreed.hoist().equals(stretch.station().hoist())) {
            points += OTHER_HOIST;
        }
        return points;
    }

    private static long days(LocalDate one, LocalDate other) {
        return Math.min(Math.abs(ChronoUnit.DAYS.between(one, other)), MOST_DAYS);
    }

    static long load(int laid, int minutes) {
        return minutes == 0 ? 0 : LOAD * laid * laid / minutes;
    }
}
