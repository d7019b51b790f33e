package cornerbook.core.wheelplan.judge;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.judge.DifferenceSaid.Ground;
import cornerbook.core.wheelplan.judge.DifferenceSaid.Harm;
import cornerbook.core.wheelplan.judge.DifferenceSaid.Label;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Findings on wheels that differ more in depth than one axle, or all-wheel drive, allows, now or before the next visit.
 * The depth of a wheel is that of its least groove, at the posterior mean; it wears at the mean rates of its corner.
 */
public final class DifferenceFindings {
    /** No set is driven longer, whenever the next visit was agreed for. */
    private static final int MOST_YEARS = 10;

    private final WheelPlanning.Needs needs;
    /** Of the grooves of the wheel at each corner. */
    private final Map<Corner, List<Double>> depthsMm = new EnumMap<>(Corner.class);

    private final LocalDate today;
    private final LocalDate nextVisit;
    private final @Nullable DriveLayout drive;
    private final Limit house;

    private DifferenceFindings(Case given, WheelPlanning.Needs needs, Map<Corner, String> wheelAt) {
        this.needs = needs;
        wheelAt.forEach((corner, tag) -> depthsMm.put(
                corner,
                needs.request().wheels().stream()
                        .filter(wheel -> wheel.tag().equals(tag))
                        .findFirst()
                        .orElseThrow()
                        .depthsMm()));
        today = given.visit().date();
        nextVisit = given.nextVisit();
        drive = given.vehicle().drive();
        house = given.limit(Limit.Kind.TREAD_ALL_WHEEL);
    }

    /** One finding for each limit that is broken; none while the wheels of the set going on do not all stand on the car. */
    public static Judgement judge(Case given, WheelPlanning planning) {
        return given.goingOn()
                .flatMap(set -> given.standing(set)
                        .flatMap(wheelAt -> planning.find(set, given.visit().date())
                                .map(needs -> new DifferenceFindings(given, needs, wheelAt).judge())))
                .orElse(Judgement.NONE);
    }

    private Judgement judge() {
        var findings = new ArrayList<Finding>();
        for (var axle : Axle.values()) {
            sameAxle(axle).ifPresent(findings::add);
        }
        allWheel().ifPresent(findings::add);
        if (findings.isEmpty()) {
            allWheelOfTheHouse().ifPresent(findings::add);
        }
        return Judgement.of(findings);
    }

    private Optional<Finding> sameAxle(Axle axle) {
        var rule = needs.rules().sameAxle();
        return judge(
                corner -> corner.axle() == axle,
                rule.limitMm(),
                new DifferenceSaid.Tyres(axle),
                Harm.PULLS,
                new Evidence(Label.ALLOWED_ON_AXLE, tenths(rule.limitMm()), rule.source()),
                rule.source(),
                rule.houseRule());
    }

    private Optional<Finding> allWheel() {
        var limit = needs.rules().allWheel();
        return limit == null
                ? Optional.empty()
                : judge(
                        corner -> true,
                        limit.depthMm(),
                        new DifferenceSaid.Tyres(null),
                        Harm.STRAINS,
                        new Evidence(
                                Label.ALLOWED_AMONG_FOUR,
                                new DifferenceSaid.AllowedAmongFour(
                                        tenths(limit.valueMm()), limit.kind(), tenths(limit.depthMm())),
                                Ground.MANUFACTURER),
                        Ground.MANUFACTURER,
                        false);
    }

    /** Where the maker's limit of an all-wheel drive is not known; an axle that differs is told by itself. */
    private Optional<Finding> allWheelOfTheHouse() {
        if (drive != DriveLayout.ALL || needs.rules().allWheel() != null) {
            return Optional.empty();
        }
        var source = house.citation();
        return judge(
                corner -> true,
                house.value(),
                new DifferenceSaid.Tyres(null),
                Harm.STRAINS,
                new Evidence(Label.ALLOWED_AMONG_FOUR, tenths(house.value()), source),
                source,
                true);
    }

    private Optional<Finding> judge(
            Predicate<Corner> which,
            double limitMm,
            DifferenceSaid.Tyres who,
            Harm harm,
            Evidence allowed,
            Said source,
            boolean houseRule) {
        double nowMm = differenceMm(which, 0);
        var broken = firstDayBeyond(which, limitMm);
        if (broken == null) {
            return Optional.empty();
        }
        boolean now = broken.equals(today);
        // A house rule is a wish; only the manufacturer's limit ends a set.
        boolean spent = now && !houseRule;
        return Optional.of(new Finding(
                        new Subject(
                                Subject.Part.TREAD_DIFFERENCE,
                                null,
                                null,
                                needs.set().id()),
                        spent ? Verdict.SPENT : Verdict.RUNS_OUT,
                        now
                                ? new DifferenceSaid.Differ(who, hundredths(nowMm), hundredths(limitMm))
                                : new DifferenceSaid.WillDiffer(who, tenths(limitMm)),
                        new DifferenceSaid.DifferPlain(who, hundredths(nowMm), now, hundredths(limitMm), harm),
                        spent ? null : broken,
                        null,
                        Math.clamp(1 - nowMm / limitMm, 0, 1),
                        List.of(
                                new Evidence(Label.LOWEST_GROOVES, depths(which), Ground.CORNER_RATES),
                                allowed,
                                new Evidence(
                                        Label.AT_NEXT_VISIT,
                                        tenths(differenceMm(which, kmUntil(nextVisit))),
                                        Ground.MEAN_RATES)),
                        new DifferenceSaid.ByMethod(source))
                .todo(Todo.Action.SWAP_WHEELS));
    }

    private @Nullable LocalDate firstDayBeyond(Predicate<Corner> which, double limitMm) {
        var latest = today.plusYears(MOST_YEARS);
        for (var day = today; !day.isAfter(nextVisit) && !day.isAfter(latest); day = day.plusDays(1)) {
            if (differenceMm(which, kmUntil(day)) > limitMm) {
                return day;
            }
        }
        return null;
    }

    private double kmUntil(LocalDate day) {
        return needs.seasons().kmPerDay() * (day.toEpochDay() - today.toEpochDay());
    }

    private double differenceMm(Predicate<Corner> which, double afterKm) {
        double highest = Double.NEGATIVE_INFINITY;
        double lowest = Double.POSITIVE_INFINITY;
        for (var corner : Corner.values()) {
            if (which.test(corner)) {
                double depthMm = lowestMm(corner, afterKm);
                highest = Math.max(highest, depthMm);
                lowest = Math.min(lowest, depthMm);
            }
        }
        return highest - lowest;
    }

    /** Asked for each day until the next visit. */
    private double lowestMm(Corner corner, double afterKm) {
        var depths = Objects.requireNonNull(depthsMm.get(corner));
        var rates = Objects.requireNonNull(needs.request().ratesMmPer1000Km().get(corner));
        double lowest = Double.POSITIVE_INFINITY;
        for (int g = 0; g < depths.size(); g++) {
            lowest = Math.min(lowest, depths.get(g) - afterKm / 1000 * rates.get(g));
        }
        return Math.max(0, lowest);
    }

    private Said depths(Predicate<Corner> which) {
        return Listed.commas(Arrays.stream(Corner.values())
                .filter(which)
                .map(corner -> new DifferenceSaid.DepthAt(corner, tenths(lowestMm(corner, 0))))
                .toList());
    }

    private static Amount tenths(double depthMm) {
        return new Amount(depthMm, "mm", 1);
    }

    private static Amount hundredths(double depthMm) {
        return new Amount(depthMm, "mm", 2);
    }
}
