package cornerbook.app.book.bill;

import java.time.Instant;
import java.time.LocalDate;
import org.joda.money.Money;

/** Money that came in for a bill, or went back for a credit note: then it is below nothing. */
public record Payment(String id, Way way, Money amount, LocalDate paidOn, String person, Instant madeAt) {
    /** How it was paid. */
    public enum Way {
        CASH,
        CARD,
        TRANSFER,
        CHEQUE
    }
}
