package cornerbook.app.desk.visit;

import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.Told;
import cornerbook.core.say.Amount;
import cornerbook.core.season.LikelyOdometer;
import cornerbook.core.season.judge.OdometerRange;
import cornerbook.words.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An odometer that was typed and that the car can hardly have: what was likely meant, each one tap; that it is so, one more;
 * or another value in the field, which is empty again.
 *
 * @param question one sentence, empty when nothing is asked
 * @param km what was typed, empty when nothing is asked
 * @param choices what was likely meant, then what was typed
 * @param ranBack whether it is less than at the visit before, as that of an odometer that was replaced
 */
public record AskedOdometer(String question, String km, List<Choice> choices, boolean ranBack) {
    static final AskedOdometer NONE = new AskedOdometer("", "", List.of(), false);

    /** Name of the form's field that says what was asked about. */
    private static final String FIELD = "asked";

    /** Name of the field for what an odometer read that was replaced. */
    static final String REPLACED = "replacedOdometer";

    /** Name of the buttons that answer. */
    private static final String TAKE = "take";

    private static final String KM = "km";

    /**
     * One answer.
     *
     * @param value for the field
     * @param likely whether it is what was likely meant; else it is what was typed
     */
    public record Choice(String value, String words, boolean likely) {}

    public AskedOdometer {
        choices = List.copyOf(choices);
    }

    /** The odometer of a form: what was tapped, else what stands in the field. */
    static String of(Form typed) {
        return typed.has(TAKE) ? typed.get(TAKE) : typed.get("odometer");
    }

    /** What to ask about a value; empty when it is credible, or was tapped or typed after it was asked about. */
    static Optional<AskedOdometer> of(Optional<OdometerRange> expected, double odometerKm, Form typed) {
        return expected.filter(range -> !range.contains(odometerKm)
                        && !String.valueOf(odometerKm).equals(typed.get(FIELD)))
                .map(range -> asked(range, odometerKm, EntryUnits.of(typed).system()));
    }

    private static AskedOdometer asked(OdometerRange range, double odometerKm, UnitSystem units) {
        var likely =
                LikelyOdometer.of(
                                units.in(odometerKm, KM),
                                units.in(range.lowestKm(), KM),
                                units.in(range.highestKm(), KM))
                        .stream()
                        .map(each -> choice(String.valueOf(Math.round(each.value())), units, each.slip()));
        var itself = choice(units.field(odometerKm, KM), units, null);
        return new AskedOdometer(
                Told.say(range.question()),
                String.valueOf(odometerKm),
                Stream.concat(likely, Stream.of(itself)).toList(),
                odometerKm < range.lowestKm());
    }

    /**
     * One answer.
     *
     * @param slip that would make it the true one; null for what was typed
     */
    private static Choice choice(String number, UnitSystem units, LikelyOdometer.@Nullable Slip slip) {
        var value = units.withUnit(number, KM);
        var said = Amount.of(Typed.valueOf(value, KM), KM);
        return new Choice(
                value,
                Told.say(slip == null ? new VisitSaid.ItIsSo(said) : new VisitSaid.Likely(said, slip)),
                slip != null);
    }

    public boolean asks() {
        return !question.isEmpty();
    }

    public String field() {
        return FIELD;
    }

    public String take() {
        return TAKE;
    }

    public String replaced() {
        return REPLACED;
    }
}
