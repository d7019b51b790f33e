package cornerbook.app.book.car;

import cornerbook.core.say.Said;
import java.util.Locale;

/** How a value that is true or not was written where it was put right. */
enum YesOrNo implements Said {
    YES,
    NO;

    static YesOrNo of(boolean value) {
        return value ? YES : NO;
    }

    /** As it stands in the book. */
    String written() {
        return name().toLowerCase(Locale.ROOT);
    }
}
