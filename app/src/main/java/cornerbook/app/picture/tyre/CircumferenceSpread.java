package cornerbook.app.picture.tyre;

import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.app.picture.Palette;
import cornerbook.words.Shown;
import cornerbook.core.tyre.CircumferenceDifference;
import java.util.List;

/** How far the rolling circumferences or treads of a car's tyres lie apart, against their limit. */
public final class CircumferenceSpread {
    private CircumferenceSpread() {}

    public static String svg(CircumferenceDifference difference, Shown shown) {
        var colour = difference.within() ? Palette.SLATE : Palette.PLUM;
        return BandOnScale.svg(
                "Difference against its limit",
                0,
                1.25 * Math.max(difference.comparedMm(), difference.limitMm()),
                new Band(0, difference.comparedMm(), colour),
                List.of(
                        new Mark(
                                difference.limitMm(),
                                Palette.OCHRE,
                                true,
                                "limit " + shown.show(difference.limitMm(), "mm")),
                        new Mark(
                                difference.comparedMm(),
                                colour,
                                false,
                                "apart " + shown.show(difference.comparedMm(), "mm"))));
    }
}
