package cornerbook.app.picture.battery;

import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.Axis;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Plot;
import cornerbook.app.picture.Plot.Legend;
import cornerbook.app.picture.Plot.Mark;
import cornerbook.core.battery.ParkedDays;
import java.util.List;

/** Charge of the 12 V battery over the days that the car is parked, down to the reserve for electronics and contactors. */
public final class ChargeOverDays {
    private static final double PERCENT = 100;
    private static final double ROOM = 1.3;

    private ChargeOverDays() {}

    /** The picture. */
    public static String svg(ParkedDays parked, Reader reader) {
        var labels = reader.labels(BatteryOverVisits.ROOM);
        double emptyDays = parked.chargeAfter(1) < parked.charge()
                ? parked.charge() / (parked.charge() - parked.chargeAfter(1))
                : 1;
        double lastDay = ROOM * (parked.days() > 0 ? parked.days() : emptyDays);
        return new Plot(
                        labels.of("charge-over-days"),
                        new Axis(Plot.LEFT_X, Plot.RIGHT_X, 0, lastDay, "", reader),
                        new Axis(Plot.BOTTOM_Y, Plot.TOP_Y, 0, PERCENT, "", reader),
                        List.of(
                                new Legend(
                                        Mark.DOT,
                                        Palette.SLATE,
                                        labels.of("when-parked", "charge", Amount.of(parked.charge() * PERCENT, "%"))),
                                new Legend(
                                        Mark.DIAMOND,
                                        Palette.PLUM,
                                        labels.of("at-the-reserve", "n", Math.round(parked.days()))),
                                new Legend(Mark.AREA, Palette.INK, labels.of("reserve"))))
                .areaBelow(ParkedDays.RESERVE * PERCENT)
                .axes(labels.of("days-parked"), labels.of("charge-axis"))
                .curve(0, lastDay, day -> parked.chargeAfter(day) * PERCENT, Palette.OCHRE)
                .drop(parked.days(), parked.chargeAfter(parked.days()) * PERCENT, Palette.PLUM)
                .point(Mark.DIAMOND, parked.days(), parked.chargeAfter(parked.days()) * PERCENT, Palette.PLUM)
                .point(Mark.DOT, 0, parked.charge() * PERCENT, Palette.SLATE)
                .close();
    }
}
