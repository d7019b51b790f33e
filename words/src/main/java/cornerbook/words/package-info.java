/**
 * The words of everything that is said, one catalogue for each room with every language side by side, and the reader that turns facts into
 * words in a person's language and units. It decides nothing and knows no room by name.
 */
@NullMarked
package cornerbook.words;

import org.jspecify.annotations.NullMarked;
