package cornerbook.core.tyre.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.judge.FittedWheels.Fitted;
import cornerbook.core.tyre.judge.FittingSaid.Advice;
import cornerbook.core.tyre.judge.FittingSaid.Aspect;
import cornerbook.core.tyre.judge.FittingSaid.Law;
import cornerbook.core.tyre.judge.FittingSaid.Rule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Findings on what the law of the car's place says of winter tyres and studs from this visit to the next, on the tyres that it
 * leaves on. Marks and studs are read at the wheel, and stand until they are read again. Whether
 * studs may stand on a car whose place forbids them in one part of it is not judged: the book knows no part. A set that the book has as a summer set is
 * no winter set; of any other a mark that nobody read is not judged. That the place itself is not known is said by the car's data. Never Unsafe: the law forbids such tyres, the road may not.
 */
public final class TyreLawFindings {
    private static final double SNOWFLAKE = 2;

    private final Case given;
    private final String place;
    private final LocalDate today;
    private final List<Fitted> wheels;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Said> notJudged = new ArrayList<>();
    private final List<Law> notOnFile = new ArrayList<>();

    private TyreLawFindings(Case given) {
        this.given = given;
        place = given.vehicle().jurisdiction();
        today = given.visit().date();
        wheels = FittedWheels.of(given);
    }

    public static Judgement judge(Case given) {
        return new TyreLawFindings(given).judge();
    }

    private Judgement judge() {
        if (wheels.isEmpty()) {
            return Judgement.NONE;
        }
        if (find(Limit.Kind.TREAD_LEGAL).isEmpty()) {
            notOnFile.add(Law.TREAD_DEPTH);
        }
        var always = find(Limit.Kind.WINTER_TYRES);
        var inWinterConditions = find(Limit.Kind.WINTER_TYRES_IN_WINTER_CONDITIONS);
        if (always.isEmpty() && inWinterConditions.isEmpty()) {
            notOnFile.add(Law.WINTER_TYRES);
        }
        always.ifPresent(law -> winterTyres(law, true));
        inWinterConditions.ifPresent(law -> winterTyres(law, false));
        studs();
        if (!notOnFile.isEmpty() && !place.equals(Vehicle.ANY_PLACE)) {
            notJudged.add(new FittingSaid.NoLawOnFile(PlaceOfLaw.of(place), Listed.and(notOnFile)));
        }
        return new Judgement(findings, notJudged);
    }

    private Optional<Limit> find(Limit.Kind kind) {
        return given.limits().findLaw(place, kind);
    }

    /** The last that was read of the wheel at this visit or one before it. */
    private @Nullable Double read(Measure measure, Fitted fitted) {
        return given.readingsByVisit().reversed().stream()
                .flatMap(read -> read.ofWheel(measure, fitted.tag()).stream())
                .map(Reading::value)
                .findFirst()
                .orElse(null);
    }

    private boolean studded(Fitted fitted) {
        var studs = read(Measure.STUDS, fitted);
        return studs != null && studs > 0;
    }

    private void winterTyres(Limit law, boolean always) {
        var from = law.bindsFrom(today, given.nextVisit());
        if (from.isEmpty()) {
            return;
        }
        var without = new ArrayList<Fitted>();
        var unread = new ArrayList<Fitted>();
        boolean snowflake = law.value() == 1;
        for (var fitted : wheels) {
            var mark = read(Measure.WINTER_MARK, fitted);
            boolean summer = fitted.set().season() == SeasonKind.SUMMER;
            if (studded(fitted) || fitted.spare()) {
                continue;
            }
            if (mark == null && !summer) {
                unread.add(fitted);
            } else if (mark == null || mark < (snowflake ? SNOWFLAKE : 1)) {
                without.add(fitted);
            }
        }
        if (!unread.isEmpty()) {
            notJudged.add(new FittingSaid.MarkNotRead(tags(unread), from.get()));
        }
        if (!without.isEmpty()) {
            boolean now = always && from.get().equals(today);
            add(
                    now ? null : from.get(),
                    new FittingSaid.NoWinterTyres(tags(without), days(law, from.get()), always),
                    new FittingSaid.NoWinterTyresPlain(days(law, from.get()), always, snowflake),
                    law,
                    Stream.concat(
                                    without.stream().map(this::mark),
                                    Stream.of(new Evidence(
                                            Aspect.WE_ADVISE, Advice.WINTER_TYRES_WHEN_COLD, Rule.ONE_KIND)))
                            .toList());
        }
    }

    private Evidence mark(Fitted fitted) {
        var mark = read(Measure.WINTER_MARK, fitted);
        return new Evidence(
                Aspect.ON_THE_TYRES,
                new FittingSaid.MarkOf(
                        fitted.tag(),
                        mark == null
                                ? new FittingSaid.SummerTyre(fitted.set().season())
                                : Scale.WINTER_MARK.told(mark)),
                Rule.AS_RECORDED);
    }

    private void studs() {
        var studded = wheels.stream().filter(this::studded).toList();
        if (studded.isEmpty()) {
            return;
        }
        var law = find(Limit.Kind.STUDS_FORBIDDEN);
        var inPart = find(Limit.Kind.STUDS_FORBIDDEN_IN_PART);
        if (law.isEmpty() && inPart.isEmpty() && find(Limit.Kind.STUDS_ALLOWED).isEmpty()) {
            notOnFile.add(Law.STUDS);
        }
        inPart.filter(each -> each.bindsFrom(today, given.nextVisit()).isPresent())
                .ifPresent(each -> notJudged.add(
                        new FittingSaid.StudsNotEverywhere(tags(studded), PlaceOfLaw.of(place), each.citation())));
        law.flatMap(each -> each.bindsFrom(today, given.nextVisit()))
                .ifPresent(from -> add(
                        from.equals(today) ? null : from,
                        new FittingSaid.StudsOutOfSeason(tags(studded), days(law.get(), from)),
                        new FittingSaid.StudsOutOfSeasonPlain(days(law.get(), from), from.equals(today)),
                        law.get(),
                        List.of()));
        boolean someHaveNone = wheels.stream()
                .map(fitted -> read(Measure.STUDS, fitted))
                .anyMatch(studs -> studs != null && studs == 0);
        if (someHaveNone) {
            findings.add(new Finding(
                            new Subject(Subject.Part.TYRE_FITTING, null, null, null),
                            Verdict.SPENT,
                            new FittingSaid.StudsOnSomeWheels(tags(studded)),
                            Advice.STUDS_ON_SOME,
                            null,
                            null,
                            0,
                            List.of(),
                            Rule.STUDS_ON_ALL)
                    .todo(Todo.Action.FIT_LAWFUL_TYRES));
        }
    }

    private static FittingSaid.@Nullable LawfulDays days(Limit law, LocalDate day) {
        return law.stretchAround(day)
                .map(stretch -> new FittingSaid.LawfulDays(stretch.first(), stretch.last()))
                .orElse(null);
    }

    private static String tags(List<Fitted> fitted) {
        return fitted.stream().map(Fitted::tag).collect(Collectors.joining(", "));
    }

    /**
     * A finding on what the law says.
     *
     * @param from null when it says so today
     */
    private void add(@Nullable LocalDate from, Said title, Said plainWords, Limit law, List<Evidence> more) {
        var source = law.citation();
        findings.add(new Finding(
                        new Subject(Subject.Part.TYRE_LAW, null, null, null),
                        from == null ? Verdict.SPENT : Verdict.RUNS_OUT,
                        title,
                        plainWords,
                        from,
                        null,
                        0,
                        Stream.concat(Stream.of(new Evidence(Aspect.LAW_ASKS, source, source)), more.stream())
                                .toList(),
                        source)
                .todo(Todo.Action.FIT_LAWFUL_TYRES));
    }
}
