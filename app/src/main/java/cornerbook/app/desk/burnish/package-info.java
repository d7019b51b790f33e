/**
 * The page of the drive that beds new pads in.
 */
@NullMarked
package cornerbook.app.desk.burnish;

import org.jspecify.annotations.NullMarked;
