/**
 * What many cars taught, as a signed file that goes from one book to another. Whoever holds a private key signs; a book takes in
 * only what a key signed that it trusts. The form is described in docs/knowledge.md; nothing of it is of a person or of one car.
 */
@NullMarked
package cornerbook.app.knowledge;

import org.jspecify.annotations.NullMarked;
