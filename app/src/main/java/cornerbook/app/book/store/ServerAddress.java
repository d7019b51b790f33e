package cornerbook.app.book.store;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The address of a book in PostgreSQL, as {@code jdbc:postgresql://HOST/DATABASE?user=NAME}; a password in it is shown to nobody. */
public final class ServerAddress {
    static final String SCHEME = "jdbc:postgresql:";

    private static final Pattern ADDRESS = Pattern.compile(SCHEME + "\\S*");
    /** With one slash as well: a path that was made of an address has lost the other. */
    private static final Pattern WITH_USER = Pattern.compile(SCHEME + "//?(?:[^?]*|[^?/]*\\?.*)@(?<rest>.*)");

    private ServerAddress() {}

    public static boolean is(String place) {
        return place.startsWith(SCHEME);
    }

    /** The address without what stands before its host and after its question mark. */
    public static String shown(String address) {
        var user = WITH_USER.matcher(address);
        var bare = user.matches() ? SCHEME + "//" + user.group("rest") : address;
        return bare.replaceFirst("\\?.*", "");
    }

    /** A text in which each such address is shown so. */
    public static String hideIn(String text) {
        return ADDRESS.matcher(text).replaceAll(found -> Matcher.quoteReplacement(shown(found.group())));
    }

    /** Whether a user stands before the host, as in other addresses of the web, but not in these. */
    static boolean namesUserBeforeHost(String address) {
        return WITH_USER.matcher(address).matches();
    }

    static boolean hasPassword(String address) {
        return address.matches(".*[?&]password=.*");
    }
}
