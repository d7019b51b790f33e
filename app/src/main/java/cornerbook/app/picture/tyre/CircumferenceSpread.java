package cornerbook.app.picture.tyre;

import cornerbook.core.say.Amount;
import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.app.picture.Palette;
import cornerbook.words.Reader;
import cornerbook.core.tyre.CircumferenceDifference;
import java.util.List;

/** How far the rolling circumferences or treads of a car's tyres lie apart, against their limit. */
public final class CircumferenceSpread {
    private CircumferenceSpread() {}

    public static String svg(CircumferenceDifference difference, Reader reader) {
        var labels = reader.labels(AgeOfTyre.ROOM);
        var colour = difference.within() ? Palette.SLATE : Palette.PLUM;
        return BandOnScale.svg(
                labels.of("difference"),
                0,
                1.25 * Math.max(difference.comparedMm(), difference.limitMm()),
                new Band(0, difference.comparedMm(), colour),
                List.of(
                        new Mark(
                                difference.limitMm(),
                                Palette.OCHRE,
                                true,
                                labels.of("limit", "limit", new Amount(difference.limitMm(), "mm", 0))),
                        new Mark(
                                difference.comparedMm(),
                                colour,
                                false,
                                labels.of("apart", "apart", new Amount(difference.comparedMm(), "mm", 0)))),
                reader);
    }
}
