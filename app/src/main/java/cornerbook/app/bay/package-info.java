/**
 * The bay sheet: one flow for the whole visit on a tablet, that works without the network and loses nothing. The server
 * sends the sheet (steps, fields, cautions, what to expect) and the state (what the book has), and takes entries that were
 * born at the tablet, each with its own id. The pages and their modules stand under the assets.
 */
@NullMarked
package cornerbook.app.bay;

import org.jspecify.annotations.NullMarked;
