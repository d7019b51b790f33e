/** What each car needs at its coming change-over, and with what chance, from its forecasts and findings. Method and sources in docs/methods/order.md. */
@NullMarked
package cornerbook.core.order.judge;

import org.jspecify.annotations.NullMarked;
