package cornerbook.core.car;

import cornerbook.core.say.Said;

/** A measure inside a sentence: "tread depth". */
public record MeasureName(Measure measure) implements Said {}
