/**
 * Which readings a visit asks for at each corner, and which tools and wheels it offers: the same at the desk and on a
 * tablet.
 */
@NullMarked
package cornerbook.app.desk.asked;

import org.jspecify.annotations.NullMarked;
