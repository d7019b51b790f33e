package cornerbook.core.car;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.ServiceSaid.LubricantKind;
import cornerbook.core.car.ServiceSaid.LubricantPlace;
import cornerbook.core.car.ServiceSaid.LubricantReason;
import cornerbook.core.car.ServiceStep.Lubricant;
import cornerbook.core.corner.Axle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The work at one car in its order, with the lubricants that fit what the car has and what is to be minded ({@link Caution}). The
 * vehicle manufacturer's procedure outranks it. Sources: yearly cleaning, lift-off of friction material and uneven wear, service
 * literature; which grease goes where, closing and pumping: common practice, no source.
 */
public final class ServiceSteps {
    private static final List<Lubricant> AT_SHOES = List.of(
            new Lubricant(LubricantPlace.SHOE_RESTS, LubricantKind.METAL_CONTACT_PASTE, LubricantReason.METAL_ON_METAL),
            new Lubricant(LubricantPlace.ADJUSTER, LubricantKind.METAL_CONTACT_PASTE, LubricantReason.METAL_ON_METAL));

    private static final Lubricant BARE_FACES =
            new Lubricant(LubricantPlace.FRICTION_FACES, LubricantKind.NOTHING, LubricantReason.TAKES_BRAKING_AWAY);

    private ServiceSteps() {}

    /** Those at a corner of an axle that ask for a reading. */
    public static List<ServiceStep> atCorner(Vehicle vehicle, Axle axle) {
        return steps(vehicle, Measure.Carrier.CORNER, axle);
    }

    /** Those of the whole car that ask for a reading, and what is minded before the brakes, whether or not something is recorded. */
    public static List<ServiceStep> ofVehicle(Vehicle vehicle) {
        return steps(vehicle, Measure.Carrier.VEHICLE, null);
    }

    private static List<ServiceStep> steps(Vehicle vehicle, Measure.Carrier carrier, @Nullable Axle axle) {
        var said = EnumSet.noneOf(Caution.class);
        return Arrays.stream(WorkStep.values())
                .filter(step -> !step.measures(carrier, vehicle, axle).isEmpty()
                        || (axle == null && step == WorkStep.BEFORE_THE_BRAKES))
                .map(step -> new ServiceStep(
                        step,
                        step.measures(carrier, vehicle, axle),
                        Caution.at(step, vehicle).stream().filter(said::add).toList(),
                        step == WorkStep.CLEANED_AND_LUBRICATED && axle != null
                                ? lubricants(vehicle.axle(axle).brake())
                                : List.of()))
                .toList();
    }

    /** Where the kind of an electric parking brake is not known, its motor may press there. */
    private static boolean motorPressesPads(BrakeSpecification brake) {
        var kind = brake.details().parkingBrake();
        return brake.electricParkingBrake() && (kind == null || kind == BrakeDetails.ParkingBrake.MOTOR_ON_CALIPER);
    }

    private static List<Lubricant> lubricants(BrakeSpecification brake) {
        if (brake.hasDrum()) {
            return Stream.concat(AT_SHOES.stream(), Stream.of(BARE_FACES)).toList();
        }
        var lubricants = new ArrayList<Lubricant>();
        lubricants.add(
                brake.mayHaveCaliper(BrakeSpecification.Caliper.SLIDING)
                        ? new Lubricant(
                                LubricantPlace.SLIDE_PINS,
                                LubricantKind.RUBBER_SAFE_GREASE,
                                LubricantReason.MINERAL_GREASE_SWELLS)
                        : new Lubricant(
                                LubricantPlace.RETAINING_PINS,
                                LubricantKind.METAL_CONTACT_PASTE,
                                LubricantReason.METAL_ON_METAL));
        lubricants.add(new Lubricant(
                LubricantPlace.ABUTMENTS, LubricantKind.METAL_CONTACT_PASTE, LubricantReason.METAL_ON_METAL_AND_SALT));
        lubricants.add(new Lubricant(
                LubricantPlace.BOOTS_AND_PISTON_SEAL, LubricantKind.RUBBER_SAFE_GREASE, LubricantReason.RUBBER));
        lubricants.add(
                motorPressesPads(brake)
                        ? new Lubricant(
                                LubricantPlace.PAD_BACKS, LubricantKind.NOTHING, LubricantReason.MOTOR_PRESSES_THERE)
                        : new Lubricant(
                                LubricantPlace.PAD_BACKS,
                                LubricantKind.AS_THE_PAD_MAKER_ASKS,
                                LubricantReason.PASTE_CARRIES_DIRT));
        if (brake.hasParkingShoes()) {
            lubricants.addAll(AT_SHOES);
        }
        lubricants.add(BARE_FACES);
        return lubricants;
    }
}
