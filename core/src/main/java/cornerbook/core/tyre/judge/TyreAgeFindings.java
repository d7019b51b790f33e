package cornerbook.core.tyre.judge;

import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.DateCode;
import cornerbook.core.tyre.Tin;
import cornerbook.core.tyre.judge.SidewallSaid.Ground;
import cornerbook.core.tyre.judge.SidewallSaid.Label;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Findings on the age of the tyres of a set, now and at the end of the time that the set has to last. */
public final class TyreAgeFindings {
    private final WheelSet set;
    private final LocalDate today;
    private final LocalDate until;
    private final Limit inspect;
    private final Limit replace;
    /** Whether the set has come off, and waits for its next season. */
    private final boolean lies;

    private TyreAgeFindings(Case given, SetSpan span) {
        set = span.set();
        today = given.visit().date();
        until = span.until();
        inspect = given.limit(Limit.Kind.TYRE_AGE_INSPECT, span);
        replace = given.limit(Limit.Kind.TYRE_AGE_REPLACE, span);
        lies = span.role() == SetSpan.Role.COMING_OFF && !given.visit().leftOn().isEmpty();
    }

    /** A wheel whose date of manufacture is known. */
    private record Dated(Wheel wheel, DateCode code) {}

    /** Of each set one finding when all dated wheels come to the same verdict, else one for each verdict. */
    public static Judgement judge(Case given) {
        return Judgement.together(given.spans().stream().map(span -> new TyreAgeFindings(given, span).judge()));
    }

    private Judgement judge() {
        var notJudged = new ArrayList<Said>();
        var dated = new ArrayList<Dated>();
        var unread = new ArrayList<String>();
        for (var wheel : set.wheels()) {
            var written = wheel.tyre().tin();
            if (written == null) {
                unread.add(wheel.tag());
            } else {
                read(wheel, written, notJudged).ifPresent(code -> dated.add(new Dated(wheel, code)));
            }
        }
        if (!unread.isEmpty()) {
            notJudged.add(new SidewallSaid.TinNotRead(String.join(", ", unread)));
        }
        var byVerdict = dated.stream()
                .collect(Collectors.groupingBy(
                        wheel -> verdict(wheel.code), () -> new EnumMap<>(Verdict.class), Collectors.toList()));
        return new Judgement(
                byVerdict.entrySet().stream()
                        .map(entry -> finding(entry.getValue(), byVerdict.size() == 1, entry.getKey()))
                        .toList(),
                notJudged);
    }

    private Optional<DateCode> read(Wheel wheel, String written, List<Said> notJudged) {
        @Nullable DateCode code;
        try {
            code = Tin.parse(written).dateCode();
        } catch (IllegalArgumentException e) {
            notJudged.add(new SidewallSaid.AgeUnread(wheel.tag(), Refused.said(e)));
            return Optional.empty();
        }
        if (code == null) {
            notJudged.add(new SidewallSaid.ThreeDigits(wheel.tag(), Quoted.of(written)));
            return Optional.empty();
        }
        if (code.dated().isAfter(today)) {
            notJudged.add(new SidewallSaid.DatedLater(wheel.tag(), code.toString(), code.dated()));
            return Optional.empty();
        }
        return Optional.of(code);
    }

    private Verdict verdict(DateCode code) {
        var due = code.reaches(replace.value());
        return !due.isAfter(today) ? Verdict.SPENT : !due.isAfter(until) ? Verdict.RUNS_OUT : Verdict.HOLDS;
    }

    private Finding finding(List<Dated> wheels, boolean wholeSet, Verdict verdict) {
        var oldest = wheels.stream()
                .min(Comparator.comparing(wheel -> wheel.code.dated()))
                .orElseThrow();
        double yearsNow = oldest.code.ageYears(today);
        var evidence = new ArrayList<Evidence>();
        evidence.addAll(codes(wheels));
        evidence.add(new Evidence(
                Label.AGE_AT_VISIT,
                new SidewallSaid.Years(years(yearsNow)),
                new SidewallSaid.OldestIs(oldest.wheel.tag())));
        evidence.add(new Evidence(
                new SidewallSaid.AgeOn(until),
                new SidewallSaid.Years(years(oldest.code.ageYears(until))),
                Ground.END_OF_SEASON));
        evidence.add(limit(Label.INSPECTED_FROM, oldest.code, inspect));
        evidence.add(limit(Label.REPLACED_AT, oldest.code, replace));
        var finding = new Finding(
                new Subject(Subject.Part.TYRE_AGE, null, wholeSet ? null : oldest.wheel.tag(), set.id()),
                verdict,
                new SidewallSaid.OldestTyre(
                        set.season(), oldest.wheel.tag(), years(yearsNow), years(oldest.code.ageYears(until)), until),
                plainWords(
                        verdict,
                        new SidewallSaid.TyreOf(wholeSet ? null : oldest.wheel.tag(), new SetOf(set.season())),
                        oldest.code),
                verdict == Verdict.RUNS_OUT ? oldest.code.reaches(replace.value()) : null,
                null,
                Math.clamp(1 - yearsNow / replace.value(), 0, 1),
                evidence,
                new SidewallSaid.AgeSource(replace.citation()));
        if (verdict == Verdict.HOLDS) {
            return isInspected(oldest.code) ? finding.todo(Todo.Action.INSPECT, Todo.When.AT_NEXT_VISIT) : finding;
        }
        return lies ? finding.todo(Todo.Action.REPLACE, Todo.When.BEFORE_FITTING) : finding.todo(Todo.Action.REPLACE);
    }

    private boolean isInspected(DateCode code) {
        return !code.reaches(inspect.value()).isAfter(today);
    }

    /** One line for each date code, oldest first. */
    private static List<Evidence> codes(List<Dated> wheels) {
        return wheels.stream()
                .collect(Collectors.groupingBy(
                        wheel -> wheel.code,
                        () -> new TreeMap<DateCode, List<Dated>>(Comparator.comparing(DateCode::dated)),
                        Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> new Evidence(
                        new SidewallSaid.DateCodeOf(entry.getValue().stream()
                                .map(wheel -> wheel.wheel.tag())
                                .collect(Collectors.joining(", "))),
                        new SidewallSaid.WeekOf(
                                entry.getKey().toString(), entry.getKey().dated()),
                        new SidewallSaid.EndOfTin(Quoted.of(String.valueOf(
                                entry.getValue().getFirst().wheel.tyre().tin())))))
                .toList();
    }

    private static Evidence limit(Label what, DateCode code, Limit limit) {
        return new Evidence(
                what,
                new SidewallSaid.YearsReachedOn(wholeYears(limit), code.reaches(limit.value())),
                limit.citation());
    }

    private Said plainWords(Verdict verdict, SidewallSaid.TyreOf tyre, DateCode code) {
        var due = code.reaches(replace.value());
        var inspection = code.reaches(inspect.value());
        return switch (verdict) {
            case RUNS_OUT -> new SidewallSaid.ReachesReplacement(tyre, wholeYears(replace), due);
            case HOLDS -> {
                if (inspection.isAfter(until)) {
                    yield new SidewallSaid.YoungEnough(tyre);
                }
                yield isInspected(code)
                        ? new SidewallSaid.Inspected(tyre, wholeYears(inspect), due)
                        : new SidewallSaid.ReachesInspection(tyre, wholeYears(inspect), inspection);
            }
            default -> new SidewallSaid.TooOld(tyre, wholeYears(replace));
        };
    }

    private static Amount years(double years) {
        return new Amount(years, "", 1);
    }

    private static Amount wholeYears(Limit limit) {
        return Amount.of(limit.value(), "");
    }
}
