package cornerbook.app.book.customer;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that a customer said to being reached, earliest first; of a purpose and a way the last answer stands. */
public record ContactAnswers(List<ContactAnswer> list) {
    public ContactAnswers {
        list = List.copyOf(list);
    }

    /** Whether the customer agreed; null when never asked. */
    public @Nullable Boolean agreed(Purpose purpose, Channel channel) {
        return list.reversed().stream()
                .filter(answer -> answer.purpose() == purpose && answer.channel() == channel)
                .map(ContactAnswer::agreed)
                .findFirst()
                .orElse(null);
    }
}
