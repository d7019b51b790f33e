package cornerbook.app.desk.today;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.visit.ConfirmedRetorque;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.judge.Judged;
import cornerbook.core.finding.Finding;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The visits of a day, the re-torques that are due, and the cars.
 *
 * @param dust of the week of the day shown
 */
public record TodayPage(
        LocalDate today,
        LocalDate date,
        List<VisitSummary> visits,
        List<Again> retorques,
        List<ConfirmedRetorque> confirmed,
        Cars cars,
        BrakeDust dust) {
    public TodayPage {
        visits = List.copyOf(visits);
        retorques = List.copyOf(retorques);
        confirmed = List.copyOf(confirmed);
    }

    /**
     * A re-torque that is due.
     *
     * @param calledOn when its customer was called last; null before anybody did
     */
    public record Again(OpenRetorque due, @Nullable LocalDate calledOn) {}

    /**
     * A page of the cars that were searched for.
     *
     * @param query may be empty
     * @param from how many stand on the pages before
     * @param all how many there are on all pages
     * @param near whether they only come near to the query
     */
    public record Cars(String query, List<Car> list, int from, int all, boolean near) {
        /** No more are judged for one page. */
        static final int ON_A_PAGE = 25;

        public Cars {
            list = List.copyOf(list);
        }

        public int to() {
            return from + list.size();
        }

        /** How many stand before the page before this. */
        public int previous() {
            return Math.max(0, from - ON_A_PAGE);
        }
    }

    /**
     * A car with what its latest visit found out.
     *
     * @param judged the gravest finding; empty when there is nothing to judge
     */
    public record Car(VehicleSummary summary, Judged<Optional<Finding>> judged) {
        /** Null when nothing was judged. */
        public @Nullable Finding gravest() {
            return judged.orElse(Optional.empty()).orElse(null);
        }

        /** Of the fault that kept it from being judged; null when there was none. */
        public @Nullable String faultId() {
            return judged instanceof Judged.Failed<Optional<Finding>> failed ? failed.faultId() : null;
        }
    }
}
