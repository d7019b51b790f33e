/**
 * The server and who may come in: listeners, TLS, pairing of tablets, and the guard that every request passes. A change
 * is accepted from these pages alone, and without a door to the shop's network only loopback is served.
 */
@NullMarked
package cornerbook.app.door;

import org.jspecify.annotations.NullMarked;
