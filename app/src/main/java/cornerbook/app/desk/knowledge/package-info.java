/** The page of other shops' knowledge: what counts, what a file would change, and whose keys are trusted. */
@NullMarked
package cornerbook.app.desk.knowledge;

import org.jspecify.annotations.NullMarked;
