package cornerbook.core.car;

import cornerbook.core.say.Said;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.ServiceStep.Lubricant;
import cornerbook.core.corner.Axle;
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
    private static final Said DUST = Said.verbatim("Wet the dust, catch it and wipe it up; never blow it off.");
    private static final Said GRINDING =
            Said.verbatim("Grinding or wire brush: goggles that seal and a shield, guard on, wheel rated for the speed; goggles stay on until the dust is wiped up.");
    private static final Said FLUID_RISES = Said.verbatim("Pistons that go back lift the fluid in the reservoir: watch its level.");
    private static final Said HIGH_VOLTAGE =
            Said.verbatim("Orange cables are high voltage: damaged cable, dented pack or isolation warning, do not go on; call a high-voltage qualified person.");
    private static final Said SUPPORT_12_V = Said.verbatim("Support the 12 V battery while the service mode lasts.");

    private ServiceSteps() {}

    /** Before a wheel or a caliper comes off. */
    public static List<ServiceStep> before(Vehicle vehicle) {
        if (!hasElectricParkingBrake(vehicle)) {
            return vehicle.electric()
                    ? List.of(step("Before the brakes", List.of(), List.of(HIGH_VOLTAGE)))
                    : List.of();
        }
        var cautions = new ArrayList<Said>();
        if (vehicle.electric()) {
            cautions.add(HIGH_VOLTAGE);
        }
        cautions.add(Said.verbatim("Parking brake in service mode before a caliper comes off or a piston moves."));
        cautions.add(SUPPORT_12_V);
        return List.of(step("Parking brake: service mode", List.of(Measure.PARKING_BRAKE_IN_SERVICE_MODE), cautions));
    }

    /** At each corner of an axle. */
    public static List<ServiceStep> atCorner(Vehicle vehicle, Axle axle) {
        var brake = vehicle.axle(axle).brake();
        boolean sliding = brake.caliper() == BrakeSpecification.Caliper.SLIDING;
        var pins = sliding ? Measure.SLIDE_PIN_MOVEMENT : Measure.RETAINING_PIN_MOVEMENT;
        return List.of(
                step("Pads and movement", List.of(Measure.PAD_THICKNESS, Measure.PAD_MOVEMENT, pins), List.of(DUST)),
                step(
                        "Disc",
                        List.of(Measure.DISC_THICKNESS, Measure.DISC_RUNOUT, Measure.DISC_THICKNESS_VARIATION),
                        List.of()),
                rare(
                        "Pads closely",
                        List.of(Measure.PAD_THICKNESS_TRAILING, Measure.PAD_WEAR_INDICATOR, Measure.PAD_EDGE_LIFT),
                        List.of()),
                rare(
                        "Piston and hardware",
                        List.of(
                                Measure.PISTON_MOVEMENT,
                                Measure.PISTON_RETURN,
                                Measure.BRAKE_HARDWARE,
                                Measure.BRAKE_BOOTS),
                        List.of(FLUID_RISES)),
                rare(
                        "Swept faces",
                        List.of(Measure.DISC_RUST, Measure.DISC_PITTING, Measure.DISC_LIP, Measure.DISC_CRACKS),
                        List.of()),
                rare(
                        "Hub and disc apart",
                        List.of(
                                Measure.HUB_RUNOUT,
                                Measure.HUB_DIAL_RADIUS,
                                Measure.DISC_DIAL_RADIUS,
                                Measure.DISC_RUNOUT_MOVED,
                                Measure.DISC_MOVED_BY),
                        Said.verbatims("Faces clean, all nuts at torque, the dial at the same radius each time.")),
                new ServiceStep(
                        Said.verbatim("Cleaned and lubricated"),
                        List.of(
                                Measure.BRACKET_CLEANED,
                                Measure.PIN_LUBRICANT,
                                Measure.ABUTMENT_LUBRICANT,
                                Measure.PAD_MOVEMENT_AFTER_SERVICE),
                        List.of(DUST, GRINDING),
                        lubricants(sliding, motorPressesPads(brake)),
                        true),
                rare(
                        "Replaced",
                        List.of(Measure.PADS_REPLACED, Measure.DISC_REPLACED, Measure.BRAKE_HARDWARE_REPLACED),
                        Said.verbatims("Pads and discs on both sides of an axle together.")),
                rare(
                        "Closed",
                        List.of(Measure.CALIPER_CLOSED, Measure.BRACKET_BOLTS_TORQUED),
                        Said.verbatims("Bolts that the manufacturer uses once are replaced.")));
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
                        "Pedal and parking brake",
                        Stream.concat(Stream.of(Measure.PEDAL_PUMPED), parking.stream())
                                .toList(),
                        Said.verbatims("Pump the pedal until it is hard before the car moves, then look at the fluid level.")),
                step(
                        "Brake fluid",
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
                                "slide pins", "rubber-safe grease", "mineral grease swells the boots and bushings")
                        : new Lubricant("retaining pins", "metal-contact paste, thin", "metal slides on metal"));
        lubricants.add(new Lubricant(
                "abutments, after their rust is off",
                "metal-contact paste, thin",
                "metal slides on metal, and the paste keeps salt water out"));
        lubricants.add(new Lubricant("boots and piston seal", "rubber-safe grease", "they are rubber"));
        lubricants.add(
                parkingBrakeMotor
                        ? new Lubricant(
                                "pad backs",
                                "nothing",
                                "the motor of the parking brake presses there and must not slip")
                        : new Lubricant("pad backs", "only what the maker of the pads asks for", "paste carries dirt"));
        lubricants.add(new Lubricant("friction faces", "nothing", "grease there takes the braking away"));
        return lubricants;
    }

    private static ServiceStep step(String title, List<Measure> measures, List<Said> cautions) {
        return new ServiceStep(Said.verbatim(title), measures, cautions, List.of(), false);
    }

    private static ServiceStep rare(String title, List<Measure> measures, List<Said> cautions) {
        return new ServiceStep(Said.verbatim(title), measures, cautions, List.of(), true);
    }
}
