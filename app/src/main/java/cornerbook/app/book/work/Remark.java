package cornerbook.app.book.work;

import cornerbook.core.say.Said;
import java.time.Instant;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a person wrote down at a visit, in words of their own. Of each topic the last one counts; those before stay in the book.
 *
 * @param id unique in the book, born at the tablet
 * @param madeAt by the tablet's clock, which decides nothing
 */
public record Remark(String id, Topic topic, String words, String person, Instant madeAt) {
    /** What it is about: the customer's complaint, the damage before work began, or a step of the work. */
    public enum Topic implements Said {
        COMPLAINT,
        ARRIVAL_DAMAGE,
        RECEIVE,
        LIFT,
        BRAKE_LF,
        BRAKE_RF,
        BRAKE_LR,
        BRAKE_RR,
        PEDAL,
        OFF,
        ON,
        PRESSURE,
        TORQUE,
        BATTERY,
        BURNISH,
        DEPART
    }

    /** Those that count, in the order of the topics. */
    public static List<Remark> standing(Collection<Remark> earliestFirst) {
        Map<Topic, Remark> last = new EnumMap<>(Topic.class);
        earliestFirst.forEach(remark -> last.put(remark.topic, remark));
        return List.copyOf(last.values());
    }
}
