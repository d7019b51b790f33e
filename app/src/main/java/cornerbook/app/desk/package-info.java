/**
 * What all pages of the desk share, rendered at the server and useful without any script. Handlers turn a request into
 * one call to the book or the assessor, and its answer into a page; they judge nothing themselves. Each page stands in
 * a package below.
 */
@NullMarked
package cornerbook.app.desk;

import org.jspecify.annotations.NullMarked;
