package cornerbook.core.tyre.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tyre.DateCode;
import cornerbook.core.tyre.Tin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Findings on the age of the tyres of a set, now and at the end of the time that the set has to last. */
public final class TyreAgeFindings {
    private TyreAgeFindings() {}

    /** A wheel whose date of manufacture is known. */
    private record Dated(Wheel wheel, DateCode code) {}

    /**
     * One finding when all dated wheels come to the same verdict, else one for each verdict.
     *
     * @param until last day of the season to come
     */
    public static List<Finding> of(
            WheelSet set, LocalDate today, LocalDate until, Limit inspect, Limit replace, List<Said> notJudged) {
        var dated = new ArrayList<Dated>();
        var unread = new ArrayList<String>();
        for (var wheel : set.wheels()) {
            var written = wheel.tyre().tin();
            if (written == null) {
                unread.add(wheel.tag());
            } else {
                read(wheel, written, today, notJudged).ifPresent(code -> dated.add(new Dated(wheel, code)));
            }
        }
        if (!unread.isEmpty()) {
            notJudged.add(Said.verbatim("tyre age of %s: the TIN was not read".formatted(String.join(", ", unread))));
        }
        var byVerdict =
                dated.stream().collect(Collectors.groupingBy(wheel -> verdict(wheel.code, today, until, replace)));
        return byVerdict.entrySet().stream()
                .map(entry -> finding(
                        set, entry.getValue(), byVerdict.size() == 1, entry.getKey(), today, until, inspect, replace))
                .toList();
    }

    private static Optional<DateCode> read(Wheel wheel, String written, LocalDate today, List<Said> notJudged) {
        @Nullable DateCode code;
        try {
            code = Tin.parse(written).dateCode();
        } catch (IllegalArgumentException e) {
            notJudged.add(Said.verbatim("tyre age of %s: %s".formatted(wheel.tag(), e.getMessage())));
            return Optional.empty();
        }
        if (code == null) {
            notJudged.add(Said.verbatim(
                    "tyre age of %s: the TIN \"%s\" ends in three digits, as before 2000; read it again, and replace the tyre if that is so"
                            .formatted(wheel.tag(), written)));
            return Optional.empty();
        }
        if (code.dated().isAfter(today)) {
            notJudged.add(Said.verbatim("tyre age of %s: date code %s is the week of %s, after this visit; read it again"
                    .formatted(wheel.tag(), code, Dates.written(code.dated()))));
            return Optional.empty();
        }
        return Optional.of(code);
    }

    private static Verdict verdict(DateCode code, LocalDate today, LocalDate until, Limit replace) {
        var due = code.reaches(replace.value());
        return !due.isAfter(today) ? Verdict.SPENT : !due.isAfter(until) ? Verdict.RUNS_OUT : Verdict.HOLDS;
    }

    private static Finding finding(
            WheelSet set,
            List<Dated> wheels,
            boolean wholeSet,
            Verdict verdict,
            LocalDate today,
            LocalDate until,
            Limit inspect,
            Limit replace) {
        var oldest = wheels.stream()
                .min(Comparator.comparing(wheel -> wheel.code.dated()))
                .orElseThrow();
        double yearsNow = oldest.code.ageYears(today);
        var name = TreadFindings.seasonWord(set) + " set";
        var evidence = new ArrayList<Evidence>();
        evidence.addAll(codes(wheels));
        evidence.add(new Evidence("age at this visit", years(yearsNow), "oldest tyre, " + oldest.wheel.tag()));
        evidence.add(new Evidence(
                "age on " + Dates.written(until),
                years(oldest.code.ageYears(until)),
                "end of the season that the set has to last"));
        evidence.add(limit("inspected every year from", oldest.code, inspect));
        evidence.add(limit("replaced at", oldest.code, replace));
        return new Finding(
                new Subject(Subject.Part.TYRE_AGE, null, wholeSet ? null : oldest.wheel.tag(), set.id()),
                verdict,
                "%s: oldest tyre %s is %.1f years old, %.1f on %s"
                        .formatted(
                                TreadFindings.capital(name),
                                oldest.wheel.tag(),
                                yearsNow,
                                oldest.code.ageYears(until),
                                Dates.written(until)),
                plainWords(verdict, name, oldest, wholeSet, today, until, inspect, replace),
                verdict == Verdict.RUNS_OUT ? oldest.code.reaches(replace.value()) : null,
                null,
                Math.clamp(1 - yearsNow / replace.value(), 0, 1),
                evidence,
                "49 CFR 574.5 (date code); " + replace.citation());
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
                        "date code, "
                                + entry.getValue().stream()
                                        .map(wheel -> wheel.wheel.tag())
                                        .collect(Collectors.joining(", ")),
                        "%s: week of %s"
                                .formatted(
                                        entry.getKey(),
                                        Dates.written(entry.getKey().dated())),
                        "last four digits of the TIN, written \"%s\"; 49 CFR 574.5"
                                .formatted(
                                        entry.getValue().getFirst().wheel.tyre().tin())))
                .toList();
    }

    private static Evidence limit(String what, DateCode code, Limit limit) {
        return new Evidence(
                what,
                "%.0f years, which is %s".formatted(limit.value(), Dates.written(code.reaches(limit.value()))),
                limit.citation());
    }

    private static String plainWords(
            Verdict verdict,
            String name,
            Dated oldest,
            boolean wholeSet,
            LocalDate today,
            LocalDate until,
            Limit inspect,
            Limit replace) {
        var tyres =
                wholeSet ? "The oldest tyre of the " + name : "Tyre %s of the %s".formatted(oldest.wheel.tag(), name);
        var due = oldest.code.reaches(replace.value());
        var inspection = oldest.code.reaches(inspect.value());
        return switch (verdict) {
            case RUNS_OUT ->
                "%s reaches %.0f years on %s, before the end of its season. Plan for new tyres, whatever tread is left."
                        .formatted(tyres, replace.value(), Dates.written(due));
            case HOLDS ->
                inspection.isAfter(until)
                        ? "%s is young enough.".formatted(tyres)
                        : inspection.isAfter(today)
                                ? "%s reaches %.0f years on %s; from then on it is inspected for cracks every year."
                                        .formatted(tyres, inspect.value(), Dates.written(inspection))
                                : "%s is over %.0f years old and is inspected for cracks every year, until it is replaced by %s."
                                        .formatted(tyres, inspect.value(), Dates.written(due));
            default ->
                "%s is over %.0f years old. Rubber ages; replace it now, whatever tread is left."
                        .formatted(tyres, replace.value());
        };
    }

    private static String years(double years) {
        return "%.1f years".formatted(years);
    }
}
