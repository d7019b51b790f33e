package cornerbook.app.sheet;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;

/** Why labels cannot be printed where they were asked. */
public interface SheetSaid extends Said {
    record FirstLabel(int first, int count) implements SheetSaid {}

    record LabelsMoved(Amount right, Amount down, Between allowed) implements SheetSaid {}
}
