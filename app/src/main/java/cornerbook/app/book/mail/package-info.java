/** What was written to customers by e-mail, when, and what the server said to it; and which server that is. */
@NullMarked
package cornerbook.app.book.mail;

import org.jspecify.annotations.NullMarked;
