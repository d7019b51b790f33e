package cornerbook.app.book.customer;

import cornerbook.app.book.mail.KeptMail;
import cornerbook.app.book.visit.Because;
import cornerbook.core.car.Customer;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All by which the book knows a person.
 *
 * @param cars those of this customer, by name
 * @param mentions what was written of this person at visits and appointments, earliest first
 * @param contact what this person said to being called and written to, earliest first
 * @param mails what was written to this person by e-mail, the latest first
 * @param estimates what this person was told that work would cost, earliest first
 * @param bills what this person was charged, by number
 * @param erased why and by whom the data were erased; null where they were not
 */
public record KeptOfCustomer(
        Customer customer,
        List<KnownCar> cars,
        List<Mention> mentions,
        List<ContactAnswer> contact,
        List<KeptMail> mails,
        List<PricedEstimate> estimates,
        List<PricedBill> bills,
        @Nullable Because erased) {
    public KeptOfCustomer {
        cars = List.copyOf(cars);
        mentions = List.copyOf(mentions);
        contact = List.copyOf(contact);
        mails = List.copyOf(mails);
        estimates = List.copyOf(estimates);
        bills = List.copyOf(bills);
    }

    /** Photos of all cars. */
    public int photos() {
        return cars.stream().mapToInt(KnownCar::photos).sum();
    }

    /**
     * A car, and how it leads to its owner.
     *
     * @param lastVisit null before the first one
     */
    public record KnownCar(
            String id,
            String name,
            String plate,
            @Nullable String vin,
            int visits,
            @Nullable LocalDate lastVisit,
            int photos) {}

    /**
     * Something that was written of a person.
     *
     * @param visitId at which; null of an appointment
     * @param words as they stand in the book; null where no words of anybody were
     * @param name who of the customer's side; null where nobody is named
     */
    public record Mention(
            @Nullable String visitId,
            LocalDate day,
            Kind kind,
            @Nullable String words,
            @Nullable String name) {
        public enum Kind {
            /** What the customer complained of, or what was noted at the work. */
            REMARK,
            /** Work that was declined, or wanted after all. */
            DECLINED,
            /** What the customer said to an estimate. */
            AGREED,
            /** Work that the customer pays nothing for, and why. */
            WITHOUT_CHARGE,
            /** The car was taken though something was unsafe. */
            ACKNOWLEDGED,
            /** The customer was called, about wheels to be tightened again, a part or another visit. */
            CALLED,
            NOT_REACHED,
            /** A message or an e-mail was sent. */
            WRITTEN,
            /** The customer will come for it. */
            WILL_COME,
            /** The customer did not want it. */
            CALL_DECLINED,
            /** A day was agreed, moved or called off. */
            APPOINTMENT,
            /** The customer picked a day, or asked to be called about one. */
            WISHED,
            /** The customer did not come on the day. */
            MISSED
        }
    }
}
