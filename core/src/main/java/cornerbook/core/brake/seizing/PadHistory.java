package cornerbook.core.brake.seizing;

/**
 * One pad between two services of its guides: when it was seen free and seized, in months since the first of the two.
 *
 * @param seized after the last month at which it moved (tight still moves), by the first at which it did not
 */
public record PadHistory(CensoredTime seized, SeizingExposure exposure) {}
