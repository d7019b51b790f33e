/**
 * The pages for desk and bay, rendered at the server and useful without any script. Handlers turn a request into one
 * call to the book or the assessor, and its answer into a page; they judge nothing themselves. Only loopback is served,
 * and a change is accepted from these pages alone.
 */
@NullMarked
package cornerbook.app.web;

import org.jspecify.annotations.NullMarked;
