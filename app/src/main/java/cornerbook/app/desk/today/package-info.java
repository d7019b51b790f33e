/**
 * The page that the day begins with: cars, visits and re-torques that are due.
 */
@NullMarked
package cornerbook.app.desk.today;

import org.jspecify.annotations.NullMarked;
