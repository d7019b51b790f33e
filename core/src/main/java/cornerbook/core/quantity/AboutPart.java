package cornerbook.core.quantity;

import cornerbook.core.say.Said;

/** A refusal that is about one part of the input, so that whoever asked for that part can be shown it there. */
public interface AboutPart extends Said {
    /** The part, as a person calls it: "rim width". */
    Said what();
}
