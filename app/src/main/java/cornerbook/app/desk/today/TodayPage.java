package cornerbook.app.desk.today;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.visit.ConfirmedRetorque;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.Slice;
import cornerbook.core.car.Customer;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The visits of a day, the re-torques that are due, and the cars.
 *
 * @param dust of the week of the day shown
 * @param shop who reads, by the shop's time
 */
public record TodayPage(
        LocalDate today,
        LocalDate date,
        OfDay visits,
        Slice<Again> retorques,
        List<ConfirmedRetorque> confirmed,
        Cars cars,
        BrakeDust dust,
        Reader shop) {
    public TodayPage {
        confirmed = List.copyOf(confirmed);
    }

    /** Whether the book has nothing yet that a list could show. */
    public boolean isBeginning() {
        return cars.all() == 0
                && cars.query().isEmpty()
                && visits.expected().isEmpty()
                && visits.here().list().isEmpty();
    }

    /**
     * The cars of the day.
     *
     * @param expected those that are still to come
     * @param here those that have come
     */
    public record OfDay(List<Appointment> expected, Slice<VisitSummary> here) {
        public OfDay {
            expected = List.copyOf(expected);
        }
    }

    /**
     * A re-torque that is due.
     *
     * @param mayCall whether its customer may be called about it
     * @param calledOn when its customer was called last; null before anybody did
     */
    public record Again(
            OpenRetorque due, boolean mayCall, @Nullable LocalDate calledOn) {}

    /**
     * A page of the cars that were searched for, each with what the book has of its verdict.
     *
     * @param query may be empty
     * @param near whether they only come near to the query
     * @param without customers who were searched for and have no car in the book
     */
    public record Cars(String query, Slice<VehicleSummary> slice, boolean near, List<Customer> without) {
        public Cars {
            without = List.copyOf(without);
        }

        public List<VehicleSummary> list() {
            return slice.list();
        }

        public int all() {
            return slice.all();
        }
    }
}
