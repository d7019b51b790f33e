package cornerbook.app.book.rack;

import cornerbook.core.say.Said;
import cornerbook.core.store.Place;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * A set that lies in a room of the store that is elsewhere.
 *
 * @param place where it lies there
 * @param last what became of bringing it; null where nobody has asked for it yet
 */
public record SetElsewhere(
        KeptSet set,
        Place place,
        Bringing bringing,
        @Nullable Brought last) {
    /** How far it is. */
    public enum Step implements Said {
        /** It was asked for. */
        ASKED,
        /** It is here, and was not laid anywhere yet. */
        HERE,
        /** It is not asked for after all. */
        NOT_ASKED
    }

    /**
     * What somebody said of it.
     *
     * @param comesOn when it was to come; null where it was not asked for
     */
    public record Brought(Step step, @Nullable LocalDate comesOn, By by) {}

    /** As it stands: nobody has asked for it where nobody said otherwise. */
    public Step step() {
        return last == null ? Step.NOT_ASKED : last.step();
    }

    public boolean isHere() {
        return last != null && last.step() == Step.HERE;
    }

    /** When it was asked for to come; null where nobody has asked, or it is here. */
    public @Nullable LocalDate expected() {
        return last == null ? null : last.comesOn();
    }

    /**
     * The first day on which it can be here: as it was asked for, else if it were asked for now.
     *
     * @param works whether somebody works on a day
     */
    public LocalDate comes(LocalDateTime now, Predicate<LocalDate> works) {
        var expected = expected();
        if (isHere()) {
            return now.toLocalDate();
        }
        return expected == null
                ? bringing.comes(now, works)
                : expected.isBefore(now.toLocalDate()) ? now.toLocalDate() : expected;
    }
}
