package cornerbook.app.desk.findings;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.air.PressureOverTemperature;
import cornerbook.app.picture.battery.BatteryOverVisits;
import cornerbook.app.picture.battery.ChargeOverDays;
import cornerbook.app.picture.brake.BrakeFigure;
import cornerbook.app.picture.brake.SeizingOverMonths;
import cornerbook.app.picture.car.CarFromAbove;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.NotJudged;
import cornerbook.core.assess.SaidOnce;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.car.DataGap;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.WheelPlan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What one visit found out: a card for each thing that asks for something, gravest first, then what holds, by its place
 * on the car. What a wheel's pattern of wear says stands with its set.
 *
 * @param ticks of the visit, with what hands left open
 * @param reached whether the hand-over sheet says where the customer finds and calls the shop
 */
public record FindingsPage(
        Assessment assessment,
        List<Photo> photos,
        List<Declined> declined,
        List<WorkTick> ticks,
        Optional<Departure> departure,
        boolean reached) {
    /** What is seen at one brake has most often one cause. */
    private static final Set<Subject.Part> BRAKE = EnumSet.of(
            Subject.Part.PAD,
            Subject.Part.CALIPER,
            Subject.Part.DISC,
            Subject.Part.SHOE,
            Subject.Part.DRUM,
            Subject.Part.DRUM_GEAR,
            Subject.Part.BRAKE_RELEASE);

    public FindingsPage {
        photos = List.copyOf(photos);
        declined = List.copyOf(declined);
        ticks = List.copyOf(ticks);
    }

    FindingsPage(Assessment assessment) {
        this(assessment, List.of(), List.of(), List.of(), Optional.empty(), true);
    }

    /** What keeps the car from leaving, or with what nobody let it leave. */
    public List<Said> open() {
        return OpenPoint.together(
                departure.map(gone -> gone.unanswered(assessment.open())).orElse(assessment.open()));
    }

    /** What it left with, who let it go, and why; and what hands left open. */
    public List<Said> leftOpen() {
        return Departure.leftOpen(departure.orElse(null), assessment.visit(), ticks, assessment.open(), Told.reader());
    }

    /**
     * Work that the customer may decline.
     *
     * @param declinedBy who of the customer's side does not want it; empty while nobody said so
     */
    public record Line(String key, String words, String declinedBy) {}

    /** What the findings ask for, and the answers of the customer. */
    public List<Line> advised() {
        return assessment.advice().stream()
                .filter(Advice::mayBeDeclined)
                .map(advice -> new Line(
                        advice.key(),
                        Told.begin(advice.asked()),
                        declined.stream()
                                .filter(each -> Advice.isSameWork(each.advice(), advice.key()))
                                .map(Declined::saidBy)
                                .findFirst()
                                .orElse("")))
                .toList();
    }

    /** The photos that belong to what a card speaks of. */
    public List<Photo> photosOf(Card card) {
        return photos.stream()
                .filter(photo -> card.things().stream()
                        .map(thing -> thing.finding().subject())
                        .anyMatch(subject -> subject.part() == photo.part() && subject.corner() == photo.corner()))
                .toList();
    }

    /** The pads and the disc of every corner that was read. */
    public List<BrakeFigure> brakes() {
        return BrakeFigure.of(assessment, Told.reader());
    }

    /** The chance of seizing over the months; empty before a cleaning is in the book. */
    public String seizingPicture() {
        return SeizingOverMonths.svg(assessment.seizing(), Told.reader());
    }

    /** The health of the 12 V battery over the visits; empty before there are two readings of it. */
    public String batteryPicture() {
        return BatteryOverVisits.svg(assessment.battery(), Told.reader());
    }

    /** Its charge over the days that the car is parked; empty when nothing of it was read. */
    public String parkedPicture() {
        var parked = assessment.battery().parked();
        return parked == null ? "" : ChargeOverDays.svg(parked, Told.reader());
    }

    /** What the car is taken to draw meanwhile. */
    public Amount standby() {
        var parked = assessment.battery().parked();
        return Amount.of(parked == null ? 0 : parked.standbyA() * 1000, "mA");
    }

    /** Pressure over temperature of the tyre that was set nearest to its warning; empty when none was set. */
    public String pressurePicture() {
        var outlook = assessment.pressure();
        return outlook == null ? "" : PressureOverTemperature.svg(outlook, Told.reader());
    }

    /** Findings that say the same of different corners. */
    public record Card(List<FoundThing> things, List<Said> words) {
        public Card {
            things = List.copyOf(things);
            words = List.copyOf(words);
        }

        public Finding first() {
            return things.getFirst().finding();
        }

        /** What it asks for, each once: by the day of the gravest. */
        public List<Todo> todos() {
            return things.stream()
                    .flatMap(thing -> Stream.concat(Stream.of(thing.finding()), thing.patterns().stream()))
                    .map(Finding::todo)
                    .filter(Objects::nonNull)
                    .collect(Collectors.toMap(Todo::action, todo -> todo, (first, again) -> first, LinkedHashMap::new))
                    .values()
                    .stream()
                    .toList();
        }

        /** The corners that it speaks of, as "LF, RF"; empty for a set or the vehicle. */
        public String corners() {
            return String.join(
                    ", ",
                    things.stream()
                            .map(thing -> thing.finding().subject().corner())
                            .filter(Objects::nonNull)
                            .distinct()
                            .map(Told::say)
                            .toList());
        }
    }

    /**
     * Where on the car all this holds.
     *
     * @param parts what is judged there, as "Pads, Disc"
     */
    public record Area(String name, String parts, List<FoundThing> things) {
        public Area {
            things = List.copyOf(things);
        }

        /** The one with the least life left: its mark stands for the area. */
        public Finding weakest() {
            return things.stream()
                    .map(FoundThing::finding)
                    .reduce((one, other) -> one.lifeLeft() <= other.lifeLeft() ? one : other)
                    .orElseThrow();
        }
    }

    /** Gravest first. Advice on a set that holds is a card too: it must not be folded away. */
    public List<Card> cards() {
        var said = new SaidOnce(assessment.history());
        var alike = new LinkedHashMap<Shared, List<FoundThing>>();
        for (var thing : things()) {
            if (isCard(thing)) {
                var finding = thing.finding();
                alike.computeIfAbsent(key(finding, said), unused -> new ArrayList<>())
                        .add(thing);
            }
        }
        return alike.values().stream()
                .map(things -> new Card(things, said.join(wordsOf(things))))
                .toList();
    }

    /**
     * What shares a card: what wears out on an axle with what it asks for as a pair, the several signs of one brake, or findings
     * that say the same of different corners.
     */
    private sealed interface Shared {
        record Replaced(Axle axle) implements Shared {}

        record Brake(Corner corner) implements Shared {}

        record Alike(Verdict verdict, Subject.Part part, SaidOnce.Shape words) implements Shared {}
    }

    private Shared key(Finding finding, SaidOnce said) {
        if (finding.title() instanceof BrakeSaid.ReplacePair pair) {
            return new Shared.Replaced(pair.axle());
        }
        var corner = cornerOfBrake(finding);
        if (corner != null && isReplaced(corner)) {
            return new Shared.Replaced(corner.axle());
        }
        return corner != null && signsOfBrake(corner) > 1
                ? new Shared.Brake(corner)
                : new Shared.Alike(finding.verdict(), finding.subject().part(), said.shape(finding.plainWords()));
    }

    /** The corner whose brake a finding is about: of two that are not alike that at which more was found, the one at fault first. */
    private @Nullable Corner cornerOfBrake(Finding finding) {
        return finding.plainWords() instanceof BrakePairFindings.OneIsHotter hotter
                ? hotter.atFaultFirst().stream()
                        .filter(corner -> found().anyMatch(other -> ownCorner(other) == corner))
                        .findFirst()
                        .orElse(null)
                : ownCorner(finding);
    }

    private static @Nullable Corner ownCorner(Finding finding) {
        return BRAKE.contains(finding.subject().part()) ? finding.subject().corner() : null;
    }

    private Stream<Finding> found() {
        return assessment.findings().stream().filter(finding -> finding.verdict() != Verdict.HOLDS);
    }

    /** Whether what is worn there is what its axle gets as a pair. */
    private boolean isReplaced(Corner corner) {
        return assessment.findings().stream()
                .map(Finding::title)
                .anyMatch(title -> title instanceof BrakeSaid.ReplacePair pair
                        && pair.axle() == corner.axle()
                        && isSpent(corner, pair.pair().part()));
    }

    private boolean isSpent(Corner corner, Subject.Part part) {
        return assessment.findings().stream()
                .anyMatch(finding -> finding.subject().corner() == corner
                        && finding.subject().part() == part
                        && finding.verdict().compareTo(Verdict.SPENT) >= 0);
    }

    private long signsOfBrake(Corner corner) {
        return found().filter(finding -> cornerOfBrake(finding) == corner).count();
    }

    /** What holds: the wheel sets, the corners, the vehicle; places where nothing holds are left out. */
    public List<Area> areas() {
        var held = things().stream().filter(thing -> !isCard(thing)).toList();
        var areas = new ArrayList<Area>();
        areas.add(area(
                Told.labels("app/desk/findings").of("wheel-sets"), held.stream().filter(FoundThing::isOfSet)));
        for (var corner : Corner.values()) {
            areas.add(area(
                    Told.labels("app/desk/findings").of("area", "corner", corner, "name", new CornerName(corner)),
                    held.stream()
                            .filter(thing -> !thing.isOfSet()
                                    && thing.finding().subject().corner() == corner)));
        }
        areas.add(area(
                Told.labels("app/desk").of("vehicle"),
                held.stream()
                        .filter(thing ->
                                !thing.isOfSet() && thing.finding().subject().corner() == null)));
        return areas.stream().filter(area -> !area.things().isEmpty()).toList();
    }

    private Area area(String name, Stream<FoundThing> held) {
        var things = held.toList();
        var parts = things.stream().map(this::part).distinct().collect(Collectors.joining(", "));
        return new Area(name, parts, things);
    }

    /** A set is known by its season. */
    private String part(FoundThing thing) {
        return assessment.history().sets().stream()
                .filter(set -> set.id().equals(thing.finding().subject().setId()))
                .map(set -> Told.begin(set.season()))
                .findFirst()
                .orElseGet(() -> Told.say(thing.finding().subject().part()));
    }

    /** What could not be judged, each thing once. */
    public List<Said> notJudged() {
        return NotJudged.of(assessment).all();
    }

    /** Where what is missing is given, by one tap; empty where it is read at the car. */
    public String give(Said missing) {
        return missing instanceof DataGap gap
                ? CarLinks.give(assessment.history().vehicle().id(), gap)
                : "";
    }

    /** Where each wheel goes, and where it ran before. */
    public String planPicture(WheelPlan plan) {
        var labels = Told.labels("app/desk/findings");
        var atCorner = new EnumMap<Corner, CornerLabel>(Corner.class);
        plan.wheelAt()
                .forEach((corner, tag) -> atCorner.put(
                        corner,
                        CornerLabel.ofWheel(
                                tag,
                                lastCorner(tag)
                                        .map(last -> last == corner
                                                ? labels.of("stays-here")
                                                : labels.of("ran-at", "corner", last))
                                        .orElseGet(() -> labels.of("not-run-yet")))));
        return CarFromAbove.svg(atCorner, Told.reader());
    }

    /** Whether the wheels of a plan came on the car, ran before, or never: what never ran has no place to stay at. */
    public Ran ran(WheelPlan plan) {
        var wheels = plan.wheelAt().values();
        if (assessment.visit().arrivedOn().values().containsAll(wheels)) {
            return Ran.NOW;
        }
        return wheels.stream().allMatch(tag -> lastCorner(tag).isPresent()) ? Ran.BEFORE : Ran.NEVER;
    }

    /** When wheels ran. */
    public enum Ran {
        NOW,
        BEFORE,
        NEVER
    }

    private List<FoundThing> things() {
        var findings = assessment.findings();
        var setsFound = findings.stream()
                .filter(finding -> finding.subject().part() == Subject.Part.WHEEL_SET)
                .map(finding -> finding.subject().setId())
                .filter(Objects::nonNull)
                .toList();
        var said = new HashSet<Said>();
        var things = new ArrayList<FoundThing>();
        for (var finding : findings) {
            if (isPattern(finding)
                    && setsFound.contains(String.valueOf(finding.subject().setId()))) {
                continue;
            }
            var patterns = finding.subject().part() == Subject.Part.WHEEL_SET
                    ? patternsOf(String.valueOf(finding.subject().setId()))
                    : List.<Finding>of();
            var advice =
                    patterns.stream().map(Finding::plainWords).filter(said::add).toList();
            things.add(new FoundThing(finding, patterns, advice));
        }
        return things;
    }

    private List<Finding> patternsOf(String setId) {
        return assessment.findings().stream()
                .filter(finding ->
                        isPattern(finding) && setId.equals(finding.subject().setId()))
                .toList();
    }

    private static boolean isPattern(Finding finding) {
        return finding.subject().part() == Subject.Part.TREAD_PATTERN;
    }

    private static boolean isCard(FoundThing thing) {
        return thing.finding().verdict() != Verdict.HOLDS
                || thing.finding().todo() != null
                || !thing.patterns().isEmpty();
    }

    private static List<Said> wordsOf(List<FoundThing> things) {
        return things.stream().map(thing -> thing.finding().plainWords()).toList();
    }

    /** The corner that a wheel last left the shop on, before this visit. */
    private Optional<Corner> lastCorner(String tag) {
        return assessment.history().visits().reversed().stream()
                .filter(visit -> visit.date().isBefore(assessment.visit().date()))
                .map(Visit::leftOn)
                .flatMap(leftOn -> leftOn.entrySet().stream())
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
