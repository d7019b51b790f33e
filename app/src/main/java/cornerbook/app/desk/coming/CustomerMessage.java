package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.ComingCar;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.say.Listed;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is written to a customer, in the customer's language.
 *
 * @param subject of an e-mail
 */
public record CustomerMessage(String subject, String text) {
    /**
     * One message about all for which a customer is to come back.
     *
     * @param customer with one car or more
     */
    static CustomerMessage of(ComingCustomer customer, Letterhead letterhead, LocalDate today, Reader reader) {
        var sentences = customer.cars().stream()
                .flatMap(car -> sentences(car, today).stream())
                .toList();
        return new CustomerMessage(
                reader.begin(new ComingSaid.Subject(
                        customer.cars().getFirst().name(), customer.cars().size() - 1)),
                reader.say(new ComingSaid.Message(
                        customer.customer().name(),
                        Listed.sentences(sentences),
                        known(letterhead.telephone()),
                        known(letterhead.shopName()))));
    }

    private static List<ComingSaid.DueOfCar> sentences(ComingCar car, LocalDate today) {
        return car.matters().stream()
                .map(due -> new ComingSaid.DueOfCar(
                        due.matter(), car.name(), due.day(), due.day().isBefore(today)))
                .toList();
    }

    private static @Nullable String known(String text) {
        return text.isBlank() ? null : text;
    }
}
