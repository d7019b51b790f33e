package cornerbook.app.desk.bench;

import cornerbook.app.bench.Ask;
import cornerbook.app.bench.AskException;
import cornerbook.app.bench.Given;
import cornerbook.app.bench.Group;
import cornerbook.app.bench.Part;
import cornerbook.app.bench.Question;
import cornerbook.app.bench.Questions;
import cornerbook.app.bench.filled.CarValues;
import cornerbook.app.bench.filled.WorkedExample;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.UnitChoice;
import cornerbook.app.desk.Unjudged;
import cornerbook.app.desk.bench.BenchPage.Answer;
import cornerbook.app.desk.bench.BenchPage.Field;
import cornerbook.app.desk.bench.BenchPage.Section;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.words.UnitSystem;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The engineering bench: a page for each calculator. Nothing is stored; an address holds all that was typed. */
public final class BenchHandler {
    private final Desk desk;
    private final Pages pages;

    public BenchHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void list(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/bench/benchList", Questions.ALL);
    }

    public void show(ServerRequest request, ServerResponse response) {
        var question = Questions.find(Pages.pathValue(request, "name"))
                .orElseThrow(() -> new PageException(
                        404, Said.verbatim(Told.labels("app/desk/bench").of("no-such-calculator"))));
        var system = UnitSystem.find(Pages.queryValue(request, "units")).orElseGet(UnitChoice::current);
        var carId = Pages.queryValue(request, "car");
        var history = carId.isEmpty() ? null : desk.getHistory(carId);
        if (history == null) {
            var view = view(request, question, system, null);
            pages.send(response, view.status(), view.template(), view.model());
        } else {
            pages.sendJudged(response, new Unjudged(history, null), () -> view(request, question, system, history));
        }
    }

    private Pages.View view(ServerRequest request, Question question, UnitSystem system, @Nullable CarHistory history) {
        var axle = Pages.queryValue(request, "axle").equals("rear") ? Axle.REAR : Axle.FRONT;
        boolean example = history == null && !request.query().contains("blank") && !asksAny(request, question);
        var tools = BenchTools.of(question, desk.book().tools().list(), request, desk.today());
        if (example) {
            tools = tools.withoutChoice();
        }
        Map<String, List<String>> known = new LinkedHashMap<>(tools.values(system));
        if (history != null) {
            known.putAll(CarValues.of(question.name(), history, axle, system));
            known.putAll(BenchPrices.of(question, desk.book().prices().on(desk.today()), history, system));
        }
        var typed = example
                ? WorkedExample.of(question, system, desk.today())
                : typed(request, question, known, tools, system);
        var climate = question.byClimate() ? desk.book().climate().find().orElse(null) : null;
        if (example && climate != null) {
            typed.keySet().removeAll(question.fromClimate());
        }
        var given = new Given(question, typed, system, false, desk.today(), climate);
        var errors = new HashMap<String, String>();
        var sections = question.groups().stream()
                .map(group -> section(question, group, given, known, errors))
                .toList();
        boolean refused = !errors.isEmpty()
                || sections.stream().anyMatch(section -> !section.error().isEmpty());
        return new Pages.View(
                refused ? 422 : 200,
                "desk/bench/bench",
                new BenchPage(
                        question,
                        history == null ? null : history.vehicle(),
                        axle == Axle.REAR ? "rear" : "front",
                        system,
                        system != UnitChoice.current(),
                        example,
                        history == null ? desk.book().visits().list(desk.today()) : List.of(),
                        tools,
                        question.byClimate() && climate == null,
                        question.common().stream()
                                .map(ask -> field(ask, given, errors))
                                .toList(),
                        sections));
    }

    private static boolean asksAny(ServerRequest request, Question question) {
        return question.asks().stream().anyMatch(ask -> request.query().contains(ask.name()));
    }

    /** What the address holds; where it holds nothing, what car and tools say. A tool just taken up outranks what was typed of the one before. */
    private static Map<String, List<String>> typed(
            ServerRequest request,
            Question question,
            Map<String, List<String>> known,
            BenchTools tools,
            UnitSystem system) {
        Map<String, List<String>> typed = new LinkedHashMap<>(known);
        for (var ask : question.asks()) {
            var texts = request.query().contains(ask.name()) ? request.query().all(ask.name()) : List.<String>of();
            if (!texts.isEmpty()) {
                typed.put(ask.name(), texts.stream().map(String::strip).toList());
            }
        }
        if (tools.changed()) {
            typed.keySet().removeAll(tools.names());
            typed.putAll(tools.values(system));
        }
        typed.values().removeIf(texts -> texts.stream().allMatch(String::isEmpty));
        return typed;
    }

    /** What car and tools say asks nothing by itself: what it lacks is missed only when something was typed beside them. */
    private static Section section(
            Question question, Group group, Given given, Map<String, List<String>> known, Map<String, String> errors) {
        List<Part> parts = List.of();
        var error = "";
        try {
            parts = given.answer(group);
        } catch (AskException unread) {
            if (!unread.isMissing() || touched(group, given, known)) {
                errors.put(unread.ask(), sentence(unread.said()));
            }
        } catch (IllegalArgumentException refused) {
            error = sentence(Refused.said(refused));
        }
        return new Section(
                group.name(),
                group.title(),
                group.note(),
                group.asks().stream().map(ask -> field(ask, given, errors)).toList(),
                error,
                question.lacking(group, given),
                parts.stream().map(Answer::new).toList());
    }

    private static String sentence(Said refusal) {
        return Typed.sentence(Told.say(refusal));
    }

    private static boolean touched(Group group, Given given, Map<String, List<String>> known) {
        return group.asks().stream()
                .map(Ask::name)
                .anyMatch(name ->
                        !given.typed().getOrDefault(name, List.of()).equals(known.getOrDefault(name, List.of())));
    }

    private static Field field(Ask ask, Given given, Map<String, String> errors) {
        var unit = switch (ask.kind()) {
            case Ask.Quantity quantity -> Told.reader().unitName(given.system().unitOf(quantity.bookUnit()));
            case Ask.Count count -> Told.reader().unitName(count.unit());
            default -> "";
        };
        return new Field(
                ask,
                unit,
                new ArrayList<>(given.typed().getOrDefault(ask.name(), List.of())),
                errors.getOrDefault(ask.name(), ""));
    }
}
