package cornerbook.core.brake.fluid;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Said;

/**
 * What is no grade of brake fluid.
 *
 * @param written what stood there
 * @param grades those that there are
 */
public record NoSuchGrade(Quoted written, String grades) implements Said {}
