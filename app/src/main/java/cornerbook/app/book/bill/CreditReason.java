package cornerbook.app.book.bill;

import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.Optional;

/** Why a bill is given back, as the credit note says it for good: it names nobody. */
public enum CreditReason implements Said {
    NOT_DONE,
    WRONG_LINES,
    WRONG_PRICE,
    WRONG_CAR,
    COMPLAINT,
    OTHER;

    /** As it is kept; empty for a note that was made before there was a list, which has words of its own. */
    public static Optional<CreditReason> find(String kept) {
        return Arrays.stream(values())
                .filter(reason -> reason.name().equals(kept))
                .findFirst();
    }
}
