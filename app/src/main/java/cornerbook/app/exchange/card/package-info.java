/** People on cards from address books (vCard, RFC 6350): what of each a shop can use. */
@NullMarked
package cornerbook.app.exchange.card;

import org.jspecify.annotations.NullMarked;
