/**
 * The fence around judging. Judging one car may fault; then that car is shown as not judged, with the id that the fault has
 * in the log, and lists, other cars and the pages on which its entries are put right go on.
 */
@NullMarked
package cornerbook.app.judge;

import org.jspecify.annotations.NullMarked;
