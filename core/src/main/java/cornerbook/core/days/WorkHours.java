package cornerbook.core.days;

import cornerbook.core.say.Refused;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * When a person works on a day.
 *
 * @param spans one after the other, none touching the next; empty for a day off
 */
public record WorkHours(List<Span> spans) {
    public static final WorkHours NONE = new WorkHours(List.of());

    private static final int MINUTES_OF_HOUR = 60;
    private static final String TIME = "([01]?\\d|2[0-3]):([0-5]\\d)";
    private static final Pattern SPAN = Pattern.compile(TIME + "\\s*[-–]\\s*" + TIME);

    /** From the one until the other minute of the same day, counted from midnight. */
    public record Span(int from, int until) {
        int minutes() {
            return until - from;
        }

        /** As a clock shows it: "08:00-12:00". */
        String written() {
            return clock(from) + "-" + clock(until);
        }
    }

    public WorkHours {
        spans = List.copyOf(spans);
    }

    /** A minute of the day as a clock shows it: "09:30". */
    public static String clock(int minute) {
        return twoDigits(minute / MINUTES_OF_HOUR) + ":" + twoDigits(minute % MINUTES_OF_HOUR);
    }

    private static String twoDigits(int number) {
        return number < 10 ? "0" + number : String.valueOf(number);
    }

    /**
     * Hours as a person writes them.
     *
     * @param typed as "8:00-12:00, 12:30-17:00"; blank for a day off
     * @throws Refused when it is something else, or one begins before the one before has ended
     */
    public static WorkHours parse(String typed) {
        if (typed.isBlank()) {
            return NONE;
        }
        var spans = new ArrayList<Span>();
        for (var part : typed.split(",", -1)) {
            var span = span(part.strip(), typed);
            if (!spans.isEmpty() && span.from() <= spans.getLast().until()) {
                throw new Refused(new DaysSaid.HoursOverlap(typed));
            }
            spans.add(span);
        }
        return new WorkHours(spans);
    }

    private static Span span(String part, String typed) {
        var match = SPAN.matcher(part);
        if (match.matches()) {
            var span = new Span(minutes(match.group(1), match.group(2)), minutes(match.group(3), match.group(4)));
            if (span.from() < span.until()) {
                return span;
            }
        }
        throw new Refused(new DaysSaid.NoHours(typed));
    }

    private static int minutes(String hours, String minutes) {
        return Integer.parseInt(hours) * MINUTES_OF_HOUR + Integer.parseInt(minutes);
    }

    /** As it is parsed again: "08:00-12:00, 12:30-17:00". */
    public String written() {
        return spans.stream().map(Span::written).collect(Collectors.joining(", "));
    }

    /** All of it, min. */
    public int minutes() {
        return spans.stream().mapToInt(Span::minutes).sum();
    }

    /** Minute of the day at which it begins; of hours that are not empty. */
    public int begins() {
        return spans.getFirst().from();
    }

    /** Minute of the day at which it ends; of hours that are not empty. */
    public int ends() {
        return spans.getLast().until();
    }

    /** What of it lies between two minutes of the day. */
    public WorkHours between(int from, int until) {
        return new WorkHours(spans.stream()
                .map(span -> new Span(Math.max(span.from(), from), Math.min(span.until(), until)))
                .filter(span -> span.from() < span.until())
                .toList());
    }

    /** The minute of the day at which the next work begins when so much is done; its end when nothing is left. */
    public int beginsAfter(int worked) {
        int left = worked;
        for (var span : spans) {
            if (left < span.minutes()) {
                return span.from() + left;
            }
            left -= span.minutes();
        }
        return ends();
    }

    /** The minute of the day at which so much is done: work that a break interrupts goes on after it. */
    public int endsAfter(int worked) {
        int left = worked;
        for (var span : spans) {
            if (left <= span.minutes()) {
                return span.from() + left;
            }
            left -= span.minutes();
        }
        return ends();
    }

    private boolean holds(int minute) {
        return spans.stream().anyMatch(span -> minute >= span.from() && minute < span.until());
    }

    /**
     * How much work a day takes: at each moment no more cars than there are people at work, and than there are hoists.
     *
     * @param people the hours of each
     * @param hoists 0 where the shop keeps none in its tools, so that people alone count
     * @return minutes
     */
    public static int capacityMinutes(List<WorkHours> people, int hoists) {
        var moments = people.stream()
                .flatMap(hours -> hours.spans().stream())
                .flatMap(span -> Stream.of(span.from(), span.until()))
                .distinct()
                .sorted()
                .toList();
        long minutes = 0;
        for (int i = 1; i < moments.size(); i++) {
            int from = moments.get(i - 1);
            long atWork = people.stream().filter(hours -> hours.holds(from)).count();
            minutes += (moments.get(i) - from) * (hoists == 0 ? atWork : Math.min(atWork, hoists));
        }
        return (int) minutes;
    }
}
