package cornerbook.app.bench;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.tyre.CircumferenceDifference;
import cornerbook.core.tyre.CircumferenceDifference.Kind;
import cornerbook.core.tyre.TyreSize;
import cornerbook.words.Shown;
import java.util.List;
import java.util.regex.Pattern;

/** How far the tyres of an axle or of all four wheels differ, against the car's own kind of limit. */
final class TyreDifferenceGroup {
    private static final Pattern LEFT_OF_NEW = Pattern.compile("(.+?)\\s+of\\s+(.+)");

    static final Group GROUP = new Group(
            "circumference",
            "Difference on an axle or between the axles",
            "The limit is the car maker's, in its own kind: of circumference or of tread depth. A measured circumference outranks the computed one.",
            List.of(
                    new Ask(
                            "worn",
                            "Size, and tread",
                            new Ask.Several("225/55R18=5.5 of 8 mm", 4),
                            "A tyre and its tread: what is left of what it was new, as 225/55R18=\"5.5 of 8 mm\", or what is gone, as 225/55R18=\"2.5 mm\"; two to four times.",
                            "worn tyre"),
                    Ask.quantity(
                            "circumference-limit",
                            "Limit of circumference",
                            "mm",
                            "limit of the circumference",
                            "Largest difference of circumference that the car's maker allows."),
                    Ask.quantity(
                            "tread-limit",
                            "Or limit of tread",
                            "mm",
                            "limit of the tread",
                            "Largest difference of tread depth that the car's maker allows; one of the two limits.")),
            List.of("worn"),
            TyreDifferenceGroup::answer);

    private TyreDifferenceGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("worn", "circumference-limit", "tread-limit")) {
            return List.of();
        }
        boolean byTread = given.any("tread-limit");
        if (byTread && given.any("circumference-limit")) {
            throw new AskException(
                    "tread-limit", "limit is given of circumference and of tread, expected one of the two");
        }
        var tyres =
                given.several("worn").stream().map(text -> worn(given, text)).toList();
        var result = CircumferenceDifference.of(
                tyres,
                byTread ? Kind.TREAD : Kind.CIRCUMFERENCE,
                given.quantity(byTread ? "tread-limit" : "circumference-limit"));
        return List.of(new Part("circumference", lines(result, given.shown()), result));
    }

    private static List<String> lines(CircumferenceDifference result, Shown shown) {
        var within = result.within() ? "within" : "above";
        return result.kind() == Kind.TREAD
                ? List.of(
                        "Treads differ by %.1f mm, %s the limit of %.1f mm"
                                .formatted(result.treadDifferenceMm(), within, result.limitMm()),
                        "That is %s of rolling circumference".formatted(shown.show(result.differenceMm(), "mm")))
                : List.of(
                        "Rolling circumferences differ by %s, %s the limit of %s"
                                .formatted(
                                        shown.show(result.differenceMm(), "mm"),
                                        within,
                                        shown.show(result.limitMm(), "mm")),
                        "Tread gone differs by %.1f mm".formatted(result.treadDifferenceMm()));
    }

    private static CircumferenceDifference.Worn worn(Given given, String text) {
        int at = text.indexOf('=');
        if (at < 0) {
            throw new IllegalArgumentException(
                    "worn tyre is \"%s\", expected its size and the depth worn off as in 225/55R18=2 mm, or left as in 225/55R18=5.5 of 8 mm"
                            .formatted(text));
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
            throw new IllegalArgumentException(
                    "worn tyre has %s, expected no more tread left than new".formatted(Quoted.of(text)));
        }
        return newMm - leftMm;
    }
}
