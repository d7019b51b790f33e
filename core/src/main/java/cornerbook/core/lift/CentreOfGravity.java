package cornerbook.core.lift;

import cornerbook.core.say.Refused;

import java.util.List;

/**
 * Mass and centre of gravity of a car with some parts off: moments about the front axle and the car's middle line.
 * Source: statics.
 *
 * @param totalKg of what is left
 * @param leftOfCentreMm to the right negative
 */
public record CentreOfGravity(double totalKg, double behindFrontAxleMm, double leftOfCentreMm) {
    /** Refuses parts that weigh as much as the car. */
    public static CentreOfGravity of(CarMass car, List<PartOff> off) {
        double totalKg = car.frontKg() + car.rearKg();
        double momentX = car.rearKg() * car.wheelbaseMm();
        double momentY = totalKg * (car.leftShare() - 0.5) * car.trackMm();
        for (var part : off) {
            totalKg -= part.massKg();
            momentX -= part.massKg() * part.behindFrontAxleMm();
            momentY -= part.massKg() * part.leftOfCentreMm();
        }
        if (totalKg <= 0) {
            throw new Refused(LiftSaid.Sentence.PARTS_TOO_HEAVY);
        }
        return new CentreOfGravity(totalKg, momentX / totalKg, momentY / totalKg);
    }

    /** How far it lies inside the polygon of the points, mm; negative outside, where the car would tip. */
    public double marginMm(LiftPoints points) {
        return points.marginMm(behindFrontAxleMm, leftOfCentreMm);
    }
}
