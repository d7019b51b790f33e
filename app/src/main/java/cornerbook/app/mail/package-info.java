/** E-mails to a server by SMTP (RFC 5321): what is sent, and what the server said to it. It knows no customer. */
@NullMarked
package cornerbook.app.mail;

import org.jspecify.annotations.NullMarked;
