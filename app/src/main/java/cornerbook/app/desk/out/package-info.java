/** Takes the whole book out in the browser: made in the background, with its progress on the page, then fetched as one file. */
@NullMarked
package cornerbook.app.desk.out;

import org.jspecify.annotations.NullMarked;
