/**
 * The log: what a person needs to find a fault of the program, without personal data. Each fault has an id that the log
 * and the page both show.
 */
@NullMarked
package cornerbook.app.log;

import org.jspecify.annotations.NullMarked;
