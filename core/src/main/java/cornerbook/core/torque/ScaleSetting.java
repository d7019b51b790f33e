package cornerbook.core.torque;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What has to stand on a wrench's scale so that it clicks at a torque: that torque, and what the wrench shows too much
 * against its calibration.
 *
 * @param clickNm torque at which it shall click
 * @param offsetNm what its scale shows too much; negative when it shows too little
 * @param settingNm to be read on the scale
 */
public record ScaleSetting(
        WrenchScale scale, double clickNm, double offsetNm, double settingNm, List<Said> cautions, List<Step> steps)
        implements Explained {
    private static final double MOST_OFFSET_SHARE = 0.1;
    /** Below it most wrenches are not to be trusted (ISO 6789, from memory). */
    private static final double TRUSTED_FROM_SHARE = 0.2;

    public ScaleSetting {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /**
     * The setting.
     *
     * @param clickNm above 0
     * @param offsetNm within a tenth of the top of the scale
     * @throws IllegalArgumentException with one sentence when the setting is not on the scale
     */
    public static ScaleSetting of(WrenchScale scale, double clickNm, double offsetNm) {
        double mostNm = MOST_OFFSET_SHARE * scale.highestNm();
        check("offset of the wrench", offsetNm, -mostNm, mostNm, "N·m");
        double settingNm = clickNm + offsetNm;
        scale.check(settingNm);
        boolean trusted = settingNm >= TRUSTED_FROM_SHARE * scale.highestNm();
        return new ScaleSetting(
                scale,
                clickNm,
                offsetNm,
                settingNm,
                trusted
                        ? Said.verbatims()
                        : Said.verbatims("The setting lies in the lowest fifth of the scale: take a smaller wrench."),
                List.of(
                        new Step(
                                "to be read on this wrench",
                                "torque at the click + what it shows too much, %s N·m + %s N·m"
                                        .formatted(Step.digits(clickNm), Step.digits(offsetNm)),
                                settingNm,
                                "N·m",
                                "calibration of the wrench, as entered; the lowest fifth is not trusted (ISO 6789, from memory)")));
    }
}
