/**
 * The assessment of a visit: it asks the judges of every room and gathers what they find, and learns from all cars what
 * they are given. It is the one door into core, and only it knows all rooms. It reads no clock and no file; whoever
 * calls gives it the history, the limits and the date.
 */
@NullMarked
package cornerbook.core.assess;

import org.jspecify.annotations.NullMarked;
