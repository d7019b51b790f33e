package cornerbook.app.desk.visit;

import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.asked.AskedStep;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.visit.EntryPage.Choice;
import cornerbook.app.desk.visit.EntryPage.Field;
import cornerbook.app.desk.visit.EntryPage.Group;
import cornerbook.app.desk.visit.EntryPage.Questions;
import cornerbook.app.desk.visit.EntryPage.ReadingsForm;
import cornerbook.app.desk.visit.EntryPage.Section;
import cornerbook.app.request.Told;
import cornerbook.core.air.judge.AirToSet;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.Caution;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tread.judge.StoredWheelCheck;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.words.Labels;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The readings of one visit as fields, and what was typed into them as readings. A field that still says what it showed
 * gives nothing; one that says something else than the stored reading is a correction and needs a reason.
 */
final class EntryForm {
    private final OpenVisit open;
    private final Visit visit;
    private final VisitSlots slots;
    private final Form form;
    private final EntryUnits units;
    private final Labels labels = Told.labels("app/desk/visit");
    private final Map<String, String> errors = new HashMap<>();
    private final Map<String, Reading> typed = new LinkedHashMap<>();
    private final Map<String, TreadPrediction> doubted = new LinkedHashMap<>();
    private final Set<Caution> said = EnumSet.noneOf(Caution.class);
    private String problem = "";

    EntryForm(OpenVisit open, Form form) {
        this.open = open;
        this.visit = open.visit();
        this.slots = new VisitSlots(open.history().vehicle(), visit);
        this.form = form;
        this.units = EntryUnits.of(form);
    }

    /**
     * The readings that were typed; empty when one of them cannot stand. Then the sections carry the sentences.
     *
     * @param leftOn the wheels that the car leaves on, stored or about to be
     */
    List<Reading> check(LocalDate today, Map<Corner, String> leftOn) {
        slots.all().forEach(this::take);
        for (var name : form.fields().keySet()) {
            if (name.startsWith("was.") && !isKnown(name.substring(4))) {
                problem = Told.say(new VisitSaid.WheelsChanged());
            }
        }
        if (errors.isEmpty()) {
            checkRules(today, leftOn);
        }
        return errors.isEmpty() && problem.isEmpty() ? List.copyOf(typed.values()) : List.of();
    }

    /**
     * Asks about each reading that was typed and is incredible, unless the tick of the page stands for all of them. The
     * tick names the readings that it was shown for: a value that is typed afterwards is asked about anew.
     *
     * @param predictions of the visit with what was typed, as the assessor doubts them
     */
    void question(List<TreadPrediction> predictions) {
        for (var prediction : predictions) {
            typed.forEach((key, reading) -> {
                if (reading.id().equals(prediction.reading().id())) {
                    doubted.put(key, prediction);
                }
            });
        }
        if (List.of(form.get("again").split(" ")).containsAll(doubtedIds())) {
            doubted.clear();
        }
    }

    Questions questions() {
        return new Questions(doubted.size(), String.join(" ", doubtedIds()));
    }

    private List<String> doubtedIds() {
        return doubted.values().stream()
                .map(prediction -> prediction.reading().id())
                .toList();
    }

    boolean isSound() {
        return errors.isEmpty() && problem.isEmpty();
    }

    void refuse(String sentence) {
        problem = sentence;
    }

    ReadingsForm page(String formId) {
        said.clear();
        return new ReadingsForm(
                formId,
                units.system(),
                Arrays.stream(Corner.values())
                        .map(corner -> new Section(corner, groupsAt(corner)))
                        .toList(),
                new Section(
                        null,
                        slots.ofVehicle().stream()
                                .filter(step -> !step.slots().isEmpty())
                                .map(this::group)
                                .toList()),
                problem,
                errors.size(),
                questions());
    }

    private List<Group> groupsAt(Corner corner) {
        var arrived = visit.arrivedOn().get(corner);
        var left = visit.leftOn().get(corner);
        var groups = new ArrayList<Group>();
        boolean stays = arrived != null && arrived.equals(left);
        if (arrived != null) {
            groups.add(group(
                    labels.of(stays ? "wheel-stays" : left == null ? "wheel-as-it-came" : "coming-off", "tag", arrived),
                    "",
                    "",
                    List.of(),
                    slots.arrived(corner)));
        }
        var steps = slots.atCorner(corner);
        steps.stream()
                .filter(step -> step.step().compareTo(WorkStep.WHEELS_ON) < 0)
                .forEach(step -> groups.add(group(step)));
        if (left != null) {
            groups.add(group(
                    labels.of(stays ? "wheel-stays" : "going-on", "tag", left),
                    unsaid(WorkStep.TORQUE),
                    stop(left),
                    air(corner),
                    slots.leaving(corner)));
        }
        steps.stream()
                .filter(step -> step.step().compareTo(WorkStep.WHEELS_ON) > 0)
                .forEach(step -> groups.add(group(step)));
        return groups;
    }

    /** The cautions of a step that the page has not said yet, in one line. */
    private String unsaid(WorkStep step) {
        return Told.say(Listed.sentences(Caution.at(step, open.history().vehicle()).stream()
                .filter(said::add)
                .toList()));
    }

    private List<String> air(Corner corner) {
        var placardKpa = open.history().vehicle().axle(corner.axle()).placardPressureKpa();
        return placardKpa == null
                ? List.of()
                : List.of(Told.say(AirToSet.of(placardKpa, visit).sentence()));
    }

    /** Depths are read when the wheel is on the trolley or on the car already: the sentence stays until it is settled. */
    private String stop(String left) {
        return visit.arrivedOn().containsValue(left)
                ? ""
                : StoredWheelCheck.compareDepths(open.history(), visit, left)
                        .map(stop -> labels.of("settle", "stop", Typed.sentence(Told.say(stop))))
                        .orElse("");
    }

    private Group group(String title, String note, String stop, List<String> hints, List<Slot> slots) {
        return new Group(
                title, note, stop, hints, slots.stream().map(this::field).toList(), false);
    }

    private Group group(AskedStep step) {
        var asked = step.onceOnPage(said);
        return new Group(
                Told.say(asked.step()),
                asked.note(),
                "",
                asked.hints(),
                asked.slots().stream().map(this::field).toList(),
                asked.step().rare());
    }

    private Field field(Slot slot) {
        var key = slot.key();
        var scale = slot.measure().scale();
        var stored = slot.findIn(visit);
        var shown = stored.map(reading -> show(slot, reading)).orElse("");
        return new Field(
                key,
                Told.say(MeasureAt.of(open.history().vehicle(), slot.measure(), slot.spot())),
                units.label(slot.measure()),
                form.has(key) ? form.get(key) : shown,
                stored.map(Reading::id).orElse(""),
                scale == null ? List.of() : choices(scale),
                errors.getOrDefault(key, ""),
                doubted.containsKey(key) ? Told.say(doubted.get(key).question()) : "",
                form.get("reason." + key),
                stored.isPresent() && (errors.containsKey(key) || doubted.containsKey(key)));
    }

    /** Words for people; what is stored is spelled as files spell it. */
    private static List<Choice> choices(Scale scale) {
        return scale.told().stream()
                .map(word -> new Choice(scale.words().get(word.place()), Told.say(word)))
                .toList();
    }

    private String show(Slot slot, Reading reading) {
        var scale = slot.measure().scale();
        return scale != null
                ? scale.wordOf(reading.value())
                : Told.reader().typed(units.withoutUnit(reading.asWritten(), slot.measure()));
    }

    private boolean isKnown(String key) {
        return slots.all().stream().anyMatch(slot -> slot.key().equals(key));
    }

    private void take(Slot slot) {
        var key = slot.key();
        var text = form.get(key);
        var stored = slot.findIn(visit).orElse(null);
        boolean showedNothing = form.get("was." + key).isEmpty();
        if (!form.has(key) || (text.isEmpty() && showedNothing)) {
            return;
        }
        if (text.isEmpty()) {
            errors.put(key, Told.say(new VisitSaid.NeverDeleted()));
            return;
        }
        try {
            double value = Typed.valueOf(slot.measure(), units.withUnit(text, slot.measure()));
            if (stored == null) {
                typed.put(key, read(slot, value, text, null, null));
            } else if (differs(stored, value, text)) {
                correct(slot, value, text, stored, showedNothing);
            }
        } catch (IllegalArgumentException e) {
            errors.put(key, Typed.sentence(e));
        }
    }

    /** Other points may have the same spread. */
    private boolean differs(Reading stored, double value, String text) {
        var measure = stored.measure();
        return Math.abs(stored.value() - value) > 1e-9
                || (measure.mayBePoints()
                        && !points(units.withUnit(text, measure)).equals(points(stored.asWritten())));
    }

    /** Parted by a point or a comma, they are the same. */
    private static String points(String written) {
        return written.replace(',', '.');
    }

    private void correct(Slot slot, double value, String text, Reading stored, boolean showedNothing) {
        var key = slot.key();
        var reason = form.get("reason." + key);
        if (reason.isEmpty()) {
            errors.put(key, Told.say(new VisitSaid.SayWhy(showedNothing, asWritten(stored))));
        } else {
            typed.put(key, read(slot, value, text, stored.id(), reason));
        }
    }

    /** A word of a scale in the person's language, anything else as it was typed. */
    private static Said asWritten(Reading stored) {
        var scale = stored.measure().scale();
        return scale == null ? Said.verbatim(stored.asWritten()) : scale.told(stored.value());
    }

    private Reading read(Slot slot, double value, String text, @Nullable String corrects, @Nullable String reason) {
        var seed = String.join("|", form.get("form"), visit.id(), slot.key(), text, String.valueOf(corrects));
        return new Reading(
                UUID.nameUUIDFromBytes(seed.getBytes(StandardCharsets.UTF_8)).toString(),
                slot.measure(),
                slot.corner(),
                slot.wheelTag(),
                slot.spot(),
                value,
                units.withUnit(text, slot.measure()),
                corrects,
                reason);
    }

    /** Refuses each torque that was typed and that no wrench of the shop can have set. */
    void checkWrenches(List<ShopTool> tools) {
        typed.forEach((key, reading) -> {
            if (reading.measure() == Measure.WHEEL_TORQUE) {
                WrenchCheck.refuse(tools, reading.value(), visit.date(), units.system())
                        .ifPresent(sentence -> errors.put(key, sentence));
            }
        });
    }

    /** The rules that look at more than one value, asked before the book asks them, to place the sentence. */
    private void checkRules(LocalDate today, Map<Corner, String> leftOn) {
        var with = open.with(List.copyOf(typed.values()), leftOn);
        var keys = List.copyOf(typed.keySet());
        var prefix = with.path() + "/readings/";
        for (var found : VisitRules.check(with.history(), today)) {
            if (found.where().startsWith(prefix)) {
                var number = found.where().substring(prefix.length()).replaceFirst("/.*", "");
                int place = Integer.parseInt(number) - visit.readings().size();
                if (place >= 0) {
                    errors.put(keys.get(place), Typed.sentence(Told.say(found.message())));
                }
            }
        }
    }
}
