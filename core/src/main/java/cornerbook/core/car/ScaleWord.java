package cornerbook.core.car;

import cornerbook.core.say.Said;

/**
 * A word of a scale for people; what a file or an address calls it stands in {@link Scale#words}.
 *
 * @param place in the scale, counted from 0
 */
public record ScaleWord(Scale scale, int place) implements Said {}
