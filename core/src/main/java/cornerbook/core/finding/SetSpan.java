package cornerbook.core.finding;

import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import java.time.LocalDate;
import java.util.Map;

/**
 * A wheel set and the time that it has to last.
 *
 * @param wheelAt the wheel at each corner where it runs in that time
 * @param from first day of that time
 * @param until last day of that time
 */
public record SetSpan(WheelSet set, Role role, Map<Corner, String> wheelAt, LocalDate from, LocalDate until) {
    /** Which of the two sets of a visit it is. */
    public enum Role {
        GOING_ON,
        COMING_OFF
    }
}
