/** Text as people and files bring it: what of it the book can keep and a page can show. */
@NullMarked
package cornerbook.app.text;

import org.jspecify.annotations.NullMarked;
