/**
 * What comes with a request whatever it asks for: its connection, its body, who makes it, and the sentence with which
 * it is refused.
 */
@NullMarked
package cornerbook.app.request;

import org.jspecify.annotations.NullMarked;
