package cornerbook.app.bench;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.torque.ClampLoad;
import cornerbook.core.torque.FrictionBand;
import cornerbook.core.torque.PropertyClass;
import cornerbook.core.torque.ScrewThread;
import cornerbook.core.torque.SeatFace;
import cornerbook.core.torque.ShortForm;
import cornerbook.core.torque.ThreadState;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** What a torque does to a wheel fastener. */
final class ClampLoadGroup {
    private static final Pattern BETWEEN = Pattern.compile("\\s+(?:to\\s+)?|\\s*–\\s*");
    private static final double N_PER_KN = 1000;

    static final Group GROUP = new Group(
            "clamp-load",
            "Clamp load",
            "The maker's torque holds for the thread that the maker names, clean and dry as a rule. Nothing here offers another one.",
            List.of(
                    Ask.words("thread", "Thread", "M14×1.5", "thread", "Thread, as M14x1.5 or 1/2-20 UNF."),
                    Ask.choice(
                            "class",
                            "Strength",
                            Arrays.stream(PropertyClass.values())
                                    .map(PropertyClass::toString)
                                    .toList(),
                            "property class",
                            "Property class on the bolt's head, or the grade of an inch bolt."),
                    Ask.choice(
                            "on-thread",
                            "On the thread",
                            Arrays.stream(ThreadState.values())
                                    .map(ThreadState::word)
                                    .toList(),
                            "state of the thread",
                            "What is on the thread; dry if not given."),
                    Ask.quantity(
                            "seat-diameter",
                            "Seat, mean",
                            "mm",
                            "mean diameter of the seat",
                            "Mean diameter of the seat; 1.3 times the thread if not given."),
                    Ask.quantity(
                            "cone",
                            "Cone",
                            "°",
                            "included angle of the cone",
                            "The seat is a cone of this included angle; flat if not given."),
                    Ask.quantity(
                            "ball",
                            "Ball",
                            "mm",
                            "radius of the ball seat",
                            "The seat is a ball of this radius; flat if not given."),
                    Ask.words(
                            "friction",
                            "Friction",
                            "0.14 to 0.24",
                            "friction",
                            "Least and most friction; 0.14 and 0.24 (clean and dry) if not given.")),
            List.of("torque", "thread", "class"),
            ClampLoadGroup::clampLoad);

    private ClampLoadGroup() {}

    private static List<Part> clampLoad(Given given) {
        if (!given.any("thread", "class", "on-thread", "seat-diameter", "cone", "ball", "friction")) {
            return List.of();
        }
        double torqueNm = given.quantity("torque");
        var thread = ScrewThread.parse(given.words("thread"));
        var strength = PropertyClass.parse(given.words("class"));
        var friction = given.findWords("friction").map(ClampLoadGroup::friction).orElse(FrictionBand.DRY);
        var load = ClampLoad.of(thread, strength, seat(given, thread), friction, torqueNm);
        var state = given.findWords("on-thread").map(ThreadState::parse).orElse(ThreadState.DRY);
        var shortForm = ShortForm.of(thread, strength, state, torqueNm);
        return List.of(
                new Part(
                        "clampLoad",
                        List.of(
                                "Clamp load of %s %s, friction %s to %s: %.0f to %.0f kN, %.0f to %.0f %% of the proof load"
                                        .formatted(
                                                thread,
                                                cornerbook.words.Reader.DEFAULT.say(strength.told()),
                                                friction.lowest(),
                                                friction.highest(),
                                                load.leastN() / N_PER_KN,
                                                load.mostN() / N_PER_KN,
                                                load.leastShareOfProof() * 100,
                                                load.mostShareOfProof() * 100)),
                        load),
                new Part(
                        "shortForm",
                        List.of("By the short form, %s thread: %.0f to %.0f kN, up to %.0f %% of the proof load"
                                .formatted(
                                        shortForm.state().word(),
                                        shortForm.leastN() / N_PER_KN,
                                        shortForm.mostN() / N_PER_KN,
                                        shortForm.mostShareOfProof() * 100)),
                        shortForm));
    }

    private static SeatFace seat(Given given, ScrewThread thread) {
        double meanMm = given.quantity("seat-diameter", SeatFace.usualMeanDiameterMm(thread));
        if (given.any("cone") && given.any("ball")) {
            throw new AskException("ball", "is given beside a cone, expected one of the two");
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
            throw new IllegalArgumentException(
                    "friction is %s, expected the least and the most as in 0.14 to 0.24".formatted(Quoted.of(text)), e);
        }
    }
}
