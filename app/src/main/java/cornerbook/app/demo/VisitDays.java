package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.LatestVisit;
import java.time.LocalDate;
import java.util.List;
import java.util.random.RandomGenerator;

/** On which days a car comes to the shop. */
interface VisitDays {
    /** How often it comes, the visit of the present season included. */
    int VISITS = 7;

    /** The days of its visits, earliest first; that of the present season may be still to come. */
    List<LocalDate> draw(RandomGenerator random);

    /** How far the visit of the present season, which is of this day, has come. */
    LatestVisit progress(LocalDate latest);
}
