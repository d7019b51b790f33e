package cornerbook.core.brake.drum.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.drum.judge.DrumSaid.Ground;
import cornerbook.core.brake.drum.judge.DrumSaid.Label;
import cornerbook.core.brake.drum.judge.DrumSaid.NotRead;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.judge.GaugeError;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Findings on the shoes of a parking brake inside a disc. They hold a car that stands and hardly wear, so nothing is forecast of them; they
 * are seen when the disc is off, and missed only then.
 */
public final class ParkingShoeFindings {
    /** Makers' service manuals agree on it, for lining of 2.4 to 4.0 mm when new. */
    private static final double USUAL_MINIMUM_MM = 1;

    private ParkingShoeFindings() {}

    /** What is found of the shoes at a corner whose axle has them; nothing elsewhere. */
    public static Judgement judge(BrakeCorner at) {
        if (!at.brake().hasParkingShoes()) {
            return Judgement.of(List.of());
        }
        boolean replaced = at.done(Measure.SHOES_REPLACED);
        var read = replaced ? Optional.<Reading>empty() : at.read(Measure.LINING_THICKNESS);
        boolean soaked = !replaced && at.done(Measure.LINING_SOAKED);
        if (!replaced && read.isEmpty() && !soaked) {
            return at.done(Measure.DISC_REPLACED)
                    ? Judgement.missing(List.of(new DrumSaid.NotJudged(at.corner(), NotRead.PARKING_LINING)))
                    : Judgement.of(List.of());
        }
        return Judgement.of(List.of(finding(at, read, replaced, soaked)));
    }

    /** What the lining at each corner with such shoes has to have. */
    public static List<ReadingLimit> limits(Case given) {
        return Arrays.stream(Corner.values())
                .filter(corner -> given.vehicle().axle(corner.axle()).brake().hasParkingShoes())
                .map(corner -> limit(corner, given.vehicle().axle(corner.axle()).brake()))
                .flatMap(limit -> GaugeError.told(limit).stream())
                .toList();
    }

    private static ReadingLimit limit(Corner corner, BrakeSpecification brake) {
        double minimumMm = minimumMm(brake);
        return ReadingLimit.atLeast(
                minimumMm,
                Measure.LINING_THICKNESS,
                new Subject(Subject.Part.SHOE, corner, null, null),
                Verdict.SPENT,
                new DrumSaid.ReplaceParkingShoes(mm(minimumMm)),
                source(brake),
                Measure.SHOES_REPLACED);
    }

    private static double minimumMm(BrakeSpecification brake) {
        var makers = brake.details().parkingLiningMinimumMm();
        return makers == null ? USUAL_MINIMUM_MM : makers;
    }

    private static Said source(BrakeSpecification brake) {
        return brake.details().parkingLiningMinimumMm() == null
                ? Ground.USUAL_PARKING_LINING
                : BrakeSaid.Ground.VEHICLE_SPECIFICATION;
    }

    private static Finding finding(BrakeCorner at, Optional<Reading> read, boolean replaced, boolean soaked) {
        var corner = at.corner();
        double minimumMm = minimumMm(at.brake());
        var words = new ArrayList<Said>();
        var evidence = new ArrayList<Evidence>();
        var verdict = Verdict.HOLDS;
        boolean beyond = false;
        Said title =
                replaced ? new DrumSaid.NewParkingShoesTitle(corner) : new DrumSaid.SoakedParkingShoesTitle(corner);
        if (replaced) {
            words.add(new DrumSaid.NewParkingShoes(corner));
            evidence.add(
                    new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
        } else if (read.isPresent()) {
            double liningMm = read.get().value();
            if (!soaked) {
                title = new DrumSaid.ParkingLiningTitle(corner, mm(liningMm), mm(minimumMm));
            }
            beyond = !limit(corner, at.brake()).holds(liningMm);
            verdict = beyond ? Verdict.SPENT : Verdict.HOLDS;
            if (verdict == Verdict.SPENT) {
                words.add(new DrumSaid.ParkingLiningWorn(corner));
            } else if (!soaked) {
                words.add(new DrumSaid.ParkingLiningEnough(corner));
            }
            GaugeError.told(liningMm, minimumMm).ifPresent(words::add);
            evidence.add(new Evidence(Label.LINING, mm(liningMm), Evidence.howRead(read.get())));
        }
        evidence.add(new Evidence(BrakeSaid.Label.MINIMUM, mm(minimumMm), source(at.brake())));
        if (soaked) {
            verdict = Verdict.SPENT;
            words.add(new DrumSaid.ParkingLiningSoaked());
            at.read(Measure.LINING_SOAKED)
                    .ifPresent(reading -> evidence.add(
                            new Evidence(Label.SOAKED, Scale.SIGN.told(reading.value()), Ground.SOAKED_LAW)));
        }
        boolean tooNear = words.stream().anyMatch(GaugeError.TooNearToTell.class::isInstance);
        var finding = new Finding(
                        new Subject(Subject.Part.SHOE, corner, null, null),
                        verdict,
                        title,
                        Listed.sentences(words),
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : 0,
                        evidence,
                        source(at.brake()))
                .todo(tooNear && !soaked ? Todo.Action.MEASURE_AGAIN : Todo.Action.REPLACE_PAIR);
        return beyond ? finding.beforeLeaving() : finding;
    }

    private static Amount mm(double value) {
        return new Amount(value, "mm", 1);
    }
}
