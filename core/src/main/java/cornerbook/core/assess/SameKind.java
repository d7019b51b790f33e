package cornerbook.core.assess;

import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Vin;
import cornerbook.core.lift.CarBody;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Cars of one kind, whose data one may be given from another, as a proposal to be checked with the manufacturer's data. By the VIN:
 * positions 1 to 8 name maker, model, body, restraint and engine, position 10 the model year (ISO 3779; 49 CFR 565.15). Else by the
 * name: make and model, its first two words.
 */
public final class SameKind {
    private static final int WORDS_OF_KIND = 2;

    private SameKind() {}

    /** By what two cars are taken for one kind, surest first. */
    public enum Sign {
        VIN,
        NAME
    }

    /** Why two cars are taken for one kind; empty when nothing says so. Two VINs that are told apart outrank a name. */
    public static Optional<Sign> sign(Vehicle car, Vehicle other) {
        var vin = vin(car.vin());
        var otherVin = vin(other.vin());
        if (vin.isPresent() && otherVin.isPresent()) {
            return vin.get().isOfSameKind(otherVin.get()) ? Optional.of(Sign.VIN) : Optional.empty();
        }
        var kind = kind(car.name());
        return kind.size() == WORDS_OF_KIND && kind.equals(kind(other.name()))
                ? Optional.of(Sign.NAME)
                : Optional.empty();
    }

    private static Optional<Vin> vin(@Nullable String written) {
        try {
            return Optional.ofNullable(written).map(Vin::parse);
        } catch (IllegalArgumentException unread) {
            return Optional.empty();
        }
    }

    /** "Fjordling Volta, blue" is a Fjordling Volta. */
    private static List<String> kind(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .limit(WORDS_OF_KIND)
                .toList();
    }

    /**
     * A car with what is not known of it taken from one of its kind. What is of the single car stays: its place, its use, the days on
     * which its battery was fitted and its fluid changed. What the placard asks is taken only where both ask for the same size.
     *
     * @param copiedFrom the other as people call it
     */
    public static Vehicle complete(Vehicle car, Vehicle other, String copiedFrom) {
        return new Vehicle(
                car.id(),
                car.name(),
                car.plate(),
                car.vin(),
                first(car.drive(), other.drive()),
                first(car.drivesElectric(), other.drivesElectric()),
                car.jurisdiction(),
                axle(car.front(), other.front()),
                axle(car.rear(), other.rear()),
                first(car.fastener(), other.fastener()),
                first(car.battery(), battery(other.battery())),
                first(car.brakeFluid(), other.brakeFluid()),
                details(car.details(), other.details(), copiedFrom));
    }

    private static <T> @Nullable T first(@Nullable T known, @Nullable T other) {
        return known == null ? other : known;
    }

    private static AxleSpecification axle(AxleSpecification axle, AxleSpecification other) {
        boolean sameSize = axle.tyreSize().equalsIgnoreCase(other.tyreSize());
        return new AxleSpecification(
                first(axle.axleLoadKg(), other.axleLoadKg()),
                axle.tyreSize(),
                first(axle.loadIndex(), sameSize ? other.loadIndex() : null),
                first(axle.speedSymbol(), sameSize ? other.speedSymbol() : null),
                first(axle.placardPressureKpa(), sameSize ? other.placardPressureKpa() : null),
                axle.brake().isKnown() ? axle.brake() : other.brake());
    }

    private static @Nullable TwelveVoltBattery battery(@Nullable TwelveVoltBattery other) {
        return other == null
                ? null
                : new TwelveVoltBattery(
                        other.chemistry(),
                        other.ratedCapacityAh(),
                        other.ratedCrankingCurrentA(),
                        other.ratingStandard(),
                        null,
                        other.chargeBelowV());
    }

    private static VehicleDetails details(VehicleDetails known, VehicleDetails other, String copiedFrom) {
        return new VehicleDetails(
                known.differences().equals(DifferenceLimits.NOT_KNOWN) ? other.differences() : known.differences(),
                known.use(),
                known.body().equals(CarBody.NOT_KNOWN) ? other.body() : known.body(),
                new FluidChange(
                        known.fluidChange().changedOn(),
                        first(
                                known.fluidChange().intervalYears(),
                                other.fluidChange().intervalYears())),
                known.pressureWarning().kind() == null ? other.pressureWarning() : known.pressureWarning(),
                first(known.mounting(), other.mounting()),
                new VehicleDetails.Unseen(
                        first(known.hybrid(), other.hybrid()),
                        first(known.unseen().brakesByWire(), other.unseen().brakesByWire())),
                copiedFrom);
    }
}
