package cornerbook.core.finding;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** One thing that was done at a visit. */
public sealed interface Work extends Said {
    record WheelsChanged(SetOf off, SetOf on) implements Work {}

    /** Wheels of a set on a car that came on none that the book knows. */
    record WheelsFitted(SetOf on) implements Work {}

    record WheelsRotated() implements Work {}

    /** Single wheels of one set that were exchanged. */
    record WheelsExchanged(Listed corners) implements Work {}

    /**
     * Cold pressures as they were set.
     *
     * @param at of {@link PressureAt}
     */
    record PressuresSet(Listed at) implements Work {}

    /** A part of {@link PressuresSet}. */
    record PressureAt(Corner corner, Amount pressure) implements Said {}

    /**
     * Wheels whose torque was confirmed by a wrench.
     *
     * @param at of {@link TorqueAt}
     */
    record WheelsTorqued(Listed at) implements Work {}

    /** A part of {@link WheelsTorqued}. */
    record TorqueAt(Corner corner, Amount torque) implements Said {}

    /** Wheels whose fasteners were ticked as tightened, and no torque was read. */
    record WheelsTightened(Listed corners) implements Work {}

    record FluidReplaced() implements Work {}

    /**
     * Tyres with a hole that was repaired from the inside.
     *
     * @param wheels their tags: one that came off or went on is found by its tag wherever it is
     */
    record PuncturesRepaired(Listed wheels) implements Work {}

    /** Work at the brakes of some corners, after which they are to be minded on the first drives. */
    sealed interface AtBrakes extends Work {
        Listed corners();
    }

    record PadsReplaced(Listed corners) implements AtBrakes {}

    record DiscsReplaced(Listed corners) implements AtBrakes {}

    record ShoesReplaced(Listed corners) implements AtBrakes {}

    record DrumsReplaced(Listed corners) implements AtBrakes {}

    record WheelCylindersReplaced(Listed corners) implements AtBrakes {}

    record HosesReplaced(Listed corners) implements AtBrakes {}

    record HardwareReplaced(Listed corners) implements AtBrakes {}

    record CleanedAndLubricated(Listed corners) implements AtBrakes {}

    record Cleaned(Listed corners) implements AtBrakes {}

    record Lubricated(Listed corners) implements AtBrakes {}

    /** Discs that were moved on by some studs against their hubs. */
    record DiscsMovedOn(Listed corners) implements AtBrakes {}
}
