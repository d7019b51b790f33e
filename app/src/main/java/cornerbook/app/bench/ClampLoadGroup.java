package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Example;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.torque.ClampLoad;
import cornerbook.core.torque.FrictionBand;
import cornerbook.core.torque.PropertyClass;
import cornerbook.core.torque.ScrewThread;
import cornerbook.core.torque.SeatFace;
import cornerbook.core.torque.ShortForm;
import cornerbook.core.torque.ThreadState;
import cornerbook.core.torque.TorqueSaid;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** What a torque does to a wheel fastener. */
final class ClampLoadGroup {
    private static final Pattern BETWEEN = Pattern.compile("\\s+(?:(?:to|à)\\s+)?|\\s*–\\s*");
    private static final double N_PER_KN = 1000;

    static final Group GROUP = new Group(
            "clamp-load",
            Title.TORQUE_CLAMP_LOAD,
            Note.TORQUE_CLAMP_LOAD,
            List.of(
                    Ask.words("thread", Label.TORQUE_THREAD, "M14×1.5", Help.TORQUE_THREAD),
                    Ask.choice(
                            "class",
                            Label.TORQUE_CLASS,
                            Arrays.stream(PropertyClass.values())
                                    .map(each -> new Ask.Option(each.toString(), Said.verbatim(each.toString())))
                                    .toList(),
                            Help.TORQUE_CLASS),
                    Ask.choice(
                            "on-thread",
                            Label.TORQUE_ON_THREAD,
                            Arrays.stream(ThreadState.values())
                                    .map(each -> new Ask.Option(each.word(), each))
                                    .toList(),
                            Help.TORQUE_ON_THREAD),
                    Ask.quantity(
                            "seat-diameter",
                            Label.TORQUE_SEAT_DIAMETER,
                            "mm",
                            TorqueSaid.Part.MEAN_DIAMETER_OF_SEAT,
                            Help.TORQUE_SEAT_DIAMETER),
                    Ask.quantity("cone", Label.TORQUE_CONE, "°", TorqueSaid.Part.INCLUDED_ANGLE, Help.TORQUE_CONE),
                    Ask.quantity("ball", Label.TORQUE_BALL, "mm", TorqueSaid.Part.RADIUS_OF_BALL, Help.TORQUE_BALL),
                    new Ask(
                            "friction",
                            Label.TORQUE_FRICTION,
                            new Ask.Words(Example.FRICTION, false),
                            Help.TORQUE_FRICTION,
                            null)),
            List.of("torque", "thread", "class"),
            ClampLoadGroup::clampLoad);

    private ClampLoadGroup() {}

    private static List<Part> clampLoad(Given given) {
        if (!given.any("thread", "class", "on-thread", "seat-diameter", "cone", "ball", "friction")) {
            return List.of();
        }
        double torqueNm = given.quantity("torque");
        var thread = given.reading("thread", ScrewThread::parse);
        var strength = given.reading("class", PropertyClass::parse);
        var friction = given.findReading("friction", ClampLoadGroup::friction).orElse(FrictionBand.DRY);
        var load = ClampLoad.of(thread, strength, seat(given, thread), friction, torqueNm);
        var state = given.findReading("on-thread", ThreadState::parse).orElse(ThreadState.DRY);
        var shortForm = ShortForm.of(thread, strength, state, torqueNm);
        return List.of(
                Part.of(
                        "clampLoad",
                        load,
                        new AnswerSaid.Clamps(
                                thread.toString(),
                                strength.told(),
                                Amount.significant(friction.lowest(), "", 4),
                                Amount.significant(friction.highest(), "", 4),
                                new Between(load.leastN() / N_PER_KN, load.mostN() / N_PER_KN, "kN", 0),
                                new Between(load.leastShareOfProof() * 100, load.mostShareOfProof() * 100, "%", 0))),
                Part.of(
                        "shortForm",
                        shortForm,
                        new AnswerSaid.ClampsByShortForm(
                                shortForm.state(),
                                new Between(shortForm.leastN() / N_PER_KN, shortForm.mostN() / N_PER_KN, "kN", 0),
                                Amount.of(shortForm.mostShareOfProof() * 100, "%"))));
    }

    private static SeatFace seat(Given given, ScrewThread thread) {
        double meanMm = given.quantity("seat-diameter", SeatFace.usualMeanDiameterMm(thread));
        if (given.any("cone") && given.any("ball")) {
            throw AskException.unread("ball", RefusalSaid.Plainly.CONE_AND_BALL);
        }
        if (given.any("cone")) {
            return SeatFace.cone(meanMm, given.quantity("cone"));
        }
        return given.any("ball") ? SeatFace.ball(meanMm, given.quantity("ball")) : new SeatFace(meanMm, 1);
    }

    private static FrictionBand friction(String text) {
        var ends = BETWEEN.splitAsStream(text.replace(',', '.')).toList();
        try {
            return new FrictionBand(Double.parseDouble(ends.getFirst()), Double.parseDouble(ends.get(1)));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw new Refused(new RefusalSaid.FrictionUnread(Quoted.of(text)));
        }
    }
}
