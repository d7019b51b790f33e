package cornerbook.core.torque;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        double torqueNm,
        double lengthMm,
        double adapterMm,
        double angleDeg,
        double settingNm,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final List<Said> CAUTIONS = Said.verbatims(
            "Hold the wrench in the middle of its grip: elsewhere the adapter's correction is another one.",
            "A wrench that clicks without turning the fastener has not measured: slacken it and tighten anew.");

    public WrenchSetting {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /**
     * The setting.
     *
     * @param torqueNm asked at the fastener, 1 to 1000 N·m
     * @param lengthMm 100 to 2000 mm
     * @param adapterMm 0 to 1000 mm
     * @param angleDeg 0 to 180 degrees
     */
    public static WrenchSetting of(double torqueNm, double lengthMm, double adapterMm, double angleDeg) {
        check("torque", torqueNm, 1, 1000, "N·m");
        check("wrench length", lengthMm, 100, 2000, "mm");
        check("adapter length", adapterMm, 0, 1000, "mm");
        check("adapter angle", angleDeg, 0, 180, "°");
        double reachMm = lengthMm + adapterMm * Math.cos(Math.toRadians(angleDeg));
        if (reachMm < lengthMm / 2) {
            throw new IllegalArgumentException(
                    "adapter of %.0f mm at %.0f° takes more than half of the wrench's %.0f mm, expected a shorter one or another angle"
                            .formatted(adapterMm, angleDeg, lengthMm));
        }
        double settingNm = torqueNm * lengthMm / reachMm;
        var step = new Step(
                "setting of the wrench",
                "T L / (L + A cos θ), T = %s N·m, L = %s mm, A = %s mm, θ = %s°"
                        .formatted(
                                Step.digits(torqueNm),
                                Step.digits(lengthMm),
                                Step.digits(adapterMm),
                                Step.digits(angleDeg)),
                settingNm,
                "N·m",
                "moments about the fastener; in line needs the correction, 90° none");
        return new WrenchSetting(torqueNm, lengthMm, adapterMm, angleDeg, settingNm, CAUTIONS, List.of(step));
    }
}
