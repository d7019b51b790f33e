package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid.Part;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What to set on a torque wrench so that the fastener gets the torque asked: setting = T L / (L + A cos θ), from the moments
 * about the fastener and about the wrench's drive. Exact for a hand at the middle of the grip.
 *
 * @param lengthMm L, middle of the grip to the middle of the drive
 * @param adapterMm A, middle of the drive to the middle of the fastener; 0 without an adapter
 * @param angleDeg θ: 0 when the adapter lengthens the wrench, 90 square to it, 180 when it points back to the hand
 */
public record WrenchSetting(
        double torqueNm, double lengthMm, double adapterMm, double angleDeg, double settingNm, Explanation explanation)
        implements Explained {
    private static final List<Said> CAUTIONS =
            List.of(TorqueSaid.Caution.HOLD_IN_THE_MIDDLE, TorqueSaid.Caution.CLICKS_WITHOUT_TURNING);

    /**
     * The setting.
     *
     * @param torqueNm asked at the fastener, 1 to 1000 N·m
     * @param lengthMm 100 to 2000 mm
     * @param adapterMm 0 to 1000 mm
     * @param angleDeg 0 to 180 degrees
     */
    public static WrenchSetting of(double torqueNm, double lengthMm, double adapterMm, double angleDeg) {
        check(Part.TORQUE, torqueNm, 1, 1000, "N·m");
        check(Part.WRENCH_LENGTH, lengthMm, 100, 2000, "mm");
        check(Part.ADAPTER_LENGTH, adapterMm, 0, 1000, "mm");
        check(Part.ADAPTER_ANGLE, angleDeg, 0, 180, "°");
        double reachMm = lengthMm + adapterMm * Math.cos(Math.toRadians(angleDeg));
        if (reachMm < lengthMm / 2) {
            throw new Refused(new TorqueSaid.AdapterTooLong(
                    new Amount(adapterMm, "mm", 0), new Amount(angleDeg, "°", 0), new Amount(lengthMm, "mm", 0)));
        }
        double settingNm = torqueNm * lengthMm / reachMm;
        var step = new Step(
                TorqueSaid.Label.SETTING,
                Formula.of(
                        "T L / (L + A cos θ), T = {}, L = {}, A = {}, θ = {}",
                        Amount.significant(torqueNm, "N·m", 4),
                        Amount.significant(lengthMm, "mm", 4),
                        Amount.significant(adapterMm, "mm", 4),
                        Amount.significant(angleDeg, "°", 4)),
                settingNm,
                "N·m",
                TorqueSaid.Label.MOMENTS);
        return new WrenchSetting(
                torqueNm, lengthMm, adapterMm, angleDeg, settingNm, new Explanation(CAUTIONS, List.of(step)));
    }
}
