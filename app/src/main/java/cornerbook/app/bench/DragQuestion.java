package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.brake.drag.AxleDrag;
import cornerbook.core.brake.drag.Drag;
import cornerbook.core.brake.drag.DragDrive;
import cornerbook.core.brake.drag.DragSaid;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What brakes take that drag, from how warm the discs are after a drive. */
final class DragQuestion {
    private static final double WAY_KM = 100;
    /** Any that a disc may have. */
    private static final double USUAL_DISC_KG = 7;

    static final Question QUESTION = new Question(
            "drag",
            Title.DRAG,
            Description.DRAG,
            List.of(),
            List.of(new Group(
                    "after-the-drive",
                    Title.DRAG_AFTER_THE_DRIVE,
                    Note.DRAG_AFTER_THE_DRIVE,
                    List.of(
                            temperature("lf", Label.DRAG_LF),
                            temperature("rf", Label.DRAG_RF),
                            temperature("lr", Label.DRAG_LR),
                            temperature("rr", Label.DRAG_RR),
                            Ask.quantity("air", Label.DRAG_AIR, "°C", DragSaid.Input.AIR, Help.DRAG_AIR),
                            Ask.quantity(
                                    "speed",
                                    Label.DRAG_SPEED,
                                    "km/h",
                                    DragSaid.Input.SPEED,
                                    new Otherwise(Help.DRAG_SPEED, Amount.of(DragDrive.USUAL_SPEED_KMH, "km/h"))),
                            Ask.number("minutes", Label.DRAG_MINUTES, "min", DragSaid.Input.MINUTES, Help.DRAG_MINUTES),
                            Ask.words(
                                    "tyre", Label.DRAG_TYRE,
                                    "225/55R18", Help.DRAG_TYRE),
                            Ask.quantity("front-disc-mass", Label.DRAG_FRONT_MASS, "kg", null, Help.DRAG_DISC_MASS),
                            Ask.quantity(
                                    "front-disc-diameter",
                                    Label.DRAG_FRONT_DIAMETER,
                                    "mm",
                                    null,
                                    Help.DRAG_DISC_DIAMETER),
                            Ask.quantity("rear-disc-mass", Label.DRAG_REAR_MASS, "kg", null, Help.DRAG_DISC_MASS),
                            Ask.quantity(
                                    "rear-disc-diameter",
                                    Label.DRAG_REAR_DIAMETER,
                                    "mm",
                                    null,
                                    Help.DRAG_DISC_DIAMETER),
                            new Ask("front-solid", Label.DRAG_FRONT_SOLID, new Ask.Tick(), Help.DRAG_SOLID, null),
                            new Ask("rear-solid", Label.DRAG_REAR_SOLID, new Ask.Tick(), Help.DRAG_SOLID, null)),
                    List.of("tyre"),
                    DragQuestion::drag)),
            NothingAsked.DRAG,
            "cornerbook drag --lr 121 --rr 64 --air 12 --speed 60 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid");

    private DragQuestion() {}

    private static Ask temperature(String name, Label label) {
        return Ask.quantity(name, label, "°C", null, Help.DRAG_TEMPERATURE);
    }

    /** The axle that asks for more comes first, and what to mind of it. */
    private static List<Part> drag(Given given) {
        if (!given.any("lf", "rf", "lr", "rr", "minutes")) {
            return List.of();
        }
        var parts = new ArrayList<Part>();
        for (var axle : Axle.values()) {
            var corners = Arrays.stream(Corner.values())
                    .filter(corner -> corner.axle() == axle)
                    .toList();
            if (corners.stream().anyMatch(corner -> given.any(name(corner)))) {
                parts.add(of(given, axle, corners.getFirst(), corners.getLast()));
            }
        }
        return parts.stream()
                .sorted(Comparator.comparing((Part part) -> ((AxleDrag) part.result()).answer())
                        .reversed())
                .toList();
    }

    private static Part of(Given given, Axle axle, Corner left, Corner right) {
        var word = axle.name().toLowerCase(Locale.ROOT);
        var drive = given.at(
                "tyre",
                () -> new DragDrive(
                        given.quantity("speed", DragDrive.USUAL_SPEED_KMH),
                        given.findNumber("minutes"),
                        given.reading("tyre", TyreSize::parse).rollingCircumferenceMm() / 1000));
        var first = read(given, left);
        var second = read(given, right);
        double diameterMm = given.quantity(word + "-disc-diameter");
        var body = disc(given, word, diameterMm);
        var drag = given.at("air", () -> AxleDrag.of(body, diameterMm, drive, first, second, given.find("air")));
        return new Part(word, lines(given, axle, drag), drag);
    }

    /** What is refused of its diameter stands there, and then only its mass can be wrong. */
    private static DiscBody disc(Given given, String axle, double diameterMm) {
        boolean vented = !given.ticked(axle + "-solid");
        given.at(axle + "-disc-diameter", () -> DiscBody.castIron(USUAL_DISC_KG, diameterMm, vented));
        double massKg = given.quantity(axle + "-disc-mass");
        return given.at(axle + "-disc-mass", () -> DiscBody.castIron(massKg, diameterMm, vented));
    }

    private static AxleDrag.Read read(Given given, Corner corner) {
        return given.at(name(corner), () -> new AxleDrag.Read(corner, given.quantity(name(corner))));
    }

    private static List<Said> lines(Given given, Axle axle, AxleDrag drag) {
        var lines = new ArrayList<Said>();
        addTaken(lines, given, drag.hotter(), drag.hotterTakes());
        addTaken(lines, given, drag.cooler(), drag.coolerTakes());
        var difference = new Margin(drag.differenceK(), "°C", 0, false);
        lines.add(
                drag.answer() == AxleDrag.Answer.EVEN
                        ? new AnswerSaid.EvenlyWarm(axle, difference)
                        : new AnswerSaid.TakesMore(
                                drag.hotter(),
                                drag.cooler(),
                                difference,
                                told(drag.excess().forceN(), "N", 0),
                                told(drag.excess().kwhPer100Km(), "kWh", 1),
                                given.told(WAY_KM, "km")));
        return lines;
    }

    private static void addTaken(List<Said> lines, Given given, Corner corner, @Nullable Drag drag) {
        if (drag != null) {
            lines.add(new AnswerSaid.BrakeTakes(
                    corner,
                    told(drag.powerW(), "W", 0),
                    told(drag.forceN(), "N", 0),
                    told(drag.kwhPer100Km(), "kWh", 1),
                    given.told(WAY_KM, "km")));
        }
    }

    private static Said told(Drag.Span span, String unit, int decimals) {
        return new Between(span.least(), span.most(), unit, decimals);
    }

    private static String name(Corner corner) {
        return corner.name().toLowerCase(Locale.ROOT);
    }
}
