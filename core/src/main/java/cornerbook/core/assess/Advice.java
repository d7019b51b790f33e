package cornerbook.core.assess;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SameWork;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Urgency;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a customer is told once: findings that ask for the same in the same words, at one place or at several, and what is seen at one
 * brake that is freed and cleaned once for all of it.
 *
 * @param key names it within its visit: "PAD.LF.REPLACE_PAIR"
 * @param findings at least one
 * @param set that it is about and that does not stand on the car; null for the car as it stands
 */
public record Advice(
        String key, List<Finding> findings, @Nullable SetOf set) {
    private static final Set<Todo.Action> OWED_BY_THE_SHOP = EnumSet.of(
            Todo.Action.TORQUE_AGAIN,
            Todo.Action.END_SERVICE_MODE,
            Todo.Action.SET_PRESSURE,
            Todo.Action.MEASURE_AGAIN,
            Todo.Action.LIFT_OTHERWISE,
            Todo.Action.LIFT_WITH_CARE,
            Todo.Action.CHECK_TOOL);

    public Advice {
        findings = List.copyOf(findings);
    }

    private record Alike(
            Urgency urgency,
            Said words,
            @Nullable Todo todo,
            @Nullable SetOf set) {}

    private record FreedAt(Todo todo, List<Corner> corners) {}

    /** Of the car, gravest first; what holds and asks for nothing is left out, and so is what another asks for already. */
    public static List<Advice> of(CarHistory history, Visit visit, List<Finding> findings) {
        return withEachBrakeOnce(together(
                history,
                visit,
                findings.stream()
                        .filter(finding -> !finding.subject().part().isOfShop())
                        .filter(Advice::asks)
                        .filter(finding -> !(finding.title() instanceof SameWork same
                                && findings.stream().anyMatch(same::isAskedForBy)))
                        .sorted((one, other) -> other.verdict().compareTo(one.verdict()))));
    }

    /** Nobody frees the pads of a caliper, and then its pins as another work. */
    private static List<Advice> withEachBrakeOnce(List<Advice> all) {
        var once = new LinkedHashMap<Object, Advice>();
        for (var advice : all) {
            once.merge(
                    advice.todo()
                            .filter(todo -> todo.action() == Todo.Action.SERVICE_BRAKE)
                            .<Object>map(
                                    todo -> new FreedAt(todo, advice.corners().toList()))
                            .orElse(advice),
                    advice,
                    (first, again) -> new Advice(
                            first.key(),
                            Stream.concat(first.findings().stream(), again.findings().stream())
                                    .toList(),
                            first.set()));
        }
        return List.copyOf(once.values());
    }

    /** These in their order, each kind once. */
    public static List<Advice> together(CarHistory history, Visit visit, Stream<Finding> findings) {
        var alike = findings.collect(Collectors.groupingBy(
                finding -> new Alike(
                        finding.urgency(), finding.plainWords(), finding.todo(), storedSet(history, visit, finding)),
                LinkedHashMap::new,
                Collectors.toList()));
        var keys = new HashSet<String>();
        var all = new ArrayList<Advice>();
        alike.forEach((kind, same) -> all.add(new Advice(newKey(same.getFirst(), keys), same, kind.set())));
        return List.copyOf(all);
    }

    /** Advice on what holds is not folded away. */
    public static boolean asks(Finding finding) {
        return finding.verdict() != Verdict.HOLDS || finding.todo() != null;
    }

    /** Two matters of one part, as both axles, are told apart by their number. */
    private static String newKey(Finding first, Set<String> taken) {
        var subject = first.subject();
        var todo = first.todo();
        var key = Stream.of(
                        subject.part().name(),
                        subject.corner(),
                        subject.wheelTag() == null ? subject.setId() : subject.wheelTag(),
                        todo == null ? null : todo.action().name())
                .filter(Objects::nonNull)
                .map(String::valueOf)
                .collect(Collectors.joining("."));
        var unused = key;
        for (int number = 2; !taken.add(unused); number++) {
            unused = key + "." + number;
        }
        return unused;
    }

    /**
     * Whether two keys name the same work of a visit: what is seen at a brake may be told of its pads first and of its caliper later, and
     * it is the same brake that is freed.
     */
    public static boolean isSameWork(String key, String other) {
        return key.equals(other)
                || (key.endsWith("." + Todo.Action.SERVICE_BRAKE)
                        && key.substring(key.indexOf('.')).equals(other.substring(Math.max(other.indexOf('.'), 0))));
    }

    /** The first stands for all: they ask for the same. */
    public Finding first() {
        return findings.getFirst();
    }

    /** Whether it asks for work that is the customer's to order or decline; what the shop owes with its own work is not. */
    public boolean mayBeDeclined() {
        return todo().map(Todo::action)
                .filter(action -> !OWED_BY_THE_SHOP.contains(action))
                .isPresent();
    }

    /** Whether nothing of it is done at this visit: it is looked at again when the car comes next. */
    public boolean isForNextVisit() {
        return todo().map(Todo::by).filter(Todo.When.AT_NEXT_VISIT::equals).isPresent();
    }

    /** What it asks for; empty where nothing is to be done. */
    public Optional<Todo> todo() {
        return Optional.ofNullable(first().todo());
    }

    /** The corners that the sentence itself does not name. */
    public List<Corner> where() {
        return corners()
                .filter(corner ->
                        findings.stream().noneMatch(finding -> NamedCorner.isNamed(corner, finding.plainWords())))
                .toList();
    }

    private Stream<Corner> corners() {
        return findings.stream()
                .map(Finding::subject)
                .map(Subject::corner)
                .filter(Objects::nonNull)
                .distinct()
                .sorted();
    }

    /** Each sentence once. */
    private Said why() {
        var words = findings.stream().map(Finding::plainWords).distinct().toList();
        return words.size() == 1 ? words.getFirst() : Listed.sentences(words);
    }

    /** Where and why, in one sentence. */
    public Said said() {
        return new AssessSaid.Advised(place(), why());
    }

    private @Nullable Said place() {
        return place(where());
    }

    private @Nullable Said place(List<Corner> where) {
        var places = Stream.<@Nullable Said>of(set, where.isEmpty() ? null : corners(where))
                .filter(Objects::nonNull)
                .toList();
        return places.isEmpty() ? null : Listed.commas(places);
    }

    /** All four in words, fewer by their names. */
    public static Said corners(List<Corner> corners) {
        return corners.size() == Corner.values().length ? new AssessSaid.AllCorners() : Listed.commas(corners);
    }

    /** Of what part, what is to be done and where, without why; where it asks for nothing, what it says. */
    public Said task() {
        var subject = first().subject();
        return todo().<Said>map(todo -> new AssessSaid.Work(
                        subject.part(), todo.action(), place(corners().toList())))
                .orElseGet(this::said);
    }

    /** The same with what is to be done before it. */
    public Said asked() {
        return findTask().<Said>map(task -> new AssessSaid.Asked(task, why())).orElseGet(this::said);
    }

    private Optional<AssessSaid.Task> findTask() {
        return todo().map(todo -> new AssessSaid.Task(todo.action(), place()));
    }

    /** Named where the finding is about one part of a set that is not on the car. */
    private static @Nullable SetOf storedSet(CarHistory history, Visit visit, Finding finding) {
        var tag = finding.subject().wheelTag();
        var onCar = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
        return tag == null || onCar.containsValue(tag)
                ? null
                : history.findSetOf(tag).map(set -> new SetOf(set.season())).orElse(null);
    }
}
