package cornerbook.app.exchange;

import static cornerbook.app.exchange.DetailsWriter.putFlag;
import static cornerbook.app.exchange.DetailsWriter.putNumber;
import static cornerbook.app.exchange.DetailsWriter.putQuantity;

import cornerbook.app.book.record.CarRecord;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DiscBrake;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.UnknownBrake;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Quantities;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a history in the form of the visit file. */
final class HistoryWriter {
    /** As the schema has them. */
    private static final int LONGEST_QUANTITY = 40;

    private static final int LONGEST_READING = 200;

    private HistoryWriter() {}

    static ObjectNode write(CarHistory history) {
        return write(new CarRecord(history));
    }

    static ObjectNode write(CarRecord record) {
        var history = record.history();
        var file = JsonNodeFactory.instance.objectNode();
        file.put("format", "cornerbook-visit-file").put("version", 1);
        var customer = history.customer();
        var owner = file.putObject("customer");
        owner.put("id", customer.id()).put("name", customer.name());
        putIfPresent(owner, "phone", customer.phone());
        putIfPresent(owner, "email", customer.email());
        putIfPresent(owner, "language", customer.language());
        write(history.vehicle(), file.putObject("vehicle"));
        var sets = file.putArray("wheelSets");
        history.sets().forEach(set -> write(set, sets.addObject()));
        var visits = file.putArray("visits");
        for (var visit : history.visits()) {
            var item = visits.addObject();
            write(visit, item);
            NotesWriter.write(record.notesOf(visit.id()), item);
        }
        for (var change : record.wheelChanges()) {
            var item = file.withArrayProperty("wheelChanges").addObject();
            item.put("wheel", change.tag()).put("what", change.what());
            putIfPresent(item, "before", change.before());
            putIfPresent(item, "after", change.after());
            item.put("on", change.on().toString());
        }
        for (var change : record.visitChanges()) {
            var item = file.withArrayProperty("visitChanges").addObject();
            item.put("visit", change.visitId())
                    .put("what", change.what())
                    .put("before", change.before())
                    .put("after", change.after())
                    .put("reason", change.reason());
            putIfPresent(item, "person", change.person());
            item.put("on", change.on().toString());
        }
        return file;
    }

    private static void write(Vehicle vehicle, ObjectNode json) {
        json.put("id", vehicle.id()).put("name", vehicle.name()).put("plate", vehicle.plate());
        putIfPresent(json, "vin", vehicle.vin());
        putIfPresent(json, "drive", vehicle.drive() == null ? null : Spelling.of(vehicle.drive()));
        putFlag(json, "electric", vehicle.drivesElectric());
        if (!vehicle.jurisdiction().equals(Vehicle.ANY_PLACE)) {
            json.put("jurisdiction", vehicle.jurisdiction());
        }
        write(vehicle.front(), json.putObject("frontAxle"));
        write(vehicle.rear(), json.putObject("rearAxle"));
        var fastener = vehicle.fastener();
        if (fastener != null) {
            json.putObject("fastener")
                    .put("thread", fastener.thread())
                    .put("count", fastener.count())
                    .put("seat", Spelling.of(fastener.seat()))
                    .set("torque", quantity(fastener.torqueNm(), "N·m"))
                    .set("retorqueAfter", quantity(fastener.retorqueAfterKm(), "km"));
        }
        var battery = vehicle.battery();
        if (battery != null) {
            write(battery, json.putObject("battery"));
        }
        var fluid = vehicle.brakeFluid();
        putIfPresent(json, "brakeFluid", fluid == null ? null : fluid.label());
        DetailsWriter.write(vehicle.details(), json);
    }

    private static void write(TwelveVoltBattery battery, ObjectNode json) {
        json.put("chemistry", Spelling.of(battery.chemistry())).put("ratedCapacityAh", battery.ratedCapacityAh());
        var current = battery.ratedCrankingCurrentA();
        var standard = battery.ratingStandard();
        if (current != null && standard != null) {
            json.set("ratedCrankingCurrent", quantity(current, "A")).put("ratingStandard", standard.name());
        }
        putIfPresent(json, "installedOn", battery.installedOn());
        var chargeBelowV = battery.chargeBelowV();
        if (chargeBelowV != null) {
            json.set("chargeBelow", quantity(chargeBelowV, "V"));
        }
    }

    private static void write(AxleSpecification axle, ObjectNode json) {
        putQuantity(json, "axleLoad", axle.axleLoadKg(), "kg");
        json.put("tyreSize", axle.tyreSize());
        putNumber(json, "loadIndex", axle.loadIndex());
        putIfPresent(json, "speedSymbol", axle.speedSymbol());
        putQuantity(json, "placardPressure", axle.placardPressureKpa(), "kPa");
        if (axle.brake().isKnown()) {
            write(axle.brake(), json.putObject("brake"));
        }
    }

    private static void write(BrakeSpecification brake, ObjectNode item) {
        switch (brake.friction()) {
            case DiscBrake disc ->
                item.put("caliper", Spelling.of(disc.caliper()))
                        .put("electricParkingBrake", brake.electricParkingBrake())
                        .set("padNew", quantity(disc.padNewMm(), "mm"))
                        .set("padMinimum", quantity(disc.padMinimumMm(), "mm"))
                        .set("discNew", quantity(disc.discNewMm(), "mm"))
                        .set("discMinimum", quantity(disc.discMinimumMm(), "mm"))
                        .set("runoutLimit", quantity(disc.runoutLimitMm(), "mm"))
                        .set("thicknessVariationLimit", quantity(disc.thicknessVariationLimitMm(), "mm"));
            case DrumBrake drum ->
                item.put("electricParkingBrake", brake.electricParkingBrake())
                        .set("drumNew", quantity(drum.drumNewMm(), "mm"))
                        .set("drumDiscard", quantity(drum.drumDiscardMm(), "mm"))
                        .set("liningNew", quantity(drum.liningNewMm(), "mm"))
                        .set("liningMinimum", quantity(drum.liningMinimumMm(), "mm"));
            case UnknownBrake unknown -> {
                return;
            }
        }
        DetailsWriter.write(brake.details(), item);
    }

    private static void write(WheelSet set, ObjectNode json) {
        json.put("id", set.id()).put("season", Spelling.of(set.season()));
        putIfPresent(json, "storePlace", set.storePlace());
        var wheels = json.putArray("wheels");
        for (var wheel : set.wheels()) {
            var item = wheels.addObject().put("tag", wheel.tag());
            putIfPresent(item, "sensorId", wheel.sensorId());
            DetailsWriter.write(wheel.details(), item);
            write(wheel.tyre(), item.putObject("tyre"));
        }
    }

    private static void write(Tyre tyre, ObjectNode json) {
        putIfPresent(json, "model", tyre.model());
        json.put("size", tyre.size());
        putNumber(json, "loadIndex", tyre.loadIndex());
        putIfPresent(json, "speedSymbol", tyre.speedSymbol());
        putIfPresent(json, "tin", tyre.tin());
        putFlag(json, "directional", tyre.directional());
        putFlag(json, "asymmetric", tyre.asymmetric());
        putQuantity(json, "newDepth", tyre.newDepthMm(), "mm");
    }

    private static void write(Visit visit, ObjectNode json) {
        json.put("id", visit.id())
                .put("date", visit.date().toString())
                .set("odometer", quantity(visit.odometerKm(), "km"));
        putIfPresent(json, "technician", visit.card().technician());
        write(visit.arrivedOn(), json.putObject("arrivedOn"));
        write(visit.leftOn(), json.putObject("leftOn"));
        var readings = json.putArray("readings");
        visit.readings().forEach(reading -> write(reading, readings.addObject()));
        if (!visit.card().workDone().isEmpty()) {
            var work = json.putArray("workDone");
            visit.card().workDone().forEach(work::add);
        }
        putIfPresent(json, "notes", visit.card().notes());
        putIfPresent(json, "nextVisitDue", visit.card().nextVisitDue());
        if (!visit.card().tools().isEmpty()) {
            var tools = json.putArray("tools");
            visit.card().tools().forEach(tool -> ToolForm.write(tool, tools.addObject()));
        }
    }

    private static void write(Map<Corner, String> wheelAt, ObjectNode json) {
        for (var corner : Corner.values()) {
            putIfPresent(json, corner.name(), wheelAt.get(corner));
        }
    }

    static void write(Reading reading, ObjectNode json) {
        json.put("id", reading.id()).put("measure", Spelling.of(reading.measure()));
        putIfPresent(json, "corner", reading.corner());
        putIfPresent(json, "wheel", reading.wheelTag());
        var spot = reading.spot();
        putIfPresent(json, "spot", spot == null ? null : Spelling.of(spot));
        var unit = reading.measure().unit();
        if (saysTheValue(reading)) {
            json.put("value", reading.asWritten());
        } else if (unit.equals("1")) {
            json.put("value", reading.value());
        } else {
            json.set("value", quantity(reading.value(), unit));
        }
        putIfPresent(json, "corrects", reading.corrects());
        putIfPresent(json, "reason", reading.reason());
    }

    private static boolean saysTheValue(Reading reading) {
        try {
            return reading.asWritten().length() <= LONGEST_READING
                    && WrittenReading.valueOf(reading.measure(), reading.asWritten()) == reading.value();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** With its unit as people write it; a number that they would write nowhere, as 1e-300, stands bare in the same unit. */
    static JsonNode quantity(double value, String unit) {
        var written = Quantities.write(value, unit);
        return written.length() <= LONGEST_QUANTITY
                ? JsonNodeFactory.instance.stringNode(written)
                : JsonNodeFactory.instance.numberNode(value);
    }

    static void putIfPresent(ObjectNode json, String name, @Nullable Object value) {
        if (value != null) {
            json.put(name, value.toString());
        }
    }
}
