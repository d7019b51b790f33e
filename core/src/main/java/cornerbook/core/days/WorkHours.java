package cornerbook.core.days;

import cornerbook.core.say.Refused;
import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
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

    private static final Pattern SPAN = Pattern.compile("(\\d{1,2}:\\d{2})\\s*[-–]\\s*(\\d{1,2}:\\d{2})");

    /** From the one until the other, of the same day. */
    public record Span(LocalTime from, LocalTime until) {}

    public WorkHours {
        spans = List.copyOf(spans);
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
            if (!spans.isEmpty() && !span.from().isAfter(spans.getLast().until())) {
                throw new Refused(new DaysSaid.HoursOverlap(typed));
            }
            spans.add(span);
        }
        return new WorkHours(spans);
    }

    private static Span span(String part, String typed) {
        var match = SPAN.matcher(part);
        if (match.matches()) {
            try {
                var span = new Span(time(match.group(1)), time(match.group(2)));
                if (span.from().isBefore(span.until())) {
                    return span;
                }
            } catch (DateTimeParseException e) {
                throw new Refused(new DaysSaid.NoHours(typed));
            }
        }
        throw new Refused(new DaysSaid.NoHours(typed));
    }

    private static LocalTime time(String text) {
        return LocalTime.parse(text.length() == 4 ? "0" + text : text);
    }

    /** As it is parsed again: "08:00-12:00, 12:30-17:00". */
    public String written() {
        return spans.stream().map(span -> span.from() + "-" + span.until()).collect(Collectors.joining(", "));
    }

    private boolean holds(LocalTime time) {
        return spans.stream().anyMatch(span -> !time.isBefore(span.from()) && time.isBefore(span.until()));
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
            var from = moments.get(i - 1);
            long atWork = people.stream().filter(hours -> hours.holds(from)).count();
            minutes += Duration.between(from, moments.get(i)).toMinutes()
                    * (hoists == 0 ? atWork : Math.min(atWork, hoists));
        }
        return (int) minutes;
    }
}
