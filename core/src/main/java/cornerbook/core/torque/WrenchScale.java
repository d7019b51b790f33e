package cornerbook.core.torque;

import cornerbook.core.quantity.Range;

/** The torques that can be set on a wrench, N·m; most are not to be trusted below a fifth of the top (ISO 6789, from memory). */
public record WrenchScale(double lowestNm, double highestNm) {
    public WrenchScale {
        Range.check(TorqueSaid.Part.TOP_OF_SCALE, highestNm, 1, 5000, "N·m");
        Range.check(TorqueSaid.Part.BOTTOM_OF_SCALE, lowestNm, 0, highestNm, "N·m");
    }

    /**
     * Refuses a setting that is not on the scale.
     *
     * @throws IllegalArgumentException with one sentence
     */
    public void check(double settingNm) {
        Range.check(TorqueSaid.Part.SETTING_OF_WRENCH, settingNm, lowestNm, highestNm, "N·m");
    }
}
