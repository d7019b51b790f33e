package cornerbook.app.desk.burnish;

import cornerbook.app.picture.brake.TemperatureOverTime;
import cornerbook.app.request.Told;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The burnish drive of one visit.
 *
 * @param fields what the plan is made from: the car's data, or what was typed
 * @param units name of the units of bare numbers in the fields
 * @param missing what has to be typed before there is a plan
 * @param problem why what was typed gives no plan, may be empty
 * @param drives one for each axle; empty until nothing is missing and all of it can be
 * @param regenerating the same where the car regenerates as usual; null for one that does not
 */
public record BurnishPage(
        CarHistory history,
        Visit visit,
        List<Field> fields,
        String units,
        List<String> missing,
        String problem,
        List<BurnishDrive> drives,
        @Nullable BurnishDrive regenerating) {
    public BurnishPage {
        fields = List.copyOf(fields);
        missing = List.copyOf(missing);
        drives = List.copyOf(drives);
    }

    /**
     * One thing that the plan is made from.
     *
     * @param error one sentence, empty when it can be
     */
    public record Field(String key, String label, String unit, String typed, String error) {}

    public String picture(BurnishDrive drive) {
        return TemperatureOverTime.svg(drive, Told.reader());
    }

    /** What to mind on either axle, each sentence once. */
    public List<String> cautions() {
        return drives.stream()
                .flatMap(drive -> drive.cautions().stream())
                .map(Told::say)
                .distinct()
                .toList();
    }

    /** The drive that suits both axles, for a person to follow. */
    public Said drive() {
        return new BurnishSaid.Drive(
                Amount.of(drives.getFirst().stop().fromKmh(), "km/h"),
                Amount.of(drives.getFirst().stop().toKmh(), "km/h"),
                stops(),
                new Amount(Math.ceil(spacingS()), "s", 0),
                (int) Math.ceil(coolDownMinutes()));
    }

    /** Temperature of the disc at the last stop. */
    public Amount peak(BurnishDrive drive) {
        return Amount.of(drive.plan().peaksC().getLast(), "°C");
    }

    /** By how much a stop heats the disc. */
    public Margin rise(BurnishDrive drive) {
        return new Margin(drive.plan().risePerStopK(), "°C", 0, false);
    }

    private double coolDownMinutes() {
        return drives.stream()
                        .mapToDouble(drive -> drive.plan().coolDownS())
                        .max()
                        .orElse(0)
                / 60;
    }

    /** The axle whose discs bind the drive: the slower to reach the band. */
    private int stops() {
        return drives.stream().mapToInt(drive -> drive.plan().stops()).max().orElse(0);
    }

    /** The longest of the spacings: neither axle gets hotter than with its own. */
    private double spacingS() {
        return drives.stream()
                .mapToDouble(drive -> drive.plan().spacingS())
                .max()
                .orElse(0);
    }
}
