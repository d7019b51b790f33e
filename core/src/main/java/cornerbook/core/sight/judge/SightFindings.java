package cornerbook.core.sight.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.ScaleWord;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.sight.judge.SightSaid.Ground;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Findings on what was seen at tyre, wheel, corner and car. What is sound, and what nobody looked at, gives none. */
public final class SightFindings {
    /** Its last word. */
    private static final int KEY_MISSING = Scale.KEY_PLACE.words().size() - 1;

    private final Case given;

    private SightFindings(Case given) {
        this.given = given;
    }

    public static Judgement judge(Case given) {
        var sight = new SightFindings(given);
        return Judgement.of(Stream.of(sight.signs(), sight.punctures(), sight.key())
                .flatMap(findings -> findings)
                .toList());
    }

    private Stream<Finding> signs() {
        return Arrays.stream(Sign.values())
                .flatMap(sign -> latest(sign.measure()).stream()
                        .filter(reading -> sign.verdict(reading.value()) != Verdict.HOLDS)
                        .map(reading -> finding(sign, reading)));
    }

    /** One of each place: where several stand, the last one counts. A wheel may have been read at two corners. */
    private List<Reading> latest(Measure measure) {
        Map<Optional<Object>, Reading> byPlace = new LinkedHashMap<>();
        given.readings()
                .all(measure)
                .forEach(reading -> byPlace.put(
                        Optional.ofNullable(reading.wheelTag() != null ? reading.wheelTag() : reading.corner()),
                        reading));
        return List.copyOf(byPlace.values());
    }

    private Finding finding(Sign sign, Reading reading) {
        var verdict = sign.verdict(reading.value());
        var word = sign.scale().told(reading.value());
        boolean comesOff = comesOff(reading);
        var finding = new Finding(
                subject(sign.part(), reading),
                onCar(verdict, comesOff),
                new SightSaid.SignTitle(reading.corner(), sign.measure(), sign.scale() == Scale.STATE ? word : null),
                new SightSaid.SignSeen(named(reading.corner()), sign.measure(), verdict, comesOff),
                null,
                null,
                verdict == Verdict.RUNS_OUT ? 0.5 : 0,
                List.of(evidence(reading, word)),
                sign.ground());
        return verdict == Verdict.RUNS_OUT
                ? finding.todo(Todo.Action.INSPECT, comesOff ? Todo.When.BEFORE_FITTING : Todo.When.AT_NEXT_VISIT)
                : putRight(finding, sign.remedy(), comesOff);
    }

    /** A wheel that comes off can wait until it goes on again. */
    private static Finding putRight(Finding finding, Todo.Action action, boolean comesOff) {
        return comesOff ? finding.todo(action, Todo.When.BEFORE_FITTING) : finding.todo(action);
    }

    private Stream<Finding> punctures() {
        return latest(Measure.PUNCTURE).stream()
                .filter(reading -> Math.round(reading.value()) > 0)
                .map(this::puncture);
    }

    private Finding puncture(Reading reading) {
        var tag = Objects.requireNonNull(reading.wheelTag());
        var corner = Objects.requireNonNull(reading.corner());
        var diameter = given.readings().ofWheel(Measure.PUNCTURE_DIAMETER, tag);
        var depth = given.readings().all(Measure.TREAD_DEPTH).stream()
                .filter(each -> tag.equals(each.wheelTag()))
                .min((one, other) -> Double.compare(one.value(), other.value()));
        var word = Scale.PUNCTURE.told(reading.value());
        var puncture = Puncture.of(
                word.place(),
                value(diameter),
                value(depth),
                isYes(Measure.TYRE_DRIVEN_FLAT, tag),
                Arrays.stream(Sign.values())
                        .filter(sign -> sign.part() == Part.TYRE_DAMAGE && sign != Sign.VALVE)
                        .anyMatch(sign -> given.readings()
                                .ofWheel(sign.measure(), tag)
                                .filter(each -> sign.verdict(each.value()).compareTo(Verdict.SPENT) >= 0)
                                .isPresent()));
        boolean repaired = isYes(Measure.PUNCTURE_REPAIRED, tag);
        boolean comesOff = comesOff(reading);
        var evidence = new ArrayList<Evidence>();
        evidence.add(evidence(reading, word));
        diameter.ifPresent(each -> evidence.add(evidence(each, new Amount(each.value(), "mm", 1))));
        depth.ifPresent(each -> evidence.add(evidence(each, new Amount(each.value(), "mm", 1))));
        var verdict = !puncture.mayBeRepaired()
                ? Verdict.UNSAFE
                : repaired && puncture == Puncture.REPAIRABLE ? Verdict.HOLDS : Verdict.SPENT;
        var finding = new Finding(
                subject(Part.TYRE_DAMAGE, reading),
                onCar(verdict, comesOff),
                new SightSaid.PunctureTitle(corner, puncture, repaired),
                new SightSaid.Punctured(new CornerName(corner), puncture, repaired, comesOff),
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : 0,
                evidence,
                Ground.PUNCTURE_RULES);
        return verdict == Verdict.HOLDS ? finding : putRight(finding, action(puncture, repaired), comesOff);
    }

    /** What was repaired already is not repaired again: what it lacks is a number. */
    private static Todo.Action action(Puncture puncture, boolean repaired) {
        return !puncture.mayBeRepaired()
                ? Todo.Action.REPLACE
                : repaired ? Todo.Action.MEASURE_AGAIN : Todo.Action.REPAIR;
    }

    private static OptionalDouble value(Optional<Reading> reading) {
        return reading.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(reading.get().value());
    }

    private boolean isYes(Measure measure, String tag) {
        return given.readings()
                .ofWheel(measure, tag)
                .filter(each -> Math.round(each.value()) > 0)
                .isPresent();
    }

    private Stream<Finding> key() {
        return given
                .readings()
                .ofVehicle(Measure.LOCKING_NUT_KEY)
                .filter(reading -> Math.round(reading.value()) == KEY_MISSING)
                .map(reading -> new Finding(
                                subject(Part.WHEEL_FASTENERS, reading),
                                Verdict.RUNS_OUT,
                                SightSaid.KeyMissing.TITLE,
                                SightSaid.KeyMissing.PLAIN,
                                null,
                                null,
                                0.5,
                                List.of(evidence(reading, new ScaleWord(Scale.KEY_PLACE, KEY_MISSING))),
                                Ground.COMMON_PRACTICE)
                        .todo(Todo.Action.FIND_KEY))
                .stream();
    }

    /** A wheel that does not leave on the car keeps nobody from driving it. */
    private boolean comesOff(Reading reading) {
        var leftOn = given.visit().leftOn();
        return reading.wheelTag() != null && !leftOn.isEmpty() && !leftOn.containsValue(reading.wheelTag());
    }

    private static Verdict onCar(Verdict verdict, boolean comesOff) {
        return comesOff && verdict == Verdict.UNSAFE ? Verdict.SPENT : verdict;
    }

    private static Subject subject(Part part, Reading reading) {
        return new Subject(part, reading.corner(), reading.wheelTag(), null);
    }

    private static @Nullable CornerName named(@Nullable Corner corner) {
        return corner == null ? null : new CornerName(corner);
    }

    private static Evidence evidence(Reading reading, Said value) {
        return new Evidence(new MeasureAt(reading.measure(), reading.spot()), value, Evidence.howRead(reading));
    }
}
