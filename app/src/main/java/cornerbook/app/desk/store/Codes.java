package cornerbook.app.desk.store;

import cornerbook.app.desk.Desk;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a scanner typed, or a hand. */
final class Codes {
    private Codes() {}

    /** The tag of a wheel of the book, as it was scanned or typed in small letters. */
    static Optional<String> findTag(Desk desk, String code) {
        return Stream.of(code, code.toUpperCase(Locale.ROOT))
                .filter(each -> !each.isEmpty())
                .filter(each -> desk.book().stock().find(each).isPresent())
                .findFirst();
    }
}
