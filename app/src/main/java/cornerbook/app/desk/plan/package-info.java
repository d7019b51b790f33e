/**
 * The page that says which wheel goes where, and the tags to print.
 */
@NullMarked
package cornerbook.app.desk.plan;

import org.jspecify.annotations.NullMarked;
