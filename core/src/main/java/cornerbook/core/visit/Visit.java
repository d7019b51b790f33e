package cornerbook.core.visit;

import cornerbook.core.corner.Corner;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One time that the car came in.
 *
 * @param arrivedOn wheel tag at each corner on arrival
 * @param leftOn wheel tag at each corner on leaving
 * @param workDone what was done, one line each
 * @param nextVisitDue agreed date of the next visit; null when the season's rule gives it
 * @param tools what it was worked with, as the tool was on that day; one of a kind
 */
public record Visit(
        String id,
        LocalDate date,
        double odometerKm,
        @Nullable String technician,
        Map<Corner, String> arrivedOn,
        Map<Corner, String> leftOn,
        List<Reading> readings,
        List<String> workDone,
        @Nullable String notes,
        @Nullable LocalDate nextVisitDue,
        List<ShopTool> tools) {
    /** A visit of which no tool is known. */
    public Visit(
            String id,
            LocalDate date,
            double odometerKm,
            @Nullable String technician,
            Map<Corner, String> arrivedOn,
            Map<Corner, String> leftOn,
            List<Reading> readings,
            List<String> workDone,
            @Nullable String notes,
            @Nullable LocalDate nextVisitDue) {
        this(id, date, odometerKm, technician, arrivedOn, leftOn, readings, workDone, notes, nextVisitDue, List.of());
    }

    public Visit {
        Checks.range("odometer", odometerKm, 0, 3_000_000, "km");
        arrivedOn = Map.copyOf(arrivedOn);
        leftOn = Map.copyOf(leftOn);
        readings = List.copyOf(readings);
        workDone = List.copyOf(workDone);
        tools = List.copyOf(tools);
        if (tools.stream().map(ShopTool::kind).distinct().count() < tools.size()) {
            throw new IllegalArgumentException("two tools of one kind stand at the visit, expected one of each kind");
        }
    }

    /** The same visit with other readings. */
    public Visit withReadings(List<Reading> others) {
        return new Visit(
                id, date, odometerKm, technician, arrivedOn, leftOn, others, workDone, notes, nextVisitDue, tools);
    }

    /** The same visit on another day, or with another odometer. */
    public Visit withOdometer(LocalDate day, double km) {
        return new Visit(id, day, km, technician, arrivedOn, leftOn, readings, workDone, notes, nextVisitDue, tools);
    }

    /** The tool of a kind that it was worked with. */
    public Optional<ShopTool> findTool(ShopTool.Kind kind) {
        return tools.stream().filter(tool -> tool.kind() == kind).findFirst();
    }

    /** The same visit with other wheels on leaving. */
    public Visit withLeftOn(Map<Corner, String> wheelAt) {
        return new Visit(
                id, date, odometerKm, technician, arrivedOn, wheelAt, readings, workDone, notes, nextVisitDue, tools);
    }
}
