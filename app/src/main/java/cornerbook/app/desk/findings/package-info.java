/**
 * The page of all that was found out at a visit, the gravest first.
 */
@NullMarked
package cornerbook.app.desk.findings;

import org.jspecify.annotations.NullMarked;
