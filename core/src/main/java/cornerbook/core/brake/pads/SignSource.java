package cornerbook.core.brake.pads;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** Where the direction of a row of the signs comes from. */
public interface SignSource extends Said {
    /** Outer: pins, bushings, stuck pad. Inner: piston, its seal, pins, residual pressure. Taper: one pin or slide. */
    record UnevenWearLiterature() implements SignSource {}

    record PistonReturnAdvice(Amount movedOut) implements SignSource {}
}
