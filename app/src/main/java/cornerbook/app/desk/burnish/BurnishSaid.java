package cornerbook.app.desk.burnish;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What the page of the burnish drive says. */
interface BurnishSaid extends Said {
    record Drive(Amount from, Amount to, int stops, Amount spacing, int coolDownMinutes) implements BurnishSaid {}
}
