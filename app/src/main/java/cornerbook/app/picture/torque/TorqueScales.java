package cornerbook.app.picture.torque;

import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.core.torque.ScaleSetting;
import cornerbook.core.torque.TorqueBar;
import cornerbook.core.torque.WrenchCalibration;
import cornerbook.words.Shown;
import cornerbook.app.picture.Palette;
import java.time.LocalDate;
import java.util.List;

/** Torques and days on a scale: the wrench's setting, the bar's band, the time to the next calibration. */
public final class TorqueScales {
    private static final String UNIT = "N·m";

    private TorqueScales() {}

    /** The wrench's scale with the torque at the click and what has to stand on it. */
    public static String of(ScaleSetting setting, Shown shown) {
        return BandOnScale.svg(
                "Scale of the wrench, %s to %s"
                        .formatted(
                                shown.show(setting.scale().lowestNm(), UNIT),
                                shown.show(setting.scale().highestNm(), UNIT)),
                setting.scale().lowestNm(),
                setting.scale().highestNm(),
                new Band(
                        Math.min(setting.clickNm(), setting.settingNm()),
                        Math.max(setting.clickNm(), setting.settingNm()),
                        Palette.OCHRE),
                List.of(
                        new Mark(
                                setting.clickNm(),
                                Palette.SLATE,
                                true,
                                "clicks at " + shown.show(setting.clickNm(), UNIT)),
                        new Mark(
                                setting.settingNm(),
                                Palette.OCHRE,
                                false,
                                "set " + shown.show(setting.settingNm(), UNIT))));
    }

    /** The band in which a bar ends, against the torque asked. */
    public static String of(TorqueBar bar, Shown shown) {
        double most = 1.1 * Math.max(bar.askedNm(), bar.mostNm());
        return BandOnScale.svg(
                "The bar ends in a band",
                0,
                most,
                new Band(bar.leastNm(), bar.mostNm(), bar.fits() ? Palette.OCHRE : Palette.PLUM),
                List.of(
                        new Mark(bar.askedNm(), Palette.SLATE, true, "asked " + shown.show(bar.askedNm(), UNIT)),
                        new Mark(
                                (bar.leastNm() + bar.mostNm()) / 2,
                                bar.fits() ? Palette.OCHRE : Palette.PLUM,
                                false,
                                "%s to %s"
                                        .formatted(shown.show(bar.leastNm(), UNIT), shown.show(bar.mostNm(), UNIT)))));
    }

    /** The days from the last calibration to the next, with the day asked. */
    public static String of(WrenchCalibration calibration) {
        double from = calibration.calibratedOn().toEpochDay();
        double due = calibration.dueOn().toEpochDay();
        double asked = calibration.askedOn().toEpochDay();
        var colour = calibration.due() ? Palette.PLUM : Palette.OCHRE;
        return BandOnScale.svg(
                "Calibrated %s, %d clicks left".formatted(calibration.calibratedOn(), calibration.cyclesLeft()),
                from,
                Math.max(due, asked) + 30,
                new Band(from, Math.min(asked, due), colour),
                List.of(
                        new Mark(due, Palette.SLATE, true, "due " + LocalDate.ofEpochDay((long) due)),
                        new Mark(asked, colour, false, "today " + calibration.askedOn())));
    }
}
