package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.torque.TorqueSaid.Label;
import cornerbook.core.torque.TorqueSaid.Part;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
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
        WrenchScale scale, double clickNm, double offsetNm, double settingNm, Explanation explanation)
        implements Explained {
    private static final double MOST_OFFSET_SHARE = 0.1;
    /** Below it most wrenches are not to be trusted (ISO 6789, from memory). */
    private static final double TRUSTED_FROM_SHARE = 0.2;

    /**
     * The setting.
     *
     * @param clickNm above 0
     * @param offsetNm within a tenth of the top of the scale
     * @throws IllegalArgumentException with one sentence when the setting is not on the scale
     */
    public static ScaleSetting of(WrenchScale scale, double clickNm, double offsetNm) {
        double mostNm = MOST_OFFSET_SHARE * scale.highestNm();
        check(Part.OFFSET_OF_WRENCH, offsetNm, -mostNm, mostNm, "N·m");
        double settingNm = clickNm + offsetNm;
        scale.check(settingNm);
        boolean trusted = settingNm >= TRUSTED_FROM_SHARE * scale.highestNm();
        return new ScaleSetting(
                scale,
                clickNm,
                offsetNm,
                settingNm,
                new Explanation(
                        trusted ? List.of() : List.of(TorqueSaid.Caution.LOWEST_FIFTH),
                        List.of(new Step(
                                Label.TO_READ_ON_WRENCH,
                                new TorqueSaid.SettingFormula(
                                        Amount.significant(clickNm, "N·m", 4), Amount.significant(offsetNm, "N·m", 4)),
                                settingNm,
                                "N·m",
                                Label.SETTING_SOURCE))));
    }
}
