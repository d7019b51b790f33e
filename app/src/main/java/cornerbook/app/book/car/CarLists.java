package cornerbook.app.book.car;

import cornerbook.core.brake.judge.DustRule;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Axle;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Finds and counts over all cars of the book. */
public final class CarLists {
    private final Handle handle;

    public CarLists(Handle handle) {
        this.handle = handle;
    }

    public List<VehicleSummary> vehicles() {
        return handle.select(
                        "select vehicle.id, vehicle.name, vehicle.plate, vehicle.revision, customer.name as customer_name, max(visit.visit_date) as last_visit from vehicle join customer on customer.id = vehicle.customer_id left join visit on visit.vehicle_id = vehicle.id group by vehicle.id, vehicle.name, vehicle.plate, vehicle.revision, customer.name order by vehicle.name")
                .map((row, context) -> new VehicleSummary(
                        row.getString("id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("customer_name"),
                        CarReader.date(row, "last_visit"),
                        row.getLong("revision")))
                .list();
    }

    public List<VisitSummary> visits(LocalDate date) {
        return handle.select(
                        "select visit.id as visit_id, vehicle.id as vehicle_id, vehicle.name, vehicle.plate, customer.name as customer_name, visit.visit_date, (select count(*) from reading where reading.visit_id = visit.id) as readings from visit join vehicle on vehicle.id = visit.vehicle_id join customer on customer.id = vehicle.customer_id where visit.visit_date = ? order by vehicle.name",
                        date.toString())
                .map((row, context) -> new VisitSummary(
                        row.getString("visit_id"),
                        row.getString("vehicle_id"),
                        row.getString("name"),
                        row.getString("plate"),
                        row.getString("customer_name"),
                        LocalDate.parse(row.getString("visit_date")),
                        row.getInt("readings")))
                .list();
    }

    public Map<Axle, Double> placardsKpa(String visitId) {
        return handle
                .select(
                        "select vehicle_axle.axle, vehicle_axle.placard_pressure_kpa from vehicle_axle join visit on visit.vehicle_id = vehicle_axle.vehicle_id where visit.id = ?",
                        visitId)
                .map((row, context) ->
                        Map.entry(Axle.valueOf(row.getString("axle")), row.getDouble("placard_pressure_kpa")))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    public int countBrakePairs(LocalDate from, LocalDate until) {
        return handle
                .createQuery(
                        "select reading.* from reading join visit on visit.id = reading.visit_id where visit.visit_date between :from and :until and reading.measure in (<measures>)")
                .bind("from", from.toString())
                .bind("until", until.toString())
                .bindList(
                        "measures", DustRule.measures().stream().map(Enum::name).toList())
                .map((row, context) -> Map.entry(row.getString("visit_id"), CarReader.reading(row)))
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())))
                .values()
                .stream()
                .mapToInt(DustRule::pairsServiced)
                .sum();
    }

    public List<CarHistory> histories() {
        var reader = new CarReader(handle);
        return handle.select("select id from vehicle order by name").mapTo(String.class).list().stream()
                .flatMap(id -> reader.find(id).stream())
                .toList();
    }

    public Optional<CarHistory> findHistoryOfWheel(String tag) {
        return handle.select("select vehicle_id from wheel where tag = ?", tag)
                .mapTo(String.class)
                .findFirst()
                .flatMap(new CarReader(handle)::find);
    }
}
