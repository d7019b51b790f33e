package cornerbook.app.desk.link;

import cornerbook.core.corner.Axle;
import cornerbook.core.finding.Finding;
import org.jspecify.annotations.Nullable;

/** Addresses of the calculators. */
public final class BenchLinks {
    private BenchLinks() {}

    public static String bench(String calculator) {
        return "/bench/" + Address.segment(calculator);
    }

    /** A calculator with the car's own data filled in. */
    public static String bench(String calculator, String vehicleId) {
        return bench(calculator) + "?car=" + Address.segment(vehicleId);
    }

    /** The calculator that a finding's numbers come from, with the car's data; null for a finding that has none. */
    public static @Nullable String benchOf(Finding finding, String vehicleId) {
        var corner = finding.subject().corner();
        var axle = corner != null && corner.axle() == Axle.REAR ? "&axle=rear" : "";
        return switch (finding.subject().part()) {
            case PRESSURE, TYRE_LOAD -> bench("pressure", vehicleId) + axle;
            case PRESSURE_SENSOR -> bench("pressure", vehicleId) + axle + "#sensor";
            case WHEEL_TORQUE -> bench("torque", vehicleId);
            case BATTERY -> bench("battery", vehicleId);
            default -> null;
        };
    }
}
