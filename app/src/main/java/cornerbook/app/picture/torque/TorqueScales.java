package cornerbook.app.picture.torque;

import cornerbook.core.say.Between;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.core.torque.ScaleSetting;
import cornerbook.core.torque.TorqueBar;
import cornerbook.core.torque.WrenchCalibration;
import cornerbook.words.Reader;
import cornerbook.app.picture.Palette;
import java.util.List;

/** Torques and days on a scale: the wrench's setting, the bar's band, the time to the next calibration. */
public final class TorqueScales {
    private static final String UNIT = "N·m";

    private TorqueScales() {}

    /** The wrench's scale with the torque at the click and what has to stand on it. */
    public static String of(ScaleSetting setting, Reader reader) {
        var labels = reader.labels(ClampLoadBar.ROOM);
        return BandOnScale.svg(
                labels.of(
                        "wrench-scale",
                        "scale",
                        new Between(setting.scale().lowestNm(), setting.scale().highestNm(), UNIT, 0)),
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
                                labels.of("clicks-at", "torque", Amount.of(setting.clickNm(), UNIT))),
                        new Mark(
                                setting.settingNm(),
                                Palette.OCHRE,
                                false,
                                labels.of("set", "torque", Amount.of(setting.settingNm(), UNIT)))),
                reader);
    }

    /** The band in which a bar ends, against the torque asked. */
    public static String of(TorqueBar bar, Reader reader) {
        var labels = reader.labels(ClampLoadBar.ROOM);
        double most = 1.1 * Math.max(bar.askedNm(), bar.mostNm());
        return BandOnScale.svg(
                labels.of("bar"),
                0,
                most,
                new Band(bar.leastNm(), bar.mostNm(), bar.fits() ? Palette.OCHRE : Palette.PLUM),
                List.of(
                        new Mark(bar.askedNm(), Palette.SLATE, true, labels.of("asked", "torque", Amount.of(bar.askedNm(), UNIT))),
                        new Mark(
                                (bar.leastNm() + bar.mostNm()) / 2,
                                bar.fits() ? Palette.OCHRE : Palette.PLUM,
                                false,
                                reader.say(new Between(bar.leastNm(), bar.mostNm(), UNIT, 0)))),
                reader);
    }

    /** The days from the last calibration to the next, with the day asked. */
    public static String of(WrenchCalibration calibration, Reader reader) {
        var labels = reader.labels(ClampLoadBar.ROOM);
        double from = calibration.calibratedOn().toEpochDay();
        double due = calibration.dueOn().toEpochDay();
        double asked = calibration.askedOn().toEpochDay();
        var colour = calibration.due() ? Palette.PLUM : Palette.OCHRE;
        return BandOnScale.svg(
                labels.of(
                        "calibrated", "day", calibration.calibratedOn(), "n", calibration.cyclesLeft()),
                from,
                Math.max(due, asked) + 30,
                new Band(from, Math.min(asked, due), colour),
                List.of(
                        new Mark(due, Palette.SLATE, true, labels.of("due", "day", calibration.dueOn())),
                        new Mark(asked, colour, false, labels.of("today", "day", calibration.askedOn()))),
                reader);
    }
}
