package cornerbook.app.desk.link;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** How a part of an address is written (RFC 3986). */
final class Address {
    private Address() {}

    static String segment(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
