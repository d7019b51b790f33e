package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.car.Tyre;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tread.AlignmentSaid;
import cornerbook.core.tread.AxleAlignment;
import cornerbook.core.tread.AxleAlignment.Life;
import cornerbook.core.tread.TreadAcross;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What the wear across the two tyres of an axle points to, and what it costs. */
final class TyreAlignmentGroup {
    private static final String DEPTH = "(\\d[\\d.,/]*)";
    private static final Pattern ACROSS =
            Pattern.compile(DEPTH + "[\\s;]+" + DEPTH + "[\\s;]+" + DEPTH + "(\\s*(?:mm|in|\"))?");

    static final Group GROUP = new Group(
            "alignment",
            Title.TYRE_ALIGNMENT,
            Note.TYRE_ALIGNMENT,
            List.of(
                    Ask.words("left-tread", Label.TYRE_LEFT_TREAD, "4.1 6.0 6.3 mm", Help.TYRE_TREAD_ACROSS),
                    Ask.words("right-tread", Label.TYRE_RIGHT_TREAD, "4.1 6.0 6.3 mm", Help.TYRE_TREAD_ACROSS),
                    Ask.quantity(
                            "new-tread",
                            Label.TYRE_NEW_TREAD,
                            "mm",
                            AlignmentSaid.Input.NEW_TREAD,
                            new Otherwise(Help.TYRE_NEW_TREAD, Amount.of(Tyre.USUAL_NEW_DEPTH_MM, "mm"))),
                    Ask.quantity(
                            "end-tread",
                            Label.TYRE_END_TREAD,
                            "mm",
                            AlignmentSaid.Input.END_TREAD,
                            new Otherwise(Help.TYRE_END_TREAD, Amount.of(AxleAlignment.USUAL_END_MM, "mm"))),
                    Ask.quantity("run", Label.TYRE_RUN, "km", AlignmentSaid.Input.RUN, Help.TYRE_RUN)),
            List.of("left-tread", "right-tread"),
            TyreAlignmentGroup::answer);

    private TyreAlignmentGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("left-tread", "right-tread", "run")) {
            return List.of();
        }
        var left = given.reading("left-tread", text -> across(given, text));
        var right = given.reading("right-tread", text -> across(given, text));
        var life = new Life(
                given.quantity("new-tread", Tyre.USUAL_NEW_DEPTH_MM),
                given.quantity("end-tread", AxleAlignment.USUAL_END_MM),
                given.find("run"));
        var alignment = given.at("new-tread", () -> AxleAlignment.of(left, right, life));
        return List.of(new Part("alignment", lines(given, alignment), alignment));
    }

    /** The unit may stand behind the last. */
    private static TreadAcross across(Given given, String text) {
        var match = ACROSS.matcher(text.strip());
        if (!match.matches()) {
            throw new Refused(new RefusalSaid.AcrossUnread(Quoted.of(text)));
        }
        var unit = match.group(4) == null ? "" : match.group(4);
        return new TreadAcross(
                given.quantity(match.group(1) + unit, "mm"),
                given.quantity(match.group(2) + unit, "mm"),
                given.quantity(match.group(3) + unit, "mm"));
    }

    private static List<Said> lines(Given given, AxleAlignment alignment) {
        if (!alignment.named()) {
            return List.of(new AnswerSaid.NothingPointedTo());
        }
        var lines = new ArrayList<Said>();
        lines.add(new AnswerSaid.PointedTo(
                new AlignmentSaid.PointsTo(alignment.cause()), new Chance(alignment.chance())));
        var stillGoes = alignment.stillGoes();
        if (stillGoes != null) {
            lines.add(new AnswerSaid.GoesOn(
                    hundreds(given, stillGoes.asItIsKm()), hundreds(given, stillGoes.setRightKm())));
        }
        return lines;
    }

    /** Nobody knows it to the kilometre. */
    private static Said hundreds(Given given, double km) {
        return given.told(100 * Math.rint(km / 100), "km");
    }
}
