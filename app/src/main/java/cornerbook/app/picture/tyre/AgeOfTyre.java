package cornerbook.app.picture.tyre;

import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.app.picture.Palette;
import cornerbook.core.tyre.TyreAge;
import java.util.List;

/** A tyre's age in years against those from which it is inspected and at which it is replaced. */
public final class AgeOfTyre {
    private AgeOfTyre() {}

    public static String svg(TyreAge age) {
        var rule = age.rule();
        var colour = switch (age.answer()) {
            case YOUNG -> Palette.SLATE;
            case INSPECT -> Palette.OCHRE;
            case REPLACE -> Palette.PLUM;
        };
        return BandOnScale.svg(
                "Age of the tyre in years",
                0,
                1.25 * Math.max(age.ageYears(), rule.replaceYears()),
                new Band(0, age.ageYears(), colour),
                List.of(
                        new Mark(
                                rule.inspectYears(),
                                Palette.OCHRE,
                                true,
                                "inspect %.0f".formatted(rule.inspectYears())),
                        new Mark(
                                rule.replaceYears(), Palette.PLUM, true, "replace %.0f".formatted(rule.replaceYears())),
                        new Mark(age.ageYears(), colour, false, "%.1f years".formatted(age.ageYears()))));
    }
}
