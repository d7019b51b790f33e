package cornerbook.core.brake.pads.judge;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.pads.BrakeCause;
import cornerbook.core.brake.pads.BrakeDiagnosis;
import cornerbook.core.brake.pads.BrakeLook;
import cornerbook.core.brake.pads.BrakeSign;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The likely causes at one corner from what was read there: pads against each other, along themselves and against the other side,
 * pins, movement, piston, rust.
 */
final class BrakeCauses {
    private static final int TOLD = 3;
    private static final double WORTH_TELLING = 0.05;
    private static final double PERCENT = 100;

    /** Guides and pins are freed and lubricated; these are repaired or replaced. */
    private static final Set<BrakeCause> REPAIRED =
            EnumSet.of(BrakeCause.PISTON_SEIZED, BrakeCause.HOSE_RESTRICTED, BrakeCause.PARKING_BRAKE_DRAGGING);

    /** What is read of a part once it was freed, the first that is there: pads that move freely say so of the pins, too. */
    private static final Map<BrakeCause, List<Measure>> AFTER_SERVICE = Map.of(
            BrakeCause.SLIDE_PINS_SEIZED,
                    List.of(Measure.PIN_MOVEMENT_AFTER_SERVICE, Measure.PAD_MOVEMENT_AFTER_SERVICE),
            BrakeCause.PISTON_SEIZED, List.of(Measure.PISTON_MOVEMENT_AFTER_SERVICE),
            BrakeCause.PAD_STUCK_IN_BRACKET, List.of(Measure.PAD_MOVEMENT_AFTER_SERVICE));

    private final BrakeCorner at;
    private final BrakeDiagnosis diagnosis;
    private final List<BrakeSign> signs;
    private final List<BrakeCause> found;

    private BrakeCauses(BrakeCorner at, BrakeDiagnosis diagnosis, List<BrakeSign> signs, List<BrakeCause> found) {
        this.at = at;
        this.diagnosis = diagnosis;
        this.signs = signs;
        this.found = found;
    }

    static BrakeCauses of(BrakeCorner at) {
        var signs = new ArrayList<BrakeSign>();
        var inner = at.padMm(Spot.INNER);
        var outer = at.padMm(Spot.OUTER);
        if (inner.isPresent() && outer.isPresent()) {
            signs.add(BrakeLook.innerAgainstOuter(inner.getAsDouble(), outer.getAsDouble()));
        }
        at.taper().ifPresent(edges -> signs.add(BrakeLook.taper(edges.getFirst(), edges.getLast())));
        var here = at.thinnestPadMm();
        var there = at.otherSide().thinnestPadMm();
        if (here.isPresent() && there.isPresent()) {
            signs.add(BrakeLook.leftAgainstRight(here.getAsDouble(), there.getAsDouble()));
        }
        at.worst(Measure.PAD_MOVEMENT)
                .ifPresent(worst ->
                        signs.add(movement(worst, BrakeSign.PAD_FREE, BrakeSign.PAD_TIGHT, BrakeSign.PAD_STUCK)));
        at.read(Measure.SLIDE_PIN_MOVEMENT)
                .ifPresent(pins -> signs.add(movement(
                        pins, BrakeSign.SLIDE_PINS_FREE, BrakeSign.SLIDE_PINS_TIGHT, BrakeSign.SLIDE_PINS_STUCK)));
        var pistons = at.pistons();
        pistons.stream()
                .max(Comparator.comparingDouble(Reading::value))
                .filter(worst -> Math.round(worst.value()) > 0
                        || pistons.size() == at.brake().pistons())
                .ifPresent(worst -> signs.add(
                        movement(worst, BrakeSign.PISTON_FREE, BrakeSign.PISTON_TIGHT, BrakeSign.PISTON_STUCK)));
        at.read(Measure.PISTON_RETURN)
                .ifPresent(returned -> signs.add(
                        BrakeLook.pistonReturn(returned.value(), at.brake().runoutLimitMm())));
        rust(at).ifPresent(signs::add);
        var equipment = new BrakeDiagnosis.Equipment(
                at.brake().caliper() == BrakeSpecification.Caliper.SLIDING, hasParkingBrake(at));
        var settled = settled(at);
        return new BrakeCauses(
                at,
                BrakeDiagnosis.of(equipment, signs, settled),
                signs,
                settled.found().stream().sorted().toList());
    }

    /** What a hand, or the bleeder, has settled: seized is found, free is disproved, tight is a sign. */
    private static BrakeDiagnosis.Settled settled(BrakeCorner at) {
        var found = EnumSet.noneOf(BrakeCause.class);
        var disproved = EnumSet.noneOf(BrakeCause.class);
        settle(
                BrakeCause.SLIDE_PINS_SEIZED,
                at.read(Measure.SLIDE_PIN_MOVEMENT).stream().toList(),
                1,
                found,
                disproved);
        settle(BrakeCause.PISTON_SEIZED, at.pistons(), at.brake().pistons(), found, disproved);
        settle(
                BrakeCause.PAD_STUCK_IN_BRACKET,
                BrakeCorner.SIDES.stream()
                        .flatMap(side -> at.read(Measure.PAD_MOVEMENT, side).stream())
                        .toList(),
                BrakeCorner.SIDES.size(),
                found,
                disproved);
        settle(
                BrakeCause.HOSE_RESTRICTED,
                at.read(Measure.HOSE_HOLDS_PRESSURE).stream().toList(),
                1,
                found,
                disproved);
        settle(
                BrakeCause.PARKING_BRAKE_DRAGGING,
                at.read(Measure.PARKING_LEVER_MOVEMENT).stream().toList(),
                1,
                found,
                disproved);
        return new BrakeDiagnosis.Settled(found, disproved);
    }

    /**
     * One cause by its looks.
     *
     * @param all how many looks there are; only all of them together disprove it
     */
    private static void settle(
            BrakeCause cause, List<Reading> looks, int all, Set<BrakeCause> found, Set<BrakeCause> disproved) {
        if (looks.stream().anyMatch(Reading::isWorst)) {
            found.add(cause);
        } else if (looks.size() == all && looks.stream().allMatch(look -> Math.round(look.value()) == 0)) {
            disproved.add(cause);
        }
    }

    /** What was found by hand, each a fact. */
    List<BrakeCause> found() {
        return found;
    }

    /** Whether each part that was found at fault moves freely since it was serviced at this visit. */
    boolean arePutRight() {
        return !found.isEmpty()
                && found.stream()
                        .allMatch(cause -> AFTER_SERVICE.getOrDefault(cause, List.of()).stream()
                                .flatMap(after -> at.read(after).stream())
                                .findFirst()
                                .filter(after -> Math.round(after.value()) == 0)
                                .isPresent());
    }

    /** Whether a part that no cleaning frees was found at fault or, where nothing was found, is the likeliest cause. */
    boolean asksForRepair() {
        return found.isEmpty()
                ? likeliest().filter(REPAIRED::contains).isPresent()
                : found.stream().anyMatch(REPAIRED::contains);
    }

    /** The likeliest cause, unless it is that nothing is wrong. */
    Optional<BrakeCause> likeliest() {
        return Optional.of(diagnosis.likeliest()).filter(cause -> cause != BrakeCause.NOTHING);
    }

    /** The causes with their probabilities, then each sign with its row of the table. */
    List<Evidence> evidence() {
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                PadSaid.Label.LIKELY_CAUSE,
                Listed.commas(diagnosis
                        .ranked()
                        .filter(cause -> diagnosis.probability(cause) >= WORTH_TELLING)
                        .limit(TOLD)
                        .map(cause -> new PadSaid.CauseChance(cause, percent(PERCENT * diagnosis.probability(cause))))
                        .toList()),
                new PadSaid.BayesRule(Listed.commas(signs))));
        var first = diagnosis.likeliest();
        for (var sign : signs) {
            evidence.add(new Evidence(
                    new PadSaid.SignSeen(sign),
                    new PadSaid.ShownBy(
                            percent(sign.percentUnder(first)), first, percent(sign.percentUnder(BrakeCause.NOTHING))),
                    sign.source()));
        }
        return evidence;
    }

    private static Amount percent(double percent) {
        return Amount.of(percent, "%");
    }

    /** Where its kind is not known, the rear has it. */
    private static boolean hasParkingBrake(BrakeCorner at) {
        var kind = at.brake().details().parkingBrake();
        return kind == null ? at.corner().axle() == Axle.REAR : kind != BrakeDetails.ParkingBrake.NONE;
    }

    private static Optional<BrakeSign> rust(BrakeCorner at) {
        return at.read(Measure.DISC_RUST, Spot.INNER)
                .flatMap(inner -> at.read(Measure.DISC_RUST, Spot.OUTER)
                        .map(outer -> BrakeLook.rust(inner.value() / PERCENT, outer.value() / PERCENT)));
    }

    private static BrakeSign movement(Reading reading, BrakeSign free, BrakeSign tight, BrakeSign stuck) {
        return switch ((int) Math.round(reading.value())) {
            case 0 -> free;
            case 1 -> tight;
            default -> stuck;
        };
    }
}
