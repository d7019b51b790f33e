package cornerbook.core.brake.fluid;

import cornerbook.core.say.Said;

/**
 * What is no grade of brake fluid.
 *
 * @param written what stood there, quoted
 * @param grades those that there are
 */
public record NoSuchGrade(String written, String grades) implements Said {}
