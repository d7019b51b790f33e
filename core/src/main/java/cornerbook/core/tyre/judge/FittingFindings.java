package cornerbook.core.tyre.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.tyre.judge.FittedWheels.Fitted;
import cornerbook.core.tyre.judge.FittingSaid.Advice;
import cornerbook.core.tyre.judge.FittingSaid.Aspect;
import cornerbook.core.tyre.judge.FittingSaid.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Findings on the four tyres that a car leaves on, together: wheels of several sets, sizes and models of an axle, axles swapped,
 * tyres against their arrow or inside out, temporary spares. Unsafe is what nobody should drive: wheels of one axle that turn
 * at different speeds, and two spares at once. A tyre that runs the wrong way fails the UK inspection and loses grip in the wet, but
 * is not dangerous (guidance of a motoring association, 2012 and 2017).
 */
public final class FittingFindings {
    /** Vehicle makers' manuals for temporary spares: 50 mph, 80 km/h. */
    private static final double SPARE_KMH = 80;

    private static final Pattern NEITHER_LETTER_NOR_DIGIT = Pattern.compile("[^\\p{L}\\p{N}]");

    private final Case given;
    private final List<Fitted> wheels;
    private final List<Finding> findings = new ArrayList<>();

    private FittingFindings(Case given) {
        this.given = given;
        wheels = FittedWheels.of(given);
    }

    /** One finding for each thing that does not go together; none for tyres fitted right. */
    public static Judgement judge(Case given) {
        return new FittingFindings(given).judge();
    }

    private Judgement judge() {
        sets();
        for (var axle : Axle.values()) {
            var both = FittedWheels.on(axle, wheels);
            if (both.size() == 2) {
                sizes(axle, both.getFirst(), both.getLast());
            }
        }
        swapped();
        wheels.forEach(this::stands);
        spares();
        return Judgement.of(findings);
    }

    private void sets() {
        var sets = wheels.stream()
                .filter(wheel -> !wheel.spare())
                .map(Fitted::set)
                .distinct()
                .toList();
        if (sets.size() < 2) {
            return;
        }
        boolean seasons = sets.stream().map(set -> set.season()).distinct().count() > 1;
        add(
                null,
                null,
                seasons ? Verdict.SPENT : Verdict.HOLDS,
                new FittingSaid.WheelsOfSets(sets.size(), standing()),
                seasons ? Advice.MIXED_SEASONS : Advice.MIXED_SETS,
                List.of(new Evidence(Aspect.WHEELS_ON_CAR, standing(), Rule.AS_RECORDED)),
                Rule.ONE_KIND,
                Todo.Action.REFIT);
    }

    private Listed standing() {
        return Listed.commas(wheels.stream()
                .map(wheel -> new FittingSaid.StandsAt(
                        wheel.corner(), wheel.tag(), new SetOf(wheel.set().season())))
                .toList());
    }

    private void sizes(Axle axle, Fitted left, Fitted right) {
        var one = left.size();
        var other = right.size();
        if (left.spare() || right.spare() || one.isEmpty() || other.isEmpty()) {
            return;
        }
        if (FittedWheels.sameSize(one.get(), other.get())) {
            models(axle, left, right);
            return;
        }
        boolean apart = apartPercent(one.get(), other.get()) > TyrePlacardFindings.LARGER_PERCENT;
        add(
                null,
                null,
                apart ? Verdict.UNSAFE : Verdict.SPENT,
                new FittingSaid.SizesDiffer(
                        axle, left.wheel().tyre().size(), right.wheel().tyre().size()),
                new FittingSaid.SizesDifferPlain(axle, apart),
                List.of(new Evidence(
                        SidewallSaid.Label.OVERALL_DIAMETER,
                        new FittingSaid.Both(
                                new Amount(one.get().overallDiameterMm(), "mm", 0),
                                new Amount(other.get().overallDiameterMm(), "mm", 0)),
                        Said.verbatim("UN R30, 6.1.2: D = d + 2 S Ra/100"))),
                Rule.SIZE_ON_AXLE,
                Todo.Action.FIT_ANOTHER_WHEEL);
    }

    private static double apartPercent(TyreSize one, TyreSize other) {
        double a = one.overallDiameterMm();
        double b = other.overallDiameterMm();
        return 100 * (Math.max(a, b) / Math.min(a, b) - 1);
    }

    private void models(Axle axle, Fitted left, Fitted right) {
        var one = left.wheel().tyre().model();
        var other = right.wheel().tyre().model();
        if (one == null || other == null || bare(one).equals(bare(other))) {
            return;
        }
        add(
                null,
                null,
                Verdict.HOLDS,
                new FittingSaid.ModelsDiffer(axle, one, other),
                new FittingSaid.ModelsDifferPlain(axle),
                List.of(new Evidence(
                        Aspect.MODELS, new FittingSaid.Both(Said.verbatim(one), Said.verbatim(other)), Rule.SIDEWALLS)),
                Rule.MODEL_ON_AXLE,
                Todo.Action.FIT_ANOTHER_WHEEL);
    }

    /** The same model may be written with other capitals, blanks and hyphens. */
    private static String bare(String model) {
        return NEITHER_LETTER_NOR_DIGIT.matcher(model.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    private void swapped() {
        if (!FittedWheels.swapped(given)) {
            return;
        }
        add(
                null,
                null,
                Verdict.SPENT,
                new FittingSaid.SizesSwapped(
                        wheels.getFirst().wheel().tyre().size(),
                        wheels.getLast().wheel().tyre().size()),
                Advice.SWAPPED_AXLES,
                List.of(new Evidence(
                        SidewallSaid.Label.PLACARD_ASKS,
                        new FittingSaid.SizesSwapped(
                                given.vehicle().front().tyreSize(),
                                given.vehicle().rear().tyreSize()),
                        SidewallSaid.Ground.PLACARD)),
                Rule.SIZES_OF_PLACARD,
                Todo.Action.REFIT);
    }

    /** What was seen at the tyre outranks where it stood before: a tyre may have been turned on its rim. */
    private void stands(Fitted fitted) {
        var seen = given.readings()
                .at(Measure.MOUNTED, fitted.corner(), fitted.tag(), null)
                .map(Reading::value);
        if (seen.isPresent()) {
            if (seen.get() >= 1) {
                boolean insideOut = seen.get() > 1;
                way(
                        fitted,
                        new FittingSaid.StandsWrong(fitted.corner(), fitted.tag(), insideOut),
                        new FittingSaid.StandsWrongPlain(fitted.corner(), insideOut));
            }
            return;
        }
        var before = given.runs().lastCorner(fitted.tag());
        if (Boolean.TRUE.equals(fitted.wheel().tyre().directional())
                && before != null
                && before.side() != fitted.corner().side()) {
            way(
                    fitted,
                    new FittingSaid.ChangedSide(fitted.corner(), fitted.tag(), before.side()),
                    new FittingSaid.ChangedSidePlain(fitted.corner()));
        }
    }

    private void way(Fitted fitted, Said title, Said plainWords) {
        add(
                fitted.corner(),
                fitted,
                Verdict.SPENT,
                title,
                plainWords,
                List.of(new Evidence(Aspect.HOW_IT_STANDS, title, Rule.AS_RECORDED)),
                Rule.SIDEWALL_INSTRUCTIONS,
                Todo.Action.REFIT);
    }

    private void spares() {
        var spares = wheels.stream().filter(Fitted::spare).toList();
        boolean several = spares.size() > 1;
        for (var spare : spares) {
            var highest = Amount.of(SPARE_KMH, "km/h");
            var evidence = new ArrayList<Evidence>();
            evidence.add(new Evidence(
                    Aspect.SPARE, Said.verbatim(spare.wheel().tyre().size()), Rule.SIDEWALLS));
            if (given.vehicle().mayDrive(spare.corner().axle())) {
                evidence.add(new Evidence(Aspect.DRIVEN_AXLE, Advice.SPARE_OFF_DRIVEN_AXLE, Rule.SPARE_MANUALS));
            }
            add(
                    spare.corner(),
                    spare,
                    several ? Verdict.UNSAFE : Verdict.SPENT,
                    new FittingSaid.SpareFitted(spare.corner(), spare.tag(), highest),
                    new FittingSaid.SpareFittedPlain(spare.corner(), highest, several),
                    evidence,
                    Rule.SPARE_MANUALS,
                    Todo.Action.FIT_ANOTHER_WHEEL);
        }
    }

    private void add(
            @Nullable Corner corner,
            @Nullable Fitted wheel,
            Verdict verdict,
            Said title,
            Said plainWords,
            List<Evidence> evidence,
            Said source,
            Todo.Action action) {
        findings.add(new Finding(
                        new Subject(Subject.Part.TYRE_FITTING, corner, wheel == null ? null : wheel.tag(), null),
                        verdict,
                        title,
                        plainWords,
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : 0,
                        evidence,
                        source)
                .todo(action));
    }
}
