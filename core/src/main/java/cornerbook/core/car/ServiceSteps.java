package cornerbook.core.car;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.ServiceSaid.LubricantKind;
import cornerbook.core.car.ServiceSaid.LubricantPlace;
import cornerbook.core.car.ServiceSaid.LubricantReason;
import cornerbook.core.car.ServiceSaid.ServiceCaution;
import cornerbook.core.car.ServiceSaid.ServiceTitle;
import cornerbook.core.car.ServiceStep.Lubricant;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The work at the brakes of one car in its order, with the cautions and lubricants that fit what the car has. The vehicle
 * manufacturer's procedure outranks it. Sources: dust, 29 CFR 1910.1001 App. F; yearly cleaning, lift-off of friction material and
 * uneven wear, service literature; which grease goes where, closing and pumping: common practice, no source.
 */
public final class ServiceSteps {
    private ServiceSteps() {}

    /** Before a wheel or a caliper comes off. */
    public static List<ServiceStep> before(Vehicle vehicle) {
        if (!hasElectricParkingBrake(vehicle)) {
            return vehicle.electric()
                    ? List.of(step(ServiceTitle.BEFORE_THE_BRAKES, List.of(), List.of(ServiceCaution.HIGH_VOLTAGE)))
                    : List.of();
        }
        var cautions = new ArrayList<Said>();
        if (vehicle.electric()) {
            cautions.add(ServiceCaution.HIGH_VOLTAGE);
        }
        cautions.add(ServiceCaution.SERVICE_MODE_FIRST);
        cautions.add(ServiceCaution.SUPPORT_12_V);
        return List.of(step(ServiceTitle.SERVICE_MODE, List.of(Measure.PARKING_BRAKE_IN_SERVICE_MODE), cautions));
    }

    /** At each corner of an axle. */
    public static List<ServiceStep> atCorner(Vehicle vehicle, Axle axle) {
        var brake = vehicle.axle(axle).brake();
        boolean sliding = brake.caliper() == BrakeSpecification.Caliper.SLIDING;
        var pins = sliding ? Measure.SLIDE_PIN_MOVEMENT : Measure.RETAINING_PIN_MOVEMENT;
        return List.of(
                step(
                        ServiceTitle.PADS_AND_MOVEMENT,
                        List.of(Measure.PAD_THICKNESS, Measure.PAD_MOVEMENT, pins),
                        List.of(ServiceCaution.DUST)),
                step(
                        ServiceTitle.DISC,
                        List.of(Measure.DISC_THICKNESS, Measure.DISC_RUNOUT, Measure.DISC_THICKNESS_VARIATION),
                        List.of()),
                rare(
                        ServiceTitle.PADS_CLOSELY,
                        List.of(Measure.PAD_THICKNESS_TRAILING, Measure.PAD_WEAR_INDICATOR, Measure.PAD_EDGE_LIFT),
                        List.of()),
                rare(
                        ServiceTitle.PISTON_AND_HARDWARE,
                        List.of(
                                Measure.PISTON_MOVEMENT,
                                Measure.PISTON_RETURN,
                                Measure.BRAKE_HARDWARE,
                                Measure.BRAKE_BOOTS),
                        List.of(ServiceCaution.FLUID_RISES)),
                rare(
                        ServiceTitle.SWEPT_FACES,
                        List.of(Measure.DISC_RUST, Measure.DISC_PITTING, Measure.DISC_LIP, Measure.DISC_CRACKS),
                        List.of()),
                rare(
                        ServiceTitle.HUB_AND_DISC_APART,
                        List.of(
                                Measure.HUB_RUNOUT,
                                Measure.HUB_DIAL_RADIUS,
                                Measure.DISC_DIAL_RADIUS,
                                Measure.DISC_RUNOUT_MOVED,
                                Measure.DISC_MOVED_BY),
                        List.of(ServiceCaution.DIAL_AT_SAME_RADIUS)),
                new ServiceStep(
                        ServiceTitle.CLEANED_AND_LUBRICATED,
                        List.of(
                                Measure.BRACKET_CLEANED,
                                Measure.PIN_LUBRICANT,
                                Measure.ABUTMENT_LUBRICANT,
                                Measure.PAD_MOVEMENT_AFTER_SERVICE),
                        List.of(ServiceCaution.DUST, ServiceCaution.GRINDING),
                        lubricants(sliding, motorPressesPads(brake)),
                        true),
                rare(
                        ServiceTitle.REPLACED,
                        List.of(Measure.PADS_REPLACED, Measure.DISC_REPLACED, Measure.BRAKE_HARDWARE_REPLACED),
                        List.of(ServiceCaution.BOTH_SIDES_TOGETHER)),
                rare(
                        ServiceTitle.CLOSED,
                        List.of(Measure.CALIPER_CLOSED, Measure.BRACKET_BOLTS_TORQUED),
                        List.of(ServiceCaution.BOLTS_USED_ONCE)));
    }

    /** After the last caliper is closed, before the car moves. */
    public static List<ServiceStep> after(Vehicle vehicle) {
        var parking = new ArrayList<Measure>();
        if (hasElectricParkingBrake(vehicle)) {
            parking.add(Measure.PARKING_BRAKE_CYCLED);
        }
        parking.add(Measure.PARKING_BRAKE_HOLDING);
        return List.of(
                step(
                        ServiceTitle.PEDAL_AND_PARKING_BRAKE,
                        Stream.concat(Stream.of(Measure.PEDAL_PUMPED), parking.stream())
                                .toList(),
                        List.of(ServiceCaution.PUMP_THE_PEDAL)),
                step(
                        ServiceTitle.BRAKE_FLUID,
                        List.of(
                                Measure.BRAKE_FLUID_BOILING_POINT,
                                Measure.BRAKE_FLUID_WATER,
                                Measure.BRAKE_FLUID_REPLACED),
                        List.of()));
    }

    /** The measures that the brakes of this axle cannot have, as the slide pins of a fixed caliper. */
    public static Set<Measure> impossible(Vehicle vehicle, Axle axle) {
        return vehicle.axle(axle).brake().caliper() == BrakeSpecification.Caliper.SLIDING
                ? Set.of(Measure.RETAINING_PIN_MOVEMENT)
                : Set.of(Measure.SLIDE_PIN_MOVEMENT);
    }

    private static boolean hasElectricParkingBrake(Vehicle vehicle) {
        return vehicle.front().brake().electricParkingBrake()
                || vehicle.rear().brake().electricParkingBrake();
    }

    /** Where the kind of an electric parking brake is not known, its motor may press there. */
    private static boolean motorPressesPads(BrakeSpecification brake) {
        var kind = brake.details().parkingBrake();
        return brake.electricParkingBrake() && (kind == null || kind == BrakeDetails.ParkingBrake.MOTOR_ON_CALIPER);
    }

    private static List<Lubricant> lubricants(boolean sliding, boolean parkingBrakeMotor) {
        var lubricants = new ArrayList<Lubricant>();
        lubricants.add(
                sliding
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
                parkingBrakeMotor
                        ? new Lubricant(
                                LubricantPlace.PAD_BACKS, LubricantKind.NOTHING, LubricantReason.MOTOR_PRESSES_THERE)
                        : new Lubricant(
                                LubricantPlace.PAD_BACKS,
                                LubricantKind.AS_THE_PAD_MAKER_ASKS,
                                LubricantReason.PASTE_CARRIES_DIRT));
        lubricants.add(new Lubricant(
                LubricantPlace.FRICTION_FACES, LubricantKind.NOTHING, LubricantReason.TAKES_BRAKING_AWAY));
        return lubricants;
    }

    private static ServiceStep step(ServiceTitle title, List<Measure> measures, List<Said> cautions) {
        return new ServiceStep(title, measures, cautions, List.of(), false);
    }

    private static ServiceStep rare(ServiceTitle title, List<Measure> measures, List<Said> cautions) {
        return new ServiceStep(title, measures, cautions, List.of(), true);
    }
}
