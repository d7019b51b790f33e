package cornerbook.core.lift.judge;

import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Judgement;
import cornerbook.core.tool.ShopTool;

/**
 * Finding on the car on the hoist of a visit: hoist, arms and adapters against their ratings with all pads bearing evenly,
 * with the wheels on and, when their mass is known, off. Unsafe only when one of these is passed, or the centre of gravity lies
 * outside the lift points. That an arm would pass its rating with one pad bearing nothing is a caution with its number; so is a
 * thin margin, and a ceiling that ends the lift early. Whether car and arms get under and over each other. What is not known is
 * said, and the rest judged. A visit that names no hoist gives none. The plates of hoist and arms and the vehicle
 * manufacturer's lift points outrank it.
 */
public final class LiftFindings {
    private LiftFindings() {}

    public static Judgement judge(Case given) {
        return given.visit()
                .card()
                .findTool(ShopTool.Kind.HOIST)
                .map(tool -> onHoist(given.vehicle(), tool))
                .orElse(Judgement.NONE);
    }

    /** The car on a hoist, chosen or only thought of; nothing of a tool that is no hoist. */
    public static Judgement onHoist(Vehicle vehicle, ShopTool tool) {
        return tool.findHoist()
                .map(hoist -> new CarOnHoist(vehicle.details().body(), tool, hoist).judge())
                .orElse(Judgement.NONE);
    }
}
