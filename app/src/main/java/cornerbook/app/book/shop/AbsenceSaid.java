package cornerbook.app.book.shop;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What is refused of days on which somebody is not there. */
public sealed interface AbsenceSaid extends Said {
    record NoSpan(LocalDate first, LocalDate last, int most) implements AbsenceSaid {}
}
