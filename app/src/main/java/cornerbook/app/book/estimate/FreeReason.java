package cornerbook.app.book.estimate;

import cornerbook.core.say.Said;
import java.util.Arrays;

/** Why a shop charges nothing for work. */
public enum FreeReason implements Said {
    /** It had to be done for safety, before anybody could be asked. */
    SAFETY,
    /** The shop's own work, or a part that it fitted, was not right. */
    OWN_FAULT,
    GOODWILL;

    /** As it was said: one of these, or a person's own words. */
    public static Said said(String reason) {
        return Arrays.stream(values())
                .filter(each -> each.name().equals(reason))
                .<Said>map(each -> each)
                .findFirst()
                .orElseGet(() -> Said.verbatim(reason));
    }
}
