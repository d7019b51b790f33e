package cornerbook.app.book.customer;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.time.Instant;

/**
 * What a customer said to being reached for a purpose in a way.
 *
 * @param words what the person was asked, as it was shown or read out
 * @param person who took the answer
 */
public record ContactAnswer(
        Purpose purpose, Channel channel, boolean agreed, String words, String person, Instant at) {}
