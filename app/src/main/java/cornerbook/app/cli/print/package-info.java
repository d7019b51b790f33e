/** Where verbs print, and how what they say is made fit for a terminal. It runs no verb. */
@NullMarked
package cornerbook.app.cli.print;

import org.jspecify.annotations.NullMarked;
