package cornerbook.core.brake;

import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The brake of one axle.
 *
 * @param electricParkingBrake whether a motor moves the parking brake of this axle
 */
public record BrakeSpecification(FrictionBrake friction, boolean electricParkingBrake, BrakeDetails details) {

    /** Nobody has looked. */
    public static final BrakeSpecification NOT_KNOWN =
            new BrakeSpecification(new UnknownBrake(), false, BrakeDetails.NOT_KNOWN);

    /** How the caliper reaches the outer pad. */
    public enum Caliper implements Said {
        SLIDING,
        FIXED
    }

    /** Why a kind of parking brake cannot be. */
    public enum ParkingBrakeRefusal implements Said {
        MOTOR_NOT_ELECTRIC,
        ELECTRIC_WITHOUT_MOTOR
    }

    /** Something of a disc is told of an axle with drums. */
    public record DiscAtDrum() implements Said {}

    /** Rivets are told of an axle whose brake has no shoes. */
    public record RivetsAtDisc() implements Said {}

    /** A minimum of the parking brake's shoes is told of an axle that has none inside its discs. */
    public record NoParkingShoes() implements Said {}

    public BrakeSpecification {
        if (friction instanceof DiscBrake disc) {
            Range.checkKnown(
                    BrakePart.REFINISH_THICKNESS,
                    details.refinishThicknessMm(),
                    disc.discMinimumMm(),
                    disc.discNewMm(),
                    "mm");
        } else if (friction instanceof DrumBrake && details.tellsOfDisc()) {
            throw new Refused(new DiscAtDrum());
        }
        if (friction instanceof DiscBrake && details.liningRiveted() != null) {
            throw new Refused(new RivetsAtDisc());
        }
        if (details.parkingLiningMinimumMm() != null && !hasParkingShoes(friction, details)) {
            throw new Refused(new NoParkingShoes());
        }
        checkParkingBrake(details.parkingBrake(), electricParkingBrake);
    }

    /** A disc brake, its lines one by one. */
    public BrakeSpecification(
            Caliper caliper,
            boolean electricParkingBrake,
            double padNewMm,
            double padMinimumMm,
            double discNewMm,
            double discMinimumMm,
            double runoutLimitMm,
            double thicknessVariationLimitMm,
            BrakeDetails details) {
        this(
                new DiscBrake(
                        caliper,
                        padNewMm,
                        padMinimumMm,
                        discNewMm,
                        discMinimumMm,
                        runoutLimitMm,
                        thicknessVariationLimitMm),
                electricParkingBrake,
                details);
    }

    /** A disc brake of which only the limits are known. */
    public BrakeSpecification(
            Caliper caliper,
            boolean electricParkingBrake,
            double padNewMm,
            double padMinimumMm,
            double discNewMm,
            double discMinimumMm,
            double runoutLimitMm,
            double thicknessVariationLimitMm) {
        this(
                caliper,
                electricParkingBrake,
                padNewMm,
                padMinimumMm,
                discNewMm,
                discMinimumMm,
                runoutLimitMm,
                thicknessVariationLimitMm,
                BrakeDetails.NOT_KNOWN);
    }

    /** Whether anybody has looked: one that is not known has neither disc nor drum by which to judge. */
    public boolean isKnown() {
        return !(friction instanceof UnknownBrake);
    }

    public boolean hasDisc() {
        return friction instanceof DiscBrake;
    }

    public boolean hasDrum() {
        return friction instanceof DrumBrake;
    }

    /** Whether shoes inside its discs hold the car when it stands. */
    public boolean hasParkingShoes() {
        return hasParkingShoes(friction, details);
    }

    private static boolean hasParkingShoes(FrictionBrake friction, BrakeDetails details) {
        return details.parkingBrake() == ParkingBrake.DRUM_IN_DISC && !(friction instanceof DrumBrake);
    }

    /** Whether there are shoes at all, to brake or to park. */
    public boolean hasShoes() {
        return hasDrum() || hasParkingShoes();
    }

    /** Whether the lining of its drums is riveted to the shoes. */
    public boolean hasRivetedLining() {
        return hasDrum() && Boolean.TRUE.equals(details.liningRiveted());
    }

    public Optional<DrumBrake> drum() {
        return friction instanceof DrumBrake drum ? Optional.of(drum) : Optional.empty();
    }

    public boolean hasCaliper(Caliper kind) {
        return friction instanceof DiscBrake disc && disc.caliper() == kind;
    }

    /** Whether it is looked after as one with such a caliper: what nobody has looked up is taken for a sliding one, as most are. */
    public boolean mayHaveCaliper(Caliper kind) {
        return isKnown() ? hasCaliper(kind) : kind == Caliper.SLIDING;
    }

    /** Pistons of one caliper; 1 where nobody has counted them, 0 at a drum. */
    public int pistons() {
        var counted = details.pistons();
        return hasDrum() ? 0 : counted == null ? 1 : counted;
    }

    public Caliper caliper() {
        return disc().caliper();
    }

    public double padNewMm() {
        return disc().padNewMm();
    }

    public double padMinimumMm() {
        return disc().padMinimumMm();
    }

    public double discNewMm() {
        return disc().discNewMm();
    }

    public double discMinimumMm() {
        return disc().discMinimumMm();
    }

    public double runoutLimitMm() {
        return disc().runoutLimitMm();
    }

    public double thicknessVariationLimitMm() {
        return disc().thicknessVariationLimitMm();
    }

    private DiscBrake disc() {
        if (friction instanceof DiscBrake disc) {
            return disc;
        }
        throw new IllegalStateException("an axle without known discs was asked for its disc; ask hasDisc() first");
    }

    private static void checkParkingBrake(@Nullable ParkingBrake kind, boolean electric) {
        if (kind == null || kind == ParkingBrake.DRUM_IN_DISC) {
            return;
        }
        boolean motor = kind == ParkingBrake.MOTOR_ON_CALIPER || kind == ParkingBrake.MOTOR_PULLING_CABLES;
        if (motor != electric) {
            throw new Refused(
                    motor ? ParkingBrakeRefusal.MOTOR_NOT_ELECTRIC : ParkingBrakeRefusal.ELECTRIC_WITHOUT_MOTOR);
        }
    }
}
