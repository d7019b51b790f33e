/**
 * Brings the burnish drive to a car: the masses, discs and tyres that its record tells. It knows vehicles. The drive
 * itself is planned in cornerbook.core.brake.burnish.
 */
@NullMarked
package cornerbook.core.brake.burnish.judge;

import org.jspecify.annotations.NullMarked;
