package cornerbook.app.desk.customer;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.say.Said;

/**
 * Whether a customer is called or written to for a purpose.
 *
 * @param reached whether he or she is, today
 * @param asked whether that is what the customer said
 * @param source what says so where the customer said nothing
 */
public record ContactState(Purpose purpose, Channel channel, boolean reached, boolean asked, Said source) {}
