package cornerbook.app.book.visit;

/**
 * Wheels that somebody said were tightened again to the torque that is asked for, without figures.
 *
 * @param visitId the visit that fitted them
 */
public record ConfirmedRetorque(String visitId, String vehicleName, String plate) {}
