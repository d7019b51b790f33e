/**
 * The visit as a value, and its assessment into findings: the one door into core. Only this feature knows all the
 * others. It reads no clock and no file; whoever calls gives it the history, the limits and the date.
 */
@NullMarked
package cornerbook.core.visit;

import org.jspecify.annotations.NullMarked;
