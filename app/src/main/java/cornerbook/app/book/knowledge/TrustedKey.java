package cornerbook.app.book.knowledge;

import cornerbook.app.knowledge.PublicKeyText;
import java.time.Instant;

/**
 * A key by which other shops' knowledge is signed.
 *
 * @param name of who signs by it, as this shop calls them
 * @param trusted whether it is trusted now; what a key signed that is trusted no longer does not count
 * @param person who said so; empty where nobody was named
 */
public record TrustedKey(PublicKeyText key, String name, boolean trusted, String person, Instant madeAt) {}
