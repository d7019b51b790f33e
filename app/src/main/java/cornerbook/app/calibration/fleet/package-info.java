/**
 * Invented cars that live by themselves: roads, weather, drivers, tyres, pads and salt, day by day, and a shop that reads them
 * twice a year. The judges are scored on these cars, so nothing here may be taken from the rooms that it is a test of: no
 * equation, no constant, no class but the values of a car with its visits.
 */
@NullMarked
package cornerbook.app.calibration.fleet;

import org.jspecify.annotations.NullMarked;
