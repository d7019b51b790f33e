package cornerbook.app.book.bay;

import cornerbook.core.say.Said;
import java.util.Arrays;

/** Why hands leave something open, as tablets know it. */
public enum OpenReason implements Said {
    CUSTOMER_DECLINED,
    PART_MISSING,
    TOOL_MISSING,
    NO_TIME,
    NOT_REACHABLE;

    /** By its name; anything else is what a person said in words of their own. */
    static Said of(String reason) {
        return Arrays.stream(values())
                .filter(known -> known.name().equals(reason))
                .map(Said.class::cast)
                .findFirst()
                .orElseGet(() -> Said.verbatim(reason));
    }
}
