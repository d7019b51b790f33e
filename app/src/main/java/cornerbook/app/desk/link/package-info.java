/** Addresses of the pages, by what they are about: pages name each other by them alone. */
@NullMarked
package cornerbook.app.desk.link;

import org.jspecify.annotations.NullMarked;
