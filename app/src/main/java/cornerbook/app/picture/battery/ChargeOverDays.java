package cornerbook.app.picture.battery;

import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.battery.ParkedDays;
import cornerbook.words.UnitSystem;
import java.util.List;

/** Charge of the 12 V battery over the days that the car is parked, down to the reserve for electronics and contactors. */
public final class ChargeOverDays {
    private static final double PERCENT = 100;
    private static final double ROOM = 1.3;

    private ChargeOverDays() {}

    /** The picture. */
    public static String svg(ParkedDays parked) {
        double emptyDays = parked.chargeAfter(1) < parked.charge()
                ? parked.charge() / (parked.charge() - parked.chargeAfter(1))
                : 1;
        double lastDay = ROOM * (parked.days() > 0 ? parked.days() : emptyDays);
        return new Plot(
                        "Charge over the days parked",
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, 0, lastDay, "", UnitSystem.METRIC),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, 0, PERCENT, "", UnitSystem.METRIC),
                        List.of(
                                new Legend(
                                        Mark.DOT,
                                        Palette.SLATE,
                                        "%.0f %% when parked".formatted(parked.charge() * PERCENT)),
                                new Legend(
                                        Mark.DIAMOND,
                                        Palette.PLUM,
                                        "at the reserve after %.0f days".formatted(parked.days())),
                                new Legend(Mark.AREA, Palette.INK, "reserve for electronics and contactors")))
                .areaBelow(ParkedDays.RESERVE * PERCENT)
                .axes("days parked, without converter", "charge, %")
                .curve(0, lastDay, day -> parked.chargeAfter(day) * PERCENT, Palette.OCHRE)
                .drop(parked.days(), parked.chargeAfter(parked.days()) * PERCENT, Palette.PLUM)
                .point(Mark.DIAMOND, parked.days(), parked.chargeAfter(parked.days()) * PERCENT, Palette.PLUM)
                .point(Mark.DOT, 0, parked.charge() * PERCENT, Palette.SLATE)
                .close();
    }
}
