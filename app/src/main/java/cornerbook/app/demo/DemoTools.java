package cornerbook.app.demo;

import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.util.List;

/** The invented tools of the invented shop, calibrated every winter but for one wrench that was forgotten. */
final class DemoTools {
    /** The car whose latest visit was worked with the forgotten wrench. */
    private static final int FORGOTTEN = 2;

    private static final int FORGOTTEN_DAYS = 40;

    private DemoTools() {}

    /** What the shop keeps now. */
    static List<ShopTool> kept(LocalDate today) {
        return List.of(gauge(today), wrench(today), forgottenWrench(today), hoist("H-1", today), hoist("H-2", today));
    }

    /** What a visit was worked with, each as it was on that day. */
    static List<ShopTool> at(LocalDate day, int carNumber, boolean latest) {
        return List.of(
                gauge(day), latest && carNumber == FORGOTTEN ? forgottenWrench(day) : wrench(day), hoist("H-1", day));
    }

    private static ShopTool gauge(LocalDate day) {
        return new ShopTool(
                "G-1", ShopTool.Kind.PRESSURE_GAUGE, "Gauge on the hose (invented)", 0, 700, 2, nextWinter(day));
    }

    private static ShopTool wrench(LocalDate day) {
        return new ShopTool("W-1", ShopTool.Kind.TORQUE_WRENCH, "Long wrench (invented)", 40, 210, 0, nextWinter(day));
    }

    private static ShopTool forgottenWrench(LocalDate day) {
        return new ShopTool(
                "W-2", ShopTool.Kind.TORQUE_WRENCH, "Old wrench (invented)", 40, 200, 0, day.minusDays(FORGOTTEN_DAYS));
    }

    private static ShopTool hoist(String mark, LocalDate day) {
        return new ShopTool(
                mark,
                ShopTool.Kind.HOIST,
                "Two-post hoist (invented)",
                95,
                1900,
                0,
                nextWinter(day),
                new Hoist(
                        4,
                        new HoistRating(4000, 1000.0, 1200.0),
                        List.of(50.0, 100.0),
                        1200.0,
                        List.of(40.0, 80.0),
                        45.0,
                        3900.0));
    }

    private static LocalDate nextWinter(LocalDate day) {
        return LocalDate.of(day.getYear() + 1, 2, 1);
    }
}
