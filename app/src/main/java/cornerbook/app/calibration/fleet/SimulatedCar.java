package cornerbook.app.calibration.fleet;

import cornerbook.core.car.CarHistory;

/** An invented car as the book has it, and as it is. */
public record SimulatedCar(CarHistory history, Truth truth) {}
