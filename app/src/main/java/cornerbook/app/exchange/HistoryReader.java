package cornerbook.app.exchange;

import cornerbook.app.book.car.WheelChange;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.FrictionBrake;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Refused;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;

/** Turns a visit file that the schema has passed into a history, and gathers what its values get wrong. */
final class HistoryReader {
    /** What only a disc has. */
    private static final List<String> OF_DISC = List.of(
            "caliper", "padNew", "padMinimum", "discNew", "discMinimum", "runoutLimit", "thicknessVariationLimit");

    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, VisitNotes> notes = new HashMap<>();
    private final Set<String> noteIds = new HashSet<>();

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The car; empty when there are problems. */
    Optional<CarRecord> read(JsonNode root) {
        var file = new JsonObject(root);
        var vehicle = attempt(file.child("vehicle"), HistoryReader::vehicle);
        var customer = attempt(file.child("customer"), HistoryReader::customer);
        var sets = each(file.children("wheelSets"), this::wheelSet);
        var visits = each(file.children("visits"), this::visit);
        var changes = each(file.optionalChildren("wheelChanges"), HistoryReader::wheelChange);
        var visitChanges = each(file.optionalChildren("visitChanges"), change -> visitChange(change, visits));
        if (problems.isEmpty()) {
            checkOrder(visits);
        }
        return problems.isEmpty()
                ? vehicle.flatMap(car -> customer.map(owner -> new CarRecord(
                        new CarHistory(
                                car,
                                owner,
                                sets,
                                visits.stream()
                                        .map(visit -> withTicks(visit, car))
                                        .toList()),
                        notes,
                        changes,
                        visitChanges)))
                : Optional.empty();
    }

    /** The order in the file is that of the history, so that a pointer found in one holds in the other. */
    private void checkOrder(List<Visit> visits) {
        for (int i = 1; i < visits.size(); i++) {
            var before = visits.get(i - 1).date();
            if (visits.get(i).date().isBefore(before)) {
                problems.add(new Problem(
                        "/visits/%s/date".formatted(i),
                        new FileSaid.OutOfOrder(visits.get(i).date(), before)));
            }
        }
    }

    private static Customer customer(JsonObject json) {
        return new Customer(
                json.text("id"),
                json.text("name"),
                json.optionalText("phone"),
                json.optionalText("email"),
                json.optionalText("language"));
    }

    private static Vehicle vehicle(JsonObject json) {
        return new Vehicle(
                json.text("id"),
                json.text("name"),
                json.text("plate"),
                json.optionalText("vin"),
                json.optionalConstant("drive", DriveLayout.class),
                json.optionalFlag("electric"),
                json.has("jurisdiction") ? json.text("jurisdiction") : Vehicle.ANY_PLACE,
                axle(json.child("frontAxle")),
                axle(json.child("rearAxle")),
                json.has("fastener") ? fastener(json.child("fastener")) : null,
                json.has("battery") ? battery(json.child("battery")) : null,
                json.has("brakeFluid") ? BrakeFluid.parse(json.text("brakeFluid")) : null,
                DetailsReader.vehicle(json));
    }

    private static AxleSpecification axle(JsonObject json) {
        return json.build(() -> new AxleSpecification(
                json.optionalQuantity("axleLoad", "kg"),
                json.text("tyreSize"),
                json.optionalWhole("loadIndex"),
                json.optionalText("speedSymbol"),
                json.optionalQuantity("placardPressure", "kPa"),
                json.has("brake") ? brake(json.child("brake")) : BrakeSpecification.NOT_KNOWN));
    }

    private static BrakeSpecification brake(JsonObject json) {
        return json.build(() ->
                new BrakeSpecification(friction(json), json.flag("electricParkingBrake"), DetailsReader.brake(json)));
    }

    /** A drum where the file has its diameter, else a disc. */
    private static FrictionBrake friction(JsonObject json) {
        if (!json.has("drumNew")) {
            return disc(json);
        }
        if (OF_DISC.stream().anyMatch(json::has)) {
            throw new Refused(new BrakeSpecification.DiscAtDrum());
        }
        return new DrumBrake(
                json.quantity("drumNew", "mm"),
                json.quantity("drumDiscard", "mm"),
                json.quantity("liningNew", "mm"),
                json.quantity("liningMinimum", "mm"));
    }

    private static DiscBrake disc(JsonObject json) {
        return new DiscBrake(
                json.constant("caliper", BrakeSpecification.Caliper.class),
                json.quantity("padNew", "mm"),
                json.quantity("padMinimum", "mm"),
                json.quantity("discNew", "mm"),
                json.quantity("discMinimum", "mm"),
                json.quantity("runoutLimit", "mm"),
                json.quantity("thicknessVariationLimit", "mm"));
    }

    private static WheelFastener fastener(JsonObject json) {
        return json.build(() -> new WheelFastener(
                json.text("thread"),
                json.whole("count"),
                json.constant("seat", Seat.class),
                json.quantity("torque", "N·m"),
                json.quantity("retorqueAfter", "km")));
    }

    private static TwelveVoltBattery battery(JsonObject json) {
        return json.build(() -> new TwelveVoltBattery(
                json.constant("chemistry", Chemistry.class),
                json.number("ratedCapacityAh"),
                json.has("ratedCrankingCurrent") ? (Double) json.quantity("ratedCrankingCurrent", "A") : null,
                json.has("ratingStandard") ? json.constant("ratingStandard", RatingStandard.class) : null,
                json.optionalDate("installedOn"),
                json.has("chargeBelow") ? (Double) json.quantity("chargeBelow", "V") : null));
    }

    private WheelSet wheelSet(JsonObject json) {
        return new WheelSet(
                json.text("id"),
                json.constant("season", SeasonKind.class),
                json.optionalText("storePlace"),
                each(json.children("wheels"), HistoryReader::wheel));
    }

    private static Wheel wheel(JsonObject json) {
        return new Wheel(
                json.text("tag"),
                tyre(json.child("tyre")),
                json.optionalText("sensorId"),
                json.build(() -> DetailsReader.wheel(json)));
    }

    private static Tyre tyre(JsonObject json) {
        return json.build(() -> new Tyre(
                json.optionalText("model"),
                json.text("size"),
                json.optionalWhole("loadIndex"),
                json.optionalText("speedSymbol"),
                json.optionalText("tin"),
                json.optionalFlag("directional"),
                json.optionalFlag("asymmetric"),
                json.optionalQuantity("newDepth", "mm")));
    }

    private static WheelChange wheelChange(JsonObject json) {
        return new WheelChange(
                json.text("wheel"),
                json.text("what"),
                json.optionalText("before"),
                json.optionalText("after"),
                json.date("on"));
    }

    private static VisitChange visitChange(JsonObject json, List<Visit> visits) {
        var visit = json.text("visit");
        if (visits.stream().map(Visit::id).noneMatch(visit::equals)) {
            throw new ProblemException(json.where() + "/visit", new FileSaid.NoVisitOfCar(visit));
        }
        return new VisitChange(
                visit,
                json.text("what"),
                json.text("before"),
                json.text("after"),
                json.text("reason"),
                json.optionalText("person"),
                json.date("on"));
    }

    private Visit visit(JsonObject json) {
        var id = json.text("id");
        var readings = each(json.children("readings"), reading -> reading(id, reading));
        var tools = json.has("tools") ? each(json.children("tools"), ToolForm::read) : List.<ShopTool>of();
        var visit = json.build(() -> new Visit(
                id,
                json.date("date"),
                json.quantity("odometer", "km"),
                corners(json.child("arrivedOn")),
                corners(json.child("leftOn")),
                readings,
                new JobCard(
                        json.optionalText("technician"),
                        lines(json, "workDone"),
                        json.optionalText("notes"),
                        json.optionalDate("nextVisitDue"),
                        tools),
                Set.of()));
        var noted = new NotesReader(visit, noteIds).read(json);
        if (!noted.isEmpty()) {
            notes.put(id, noted);
        }
        return visit;
    }

    private Visit withTicks(Visit visit, Vehicle car) {
        var ticks = notes.getOrDefault(visit.id(), VisitNotes.NONE).ticks();
        var fastener = car.fastener();
        return fastener == null
                ? visit
                : visit.withTightened(StandingTicks.of(ticks).tightened(fastener.count(), visit.leftOn()));
    }

    private static List<String> lines(JsonObject json, String name) {
        return json.has(name) ? json.texts(name) : List.of();
    }

    private static Map<Corner, String> corners(JsonObject json) {
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (json.has(corner.name())) {
                wheelAt.put(corner, json.text(corner.name()));
            }
        }
        return wheelAt;
    }

    static Reading reading(String visitId, JsonObject json) {
        var measure = json.constant("measure", Measure.class);
        double value = json.quantity("value", measure);
        try {
            return new Reading(
                    json.has("id") ? json.text("id") : readingId(visitId, json),
                    measure,
                    json.optionalConstant("corner", Corner.class),
                    json.optionalText("wheel"),
                    json.optionalConstant("spot", Spot.class),
                    value,
                    json.written("value", measure.unit()),
                    json.optionalText("corrects"),
                    json.optionalText("reason"));
        } catch (IllegalArgumentException e) {
            throw new ProblemException(json.where(), Refused.said(e));
        }
    }

    /** The same reading gets the same id each time that its file is read. */
    private static String readingId(String visitId, JsonObject json) {
        var id = new StringBuilder(visitId);
        for (var part : List.of("measure", "corner", "spot", "wheel")) {
            if (json.has(part)) {
                id.append('-').append(json.text(part).replace(' ', '-'));
            }
        }
        return id.toString();
    }

    private <T> List<T> each(List<JsonObject> elements, Function<JsonObject, T> read) {
        var all = new ArrayList<T>(elements.size());
        for (var element : elements) {
            attempt(element, read).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private <T> Optional<T> attempt(JsonObject json, Function<JsonObject, T> read) {
        try {
            return Optional.of(read.apply(json));
        } catch (ProblemException e) {
            problems.add(e.problem());
            return Optional.empty();
        }
    }
}
