package cornerbook.app.picture.brake;

import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.app.picture.Palette;
import cornerbook.core.brake.drag.AxleDrag;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.util.List;

/** How much warmer one disc of an axle is than the other, against what two good brakes may differ by and where one drags. */
public final class WarmerThanPartner {
    private WarmerThanPartner() {}

    public static String svg(AxleDrag drag, Reader reader) {
        var labels = reader.labels(BrakePads.ROOM);
        var colour = switch (drag.answer()) {
            case EVEN -> Palette.SLATE;
            case MAY_DRAG -> Palette.OCHRE;
            case DRAGS -> Palette.PLUM;
        };
        return BandOnScale.svg(
                labels.of("warmer", "hotter", drag.hotter(), "cooler", drag.cooler()),
                0,
                1.25 * Math.max(drag.differenceK(), AxleDrag.DRAGS_K),
                new Band(0, drag.differenceK(), colour),
                List.of(
                        new Mark(
                                AxleDrag.EVENLY_WARM_K,
                                Palette.OCHRE,
                                true,
                                labels.of("warm-alike", "difference", warmer(AxleDrag.EVENLY_WARM_K))),
                        new Mark(
                                AxleDrag.DRAGS_K,
                                Palette.PLUM,
                                true,
                                labels.of("one-drags", "difference", warmer(AxleDrag.DRAGS_K))),
                        new Mark(drag.differenceK(), colour, false, reader.say(warmer(drag.differenceK())))),
                reader);
    }

    private static Said warmer(double kelvin) {
        return new Margin(kelvin, "°C", 0, false);
    }
}
