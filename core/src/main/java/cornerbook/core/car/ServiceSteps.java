package cornerbook.core.car;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.ServiceSaid.LubricantKind;
import cornerbook.core.car.ServiceSaid.LubricantPlace;
import cornerbook.core.car.ServiceSaid.LubricantReason;
import cornerbook.core.car.ServiceSaid.ServiceCaution;
import cornerbook.core.car.ServiceStep.Lubricant;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The work at one car in its order, with the cautions and lubricants that fit what the car has. The vehicle
 * manufacturer's procedure outranks it. Sources: dust, 29 CFR 1910.1001 App. F; yearly cleaning, lift-off of friction material and
 * uneven wear, service literature; which grease goes where, closing and pumping: common practice, no source. 12 V battery: asleep for
 * 40 minutes before the standby current, cable out and five minutes before a terminal of an electric car, negative first and last,
 * never charged when frozen, gas and eyes: vehicle makers' and battery makers' manuals; lithium not below 0 °C: charger and
 * battery makers; AGM by its own program and charging by the converter: common practice, no source.
 */
public final class ServiceSteps {
    private ServiceSteps() {}

    /** Those at a corner of an axle that ask for a reading. */
    public static List<ServiceStep> atCorner(Vehicle vehicle, Axle axle) {
        return steps(vehicle, Measure.Carrier.CORNER, axle);
    }

    /** Those of the whole car that ask for a reading, or for care. */
    public static List<ServiceStep> ofVehicle(Vehicle vehicle) {
        return steps(vehicle, Measure.Carrier.VEHICLE, null);
    }

    private static List<ServiceStep> steps(Vehicle vehicle, Measure.Carrier carrier, @Nullable Axle axle) {
        return Arrays.stream(WorkStep.values())
                .map(step -> new ServiceStep(
                        step,
                        step.measures(carrier, vehicle, axle),
                        cautions(step, vehicle),
                        step == WorkStep.CLEANED_AND_LUBRICATED && axle != null
                                ? lubricants(vehicle.axle(axle).brake())
                                : List.of()))
                .filter(step -> !step.measures().isEmpty() || (axle == null && isCareOnly(step)))
                .toList();
    }

    /** What is minded before the brakes is minded in every car that has it, whether or not something is recorded. */
    private static boolean isCareOnly(ServiceStep step) {
        return step.step() == WorkStep.BEFORE_THE_BRAKES && !step.cautions().isEmpty();
    }

    /** What to mind in a step, gravest first. */
    public static List<Said> cautions(WorkStep step, Vehicle vehicle) {
        return switch (step) {
            case BEFORE_THE_BRAKES -> beforeTheBrakes(vehicle);
            case LOOK_OVER -> List.of(ServiceCaution.DAMAGED_STUD_STOPS);
            case PADS_AND_MOVEMENT -> List.of(ServiceCaution.DUST);
            case PISTON_AND_HARDWARE -> List.of(ServiceCaution.FLUID_RISES);
            case HUB_AND_DISC_APART -> List.of(ServiceCaution.DIAL_AT_SAME_RADIUS);
            case CLEANED_AND_LUBRICATED -> List.of(ServiceCaution.DUST, ServiceCaution.GRINDING);
            case REPLACED -> List.of(ServiceCaution.BOTH_SIDES_TOGETHER);
            case CLOSED -> List.of(ServiceCaution.BOLTS_USED_ONCE);
            case PEDAL_AND_PARKING_BRAKE -> List.of(ServiceCaution.PUMP_THE_PEDAL);
            case AFTER_THE_DRIVE -> List.of(ServiceCaution.HOT_DISCS);
            case BATTERY -> battery(vehicle);
            case BATTERY_CHARGED -> chargedBattery(vehicle);
            default -> List.of();
        };
    }

    private static List<Said> beforeTheBrakes(Vehicle vehicle) {
        var cautions = new ArrayList<Said>();
        if (vehicle.electric()) {
            cautions.add(ServiceCaution.HIGH_VOLTAGE);
        }
        if (vehicle.hasElectricParkingBrake()) {
            cautions.add(ServiceCaution.SERVICE_MODE_FIRST);
            cautions.add(ServiceCaution.SUPPORT_12_V);
        }
        return cautions;
    }

    private static List<Said> battery(Vehicle vehicle) {
        return vehicle.electric()
                ? List.of(ServiceCaution.LET_IT_SLEEP, ServiceCaution.STANDBY_ASLEEP, ServiceCaution.TERMINALS_ELECTRIC)
                : List.of(ServiceCaution.LET_IT_REST, ServiceCaution.STANDBY_ASLEEP, ServiceCaution.TERMINALS);
    }

    private static List<Said> chargedBattery(Vehicle vehicle) {
        var cautions = new ArrayList<Said>();
        var chemistry = vehicle.battery().chemistry();
        if (chemistry == Chemistry.LITHIUM) {
            cautions.add(ServiceCaution.LITHIUM_ABOVE_ZERO);
        } else {
            cautions.add(ServiceCaution.NEVER_CHARGE_FROZEN);
            cautions.add(ServiceCaution.CHARGING_GAS);
        }
        if (chemistry == Chemistry.AGM) {
            cautions.add(ServiceCaution.CHARGER_FOR_AGM);
        }
        if (vehicle.electric()) {
            cautions.add(ServiceCaution.CHARGED_BY_CONVERTER);
        }
        return cautions;
    }

    /** Where the kind of an electric parking brake is not known, its motor may press there. */
    private static boolean motorPressesPads(BrakeSpecification brake) {
        var kind = brake.details().parkingBrake();
        return brake.electricParkingBrake() && (kind == null || kind == BrakeDetails.ParkingBrake.MOTOR_ON_CALIPER);
    }

    private static List<Lubricant> lubricants(BrakeSpecification brake) {
        var lubricants = new ArrayList<Lubricant>();
        lubricants.add(
                brake.caliper() == BrakeSpecification.Caliper.SLIDING
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
        lubricants.add(new Lubricant(
                LubricantPlace.FRICTION_FACES, LubricantKind.NOTHING, LubricantReason.TAKES_BRAKING_AWAY));
        return lubricants;
    }
}
