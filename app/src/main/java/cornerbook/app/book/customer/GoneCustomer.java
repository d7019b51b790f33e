package cornerbook.app.book.customer;

import java.time.LocalDate;

/**
 * A person whose cars were not here for long.
 *
 * @param cars how many
 */
public record GoneCustomer(String customerId, String name, int cars, LocalDate lastVisit) {}
