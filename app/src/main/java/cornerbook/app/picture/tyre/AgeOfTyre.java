package cornerbook.app.picture.tyre;

import cornerbook.words.Reader;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.app.picture.Palette;
import cornerbook.core.tyre.TyreAge;
import java.util.List;

/** A tyre's age in years against those from which it is inspected and at which it is replaced. */
public final class AgeOfTyre {
    static final String ROOM = "app/picture/tyre";

    private AgeOfTyre() {}

    public static String svg(TyreAge age, Reader reader) {
        var labels = reader.labels(ROOM);
        var rule = age.rule();
        var colour = switch (age.answer()) {
            case YOUNG -> Palette.SLATE;
            case INSPECT -> Palette.OCHRE;
            case REPLACE -> Palette.PLUM;
        };
        return BandOnScale.svg(
                labels.of("age"),
                0,
                1.25 * Math.max(age.ageYears(), rule.replaceYears()),
                new Band(0, age.ageYears(), colour),
                List.of(
                        new Mark(
                                rule.inspectYears(),
                                Palette.OCHRE,
                                true,
                                labels.of("inspect", "years", new Amount(rule.inspectYears(), "", 0))),
                        new Mark(
                                rule.replaceYears(), Palette.PLUM, true, labels.of("replace", "years", new Amount(rule.replaceYears(), "", 0))),
                        new Mark(age.ageYears(), colour, false, labels.of("years", "years", new Amount(age.ageYears(), "", 1)))),
                reader);
    }
}
