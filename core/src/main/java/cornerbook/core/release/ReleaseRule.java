package cornerbook.core.release;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.core.release.OpenPoint.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What opens a point of the work, and what closes it, by names that a tablet without a network goes by, too. Common practice, no
 * source; every one of them is forgotten now and then.
 *
 * @param openedBy any of these opens it: a reading by its measure and corner, the same behind {@link #NOT} where it was answered
 *     "not done", {@link #WHEELS_ON},
 *     or {@link #ALWAYS}
 * @param closedBy what closes it, the same way
 */
public record ReleaseRule(OpenPoint point, List<String> openedBy, String closedBy) {
    /** Open from the beginning. */
    public static final String ALWAYS = "ALWAYS";

    /** The wheels that the car leaves on are recorded. */
    public static final String WHEELS_ON = "WHEELS_ON";

    /** Followed by the corner: every fastener was ticked, or a torque was read; and no tick was taken back. */
    public static final String TIGHT = "TIGHT.";

    /** A second person has checked the torque. */
    public static final String SECOND_CHECK = "SECOND_CHECK";

    /** Before a reading that was answered "not done". */
    public static final String NOT = "NOT.";

    /** Work for which the caliper comes off its pads. */
    private static final List<Measure> CALIPER_OFF = List.of(
            Measure.BRACKET_CLEANED,
            Measure.PIN_LUBRICANT,
            Measure.ABUTMENT_LUBRICANT,
            Measure.PAD_MOVEMENT_AFTER_SERVICE,
            Measure.PADS_REPLACED,
            Measure.DISC_REPLACED,
            Measure.BRAKE_HARDWARE_REPLACED,
            Measure.PISTON_MOVEMENT,
            Measure.PISTON_2_MOVEMENT,
            Measure.PISTON_3_MOVEMENT,
            Measure.PISTON_4_MOVEMENT,
            Measure.PISTON_5_MOVEMENT,
            Measure.PISTON_6_MOVEMENT,
            Measure.PISTON_RETURN,
            Measure.PIN_MOVEMENT_AFTER_SERVICE,
            Measure.PISTON_MOVEMENT_AFTER_SERVICE);

    /** Work under a drum, after which its shoes are adjusted. */
    private static final List<Measure> DRUM_OFF = List.of(
            Measure.SHOES_CLEANED,
            Measure.SHOE_MOVEMENT_AFTER_SERVICE,
            Measure.SHOES_REPLACED,
            Measure.DRUM_REPLACED,
            Measure.WHEEL_CYLINDER_REPLACED);

    /** Work for which the hydraulics are opened. */
    private static final List<Measure> OPENED = List.of(Measure.HOSE_HOLDS_PRESSURE, Measure.BRAKE_HOSE_REPLACED);

    /** What is done to a wheel that is off the car: a hole is repaired from inside, and grams are found on the balancer. */
    private static final Set<Measure> ON_THE_BENCH = EnumSet.of(Measure.PUNCTURE_REPAIRED, Measure.BALANCE_WEIGHTS);

    /** What is read or done at a brake while its wheel is off, or to that wheel. */
    private static final List<Measure> WHEEL_OFF = Arrays.stream(Measure.values())
            .filter(measure -> ON_THE_BENCH.contains(measure) || isReadBehindTheWheel(measure))
            .toList();

    public ReleaseRule {
        openedBy = List.copyOf(openedBy);
    }

    /**
     * Every rule, whether or not its point is open.
     *
     * @param asksSecondCheck whether the shop asks a second person to check the torque
     * @param retorqueMissed whether the car came on wheels that were due to be tightened again. Once it is recorded which wheels
     *     it leaves on, each of them asks for its torque, whether or not it was off
     */
    public static List<ReleaseRule> all(boolean asksSecondCheck, boolean retorqueMissed) {
        var rules = new ArrayList<ReleaseRule>();
        if (retorqueMissed) {
            rules.add(new ReleaseRule(OpenPoint.work(Kind.RETORQUE, null), List.of(ALWAYS), WHEELS_ON));
        }
        rules.add(of(
                Kind.SERVICE_MODE,
                null,
                Stream.of(place(Measure.PARKING_BRAKE_IN_SERVICE_MODE, null)),
                Measure.PARKING_BRAKE_CYCLED));
        for (var corner : Corner.values()) {
            rules.add(of(Kind.CALIPER, corner, at(CALIPER_OFF, corner), Measure.CALIPER_CLOSED));
            rules.add(of(Kind.DRUM, corner, at(DRUM_OFF, corner), Measure.DRUM_CLOSED));
            rules.add(of(
                    Kind.BRACKET,
                    corner,
                    Stream.of(place(Measure.DISC_REPLACED, corner)),
                    Measure.BRACKET_BOLTS_TORQUED));
        }
        rules.add(of(
                Kind.PEDAL,
                null,
                Stream.concat(
                        Stream.of(CALIPER_OFF, DRUM_OFF, OPENED).flatMap(ReleaseRule::atAnyCorner),
                        Stream.of(place(Measure.BRAKE_FLUID_REPLACED, null))),
                Measure.PEDAL_PUMPED));
        rules.add(new ReleaseRule(
                OpenPoint.work(Kind.WHEELS, null), atAnyCorner(WHEEL_OFF).toList(), WHEELS_ON));
        for (var corner : Corner.values()) {
            rules.add(new ReleaseRule(OpenPoint.work(Kind.TORQUE, corner), List.of(WHEELS_ON), TIGHT + corner));
        }
        if (asksSecondCheck) {
            rules.add(new ReleaseRule(OpenPoint.work(Kind.SECOND_CHECK, null), List.of(WHEELS_ON), SECOND_CHECK));
        }
        return List.copyOf(rules);
    }

    private static boolean isReadBehindTheWheel(Measure measure) {
        return measure.carrier() == Measure.Carrier.CORNER
                && !measure.isReadIn(WorkStep.AFTER_THE_DRIVE)
                && !measure.isReadIn(WorkStep.LOOK_OVER);
    }

    /** Whether it is work at one brake after which the pedal has to be pumped. */
    static boolean opensBrake(Measure measure) {
        return Stream.of(CALIPER_OFF, DRUM_OFF, OPENED).anyMatch(work -> work.contains(measure));
    }

    private static ReleaseRule of(Kind kind, @Nullable Corner corner, Stream<String> openedBy, Measure closedBy) {
        var closes = place(closedBy, corner);
        return new ReleaseRule(
                OpenPoint.work(kind, corner),
                Stream.concat(openedBy, Stream.of(NOT + closes)).toList(),
                closes);
    }

    private static Stream<String> atAnyCorner(List<Measure> measures) {
        return Arrays.stream(Corner.values()).flatMap(corner -> at(measures, corner));
    }

    private static Stream<String> at(List<Measure> measures, Corner corner) {
        return measures.stream().map(measure -> place(measure, corner));
    }

    static String place(Reading reading) {
        return place(reading.measure(), reading.corner());
    }

    static String place(Measure measure, @Nullable Corner corner) {
        return measure.name() + "." + (corner == null ? "" : corner.name());
    }
}
