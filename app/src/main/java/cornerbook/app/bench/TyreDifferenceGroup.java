package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Example;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.CircumferenceDifference;
import cornerbook.core.tyre.CircumferenceDifference.Kind;
import cornerbook.core.tyre.TyreSaid;
import cornerbook.core.tyre.TyreSize;
import java.util.List;
import java.util.regex.Pattern;

/** How far the tyres of an axle or of all four wheels differ, against the car's own kind of limit. */
final class TyreDifferenceGroup {
    private static final Pattern LEFT_OF_NEW = Pattern.compile("(.+?)\\s+(?:of|de|sur)\\s+(.+)");

    static final Group GROUP = new Group(
            "circumference",
            Title.TYRE_CIRCUMFERENCE,
            Note.TYRE_CIRCUMFERENCE,
            List.of(
                    new Ask(
                            "worn",
                            Label.TYRE_WORN,
                            new Ask.Several(Example.WORN, 4),
                            Help.TYRE_WORN,
                            TyreSaid.Input.TYRES),
                    Ask.quantity(
                            "circumference-limit",
                            Label.TYRE_CIRCUMFERENCE_LIMIT,
                            "mm",
                            TyreSaid.Input.CIRCUMFERENCE_LIMIT,
                            Help.TYRE_CIRCUMFERENCE_LIMIT),
                    Ask.quantity(
                            "tread-limit",
                            Label.TYRE_TREAD_LIMIT,
                            "mm",
                            TyreSaid.Input.TREAD_LIMIT,
                            Help.TYRE_TREAD_LIMIT)),
            List.of("worn"),
            TyreDifferenceGroup::answer);

    private TyreDifferenceGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("worn", "circumference-limit", "tread-limit")) {
            return List.of();
        }
        boolean byTread = given.any("tread-limit");
        if (byTread && given.any("circumference-limit")) {
            throw AskException.unread("tread-limit", RefusalSaid.Plainly.TWO_LIMITS);
        }
        var tyres = given.several("worn", text -> worn(given, text));
        var result = CircumferenceDifference.of(
                tyres,
                byTread ? Kind.TREAD : Kind.CIRCUMFERENCE,
                given.quantity(byTread ? "tread-limit" : "circumference-limit"));
        return List.of(new Part("circumference", lines(given, result), result));
    }

    private static List<Said> lines(Given given, CircumferenceDifference result) {
        var difference = given.told(result.differenceMm(), "mm");
        var tread = new Amount(result.treadDifferenceMm(), "mm", 1);
        return result.kind() == Kind.TREAD
                ? List.of(
                        new AnswerSaid.TreadsDiffer(tread, result.within(), new Amount(result.limitMm(), "mm", 1)),
                        new AnswerSaid.ThatIsCircumference(difference))
                : List.of(
                        new AnswerSaid.CircumferencesDiffer(
                                difference, result.within(), given.told(result.limitMm(), "mm")),
                        new AnswerSaid.TreadGoneDiffers(tread));
    }

    private static CircumferenceDifference.Worn worn(Given given, String text) {
        int at = text.indexOf('=');
        if (at < 0) {
            throw new Refused(new RefusalSaid.WornUnread(Quoted.of(text)));
        }
        return new CircumferenceDifference.Worn(
                TyreSize.parse(text.substring(0, at)), goneMm(given, text.substring(at + 1)));
    }

    /** The unit may stand behind both depths or behind the last. */
    private static double goneMm(Given given, String text) {
        var left = LEFT_OF_NEW.matcher(text.strip());
        if (!left.matches()) {
            return given.quantity(text, "mm");
        }
        double newMm = given.quantity(left.group(2), "mm");
        var unit = left.group(2).replaceFirst("^[^a-zA-Z\"]*", "");
        double leftMm = given.quantity(
                left.group(1).matches(".*[a-zA-Z\"].*") ? left.group(1) : left.group(1) + " " + unit, "mm");
        if (leftMm > newMm) {
            throw new Refused(new RefusalSaid.MoreLeftThanNew(Quoted.of(text)));
        }
        return newMm - leftMm;
    }
}
