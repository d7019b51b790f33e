/** Who is to be asked to come back, by day, with what to say to them; one tap says what came of it. */
@NullMarked
package cornerbook.app.desk.coming;

import org.jspecify.annotations.NullMarked;
