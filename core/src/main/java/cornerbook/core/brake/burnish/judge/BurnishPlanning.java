package cornerbook.core.brake.burnish.judge;

import cornerbook.core.brake.burnish.BrakedCar;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.burnish.BurnishSaid;
import cornerbook.core.brake.burnish.BurnishStop;
import cornerbook.core.brake.burnish.BurnishTarget;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a burnish drive of one car is planned from: the car's data, or what somebody says where they are not known; null for what is
 * not known yet.
 *
 * @param frontShare share of the mass on the front axle
 * @param airC temperature of the air
 */
public record BurnishPlanning(
        Vehicle vehicle,
        @Nullable Double massKg,
        @Nullable Double frontShare,
        @Nullable Double frontDiscMassKg,
        @Nullable Double frontDiscDiameterMm,
        @Nullable Double rearDiscMassKg,
        @Nullable Double rearDiscDiameterMm,
        double airC) {
    private static final double FROM_KMH = 65;
    private static final double TO_KMH = 15;
    /** A moderate stop. Common practice, no source. */
    private static final double DECELERATION_M_PER_S2 = 3;
    /** Of a car's centre of gravity. Common practice, no source. */
    private static final double CENTRE_HEIGHT_MM = 550;
    /** Where it is not known. Common practice, no source. */
    private static final double USUAL_WHEELBASE_MM = 2700;
    /** Driver and fuel. Common practice, no source. */
    private static final double DRIVER_KG = 75;

    /** What is known of the car. */
    public static BurnishPlanning of(Vehicle vehicle, double airC) {
        var body = vehicle.details().body();
        var front = vehicle.front().brake().details();
        var rear = vehicle.rear().brake().details();
        return new BurnishPlanning(
                vehicle,
                body.kerbMassKg(),
                body.frontShare(),
                front.discMassKg(),
                front.discDiameterMm(),
                rear.discMassKg(),
                rear.discDiameterMm(),
                airC);
    }

    /** What is missing for a plan of these axles; empty when nothing is. */
    public List<Said> missing(Collection<Axle> axles) {
        var missing = new ArrayList<Said>();
        if (massKg == null) {
            missing.add(new BurnishSaid.KerbMass());
        }
        if (frontShare == null) {
            missing.add(new BurnishSaid.FrontAxleShare());
        }
        for (var axle : axles) {
            if (vehicle.axle(axle).brake().hasDrum()) {
                missing.add(new BurnishSaid.HasDrums(axle));
                continue;
            }
            if (discMassKg(axle) == null) {
                missing.add(new BurnishSaid.DiscMass(axle));
            }
            if (discDiameterMm(axle) == null) {
                missing.add(new BurnishSaid.DiscDiameter(axle));
            }
        }
        return missing;
    }

    /** Those with discs: drums are not burnished by a drive of their own. */
    public List<Axle> axles() {
        return Arrays.stream(Axle.values())
                .filter(axle -> vehicle.axle(axle).brake().hasDisc())
                .toList();
    }

    public @Nullable Double discMassKg(Axle axle) {
        return axle == Axle.FRONT ? frontDiscMassKg : rearDiscMassKg;
    }

    public @Nullable Double discDiameterMm(Axle axle) {
        return axle == Axle.FRONT ? frontDiscDiameterMm : rearDiscDiameterMm;
    }

    /** The car as it is driven: with driver and fuel; null when its mass is not known. */
    public @Nullable Double drivenMassKg() {
        return massKg == null ? null : (Double) (massKg + DRIVER_KG);
    }

    /** Share of the braking that the front axle takes in a moderate stop; null when the axles' loads are not known. */
    public @Nullable Double frontBrakingShare() {
        var wheelbaseMm = vehicle.details().body().wheelbaseMm();
        return frontShare == null
                ? null
                : (Double) BrakedCar.frontShareWhenBraking(
                        frontShare,
                        CENTRE_HEIGHT_MM,
                        wheelbaseMm == null ? USUAL_WHEELBASE_MM : wheelbaseMm,
                        DECELERATION_M_PER_S2);
    }

    /** Share of the braking that the car takes back by itself; 0 for one that does not regenerate. */
    public double usualRegenerationShare() {
        return vehicle.highVoltage()
                ? 1 - vehicle.details().use().exposure(0, true).frictionBrakeShare()
                : 0;
    }

    /**
     * The drive for the discs of one axle.
     *
     * @param regenerationShare 0 when regeneration is kept out
     * @throws Refused when something is missing or cannot be
     */
    public BurnishDrive drive(Axle axle, double regenerationShare) {
        var discMassKg = discMassKg(axle);
        var diameterMm = discDiameterMm(axle);
        var drivenMassKg = drivenMassKg();
        var brakingShare = frontBrakingShare();
        if (drivenMassKg == null || brakingShare == null || discMassKg == null || diameterMm == null) {
            throw new Refused(new BurnishSaid.PlanLacks(Listed.commas(missing(List.of(axle)))));
        }
        var brake = vehicle.axle(axle).brake();
        var car = new BrakedCar(
                drivenMassKg,
                BrakedCar.USUAL_ROTATING_MASS_FACTOR,
                brakingShare,
                TyreSize.parse(vehicle.axle(axle).tyreSize()).rollingCircumferenceMm() / 1000);
        var limitC = brake.details().discTemperatureLimitC();
        var everyday = BurnishTarget.everyday(airC);
        return BurnishDrive.of(
                car,
                DiscBody.castIron(discMassKg, diameterMm, brake.discNewMm() >= DiscBody.VENTED_FROM_MM),
                axle,
                new BurnishStop(FROM_KMH, TO_KMH, DECELERATION_M_PER_S2, regenerationShare),
                limitC == null ? everyday : everyday.withLimit(limitC));
    }
}
