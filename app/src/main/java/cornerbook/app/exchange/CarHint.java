package cornerbook.app.exchange;

import cornerbook.core.say.Said;

/** What a field is, one sentence. */
record CarHint(CarItem item) implements Said {}
