package cornerbook.core.torque.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid;
import cornerbook.core.torque.WheelFastener;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A re-torque that is due after wheels went on, until it is recorded.
 *
 * @param dueDate estimated from the car's distance per day
 * @param torqueNm null while nobody has looked up what the manufacturer asks
 */
public record Retorque(
        String visitId,
        double dueOdometerKm,
        LocalDate dueDate,
        @Nullable Double torqueNm) {
    /** To what its wheels are tightened. */
    public Said tightenedTo() {
        return new TorqueSaid.TightenedTo(torqueNm == null ? null : Amount.of(torqueNm, "N·m"));
    }

    /**
     * The re-torque that was due before a car came in, on the wheels that were fitted then and nobody touched since, by its day or
     * its distance. Empty when none was, or when it came on other wheels or on wheels that stand elsewhere. Whether somebody
     * recorded it the history does not know.
     */
    public static Optional<Retorque> dueOnArrival(CarHistory history, Visit visit) {
        return history.visits().subList(0, history.visits().indexOf(visit)).reversed().stream()
                .flatMap(earlier -> after(history, earlier).stream())
                .findFirst()
                .filter(due -> fitted(history.getVisit(due.visitId())).equals(visit.arrivedOn()))
                .filter(due -> !visit.date().isBefore(due.dueDate())
                        || runKm(history, due, visit) >= dueAfterKm(history, due));
    }

    /** As the car ran, also where its odometer was replaced meanwhile. */
    private static double runKm(CarHistory history, Retorque due, Visit visit) {
        var mileage = new Mileage(history.visits());
        return mileage.sinceFirstKm(visit) - mileage.sinceFirstKm(history.getVisit(due.visitId()));
    }

    private static double dueAfterKm(CarHistory history, Retorque due) {
        return due.dueOdometerKm() - history.getVisit(due.visitId()).odometerKm();
    }

    private static Map<Corner, String> fitted(Visit visit) {
        return visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
    }

    /**
     * The re-torque that a visit asks for: wheels stand elsewhere than on arrival, or a wheel was tightened, as after
     * brake work with the same wheels off and on again: its torque was read, or its fasteners were ticked. It is due after the distance that the
     * car's manufacturer asks, or after the usual one while nobody has looked it up. Empty when no wheel was touched.
     *
     * @param history the car with its visits until then, for its distance per day
     */
    public static Optional<Retorque> after(CarHistory history, Visit visit) {
        boolean moved = !visit.leftOn().isEmpty() && !visit.leftOn().equals(visit.arrivedOn());
        boolean tightened = !visit.tightened().isEmpty()
                || !new StandingReadings(visit).all(Measure.WHEEL_TORQUE).isEmpty();
        var fastener = history.vehicle().fastener();
        if (!moved && !tightened) {
            return Optional.empty();
        }
        double afterKm = fastener == null ? WheelFastener.USUAL_RETORQUE_AFTER_KM : fastener.retorqueAfterKm();
        double kmPerDay = Math.max(1, RunHistory.kmPerDayAfter(history, visit));
        return Optional.of(new Retorque(
                visit.id(),
                visit.odometerKm() + afterKm,
                visit.date().plusDays((long) Math.ceil(afterKm / kmPerDay)),
                fastener == null ? null : fastener.torqueNm()));
    }
}
