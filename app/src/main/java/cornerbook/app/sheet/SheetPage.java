package cornerbook.app.sheet;

import cornerbook.words.Reader;

import static cornerbook.app.sheet.SheetWords.day;
import static cornerbook.app.sheet.SheetWords.km;
import static cornerbook.app.sheet.SheetWords.line;
import static cornerbook.app.sheet.SheetWords.name;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.picture.battery.BatteryOverVisits;
import cornerbook.core.assess.Assessment;
import cornerbook.core.brake.burnish.BurnishPlan;
import cornerbook.core.brake.burnish.judge.BurnishPlanning;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Writes the words and pictures of the sheet as XHTML. */
final class SheetPage {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);
    /** Work is written freely; these words tell that hands were at the brakes. */
    private static final Pattern BRAKE_WORK =
            Pattern.compile("\\b(brakes?|pads?|discs?|calipers?)\\b", Pattern.CASE_INSENSITIVE);

    /** Between the seasons' days; a guide is all that a sheet can be. */
    private static final double BURNISH_AIR_C = 10;

    private final Assessment assessment;
    private final Visit visit;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;
    private final SheetRoom room;
    private final VisitNotes notes;
    private final Xhtml page = new Xhtml();

    SheetPage(Assessment assessment, SheetRoom room, VisitNotes notes) {
        this.assessment = assessment;
        this.visit = assessment.visit();
        this.readings = new StandingReadings(visit);
        this.wheelAt = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
        this.room = room;
        this.notes = notes;
    }

    String write(String shopName, Instant madeAt) {
        var vehicle = assessment.history().vehicle();
        var corners = new CornersSection(assessment, readings, wheelAt, page);
        var findings = new FindingsSection(assessment, wheelAt.values(), room, page);
        page.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>");
        page.raw(Xhtml.escape("Hand-over sheet, %s, %s".formatted(name(vehicle.name()), day(visit.date()))));
        page.raw("</title><meta name=\"description\" content=\"What was done and found at one visit\"/>");
        page.raw("<meta name=\"author\" content=\"")
                .raw(Xhtml.escape(name(shopName)))
                .raw("\"/>");
        page.raw("<style>").raw(SheetStyle.CSS).raw("</style></head><body>\n");
        writeHead(shopName);
        corners.writePicture();
        findings.writeOverview();
        writeRetorque();
        writeWork();
        corners.writeTable();
        findings.write();
        writeOtherSet();
        writeNotJudged();
        writeCautions();
        if (room.pictures()) {
            BrakesSection.write(assessment, page);
            writeBattery();
        }
        PhotosSection.write(notes.photosOnSheet(), page);
        writeClose(madeAt);
        return page.raw("</body></html>").toString();
    }

    private void writeHead(String shopName) {
        var history = assessment.history();
        var vehicle = history.vehicle();
        if (!shopName.isBlank()) {
            page.element("p class=\"shop\"", name(shopName));
        }
        page.element("h1", "Hand-over of " + name(vehicle.name()));
        if (shopName.toLowerCase(Locale.ROOT).contains("invented")) {
            page.element("p class=\"invented\"", "Invented data: shop, people, car and readings are made up.");
        }
        page.raw("<table class=\"facts\"><tr>");
        fact("Plate", vehicle.plate());
        fact("Odometer", km(visit.odometerKm()));
        fact("Date", day(visit.date()));
        fact("Customer", history.customer().name());
        page.raw("</tr></table>\n");
    }

    private void fact(String what, String value) {
        page.raw("<td><b>").text(what).raw("</b><br/>").text(name(value)).raw("</td>");
    }

    private void writeRetorque() {
        var retorque = assessment.retorque();
        if (retorque == null) {
            return;
        }
        page.raw("<div class=\"box\">").element("h2", "Have the wheels tightened again");
        page.element(
                "p",
                "Come back at %s on the odometer, about %s: each wheel is tightened to %s once more."
                        .formatted(
                                km(retorque.dueOdometerKm()),
                                day(retorque.dueDate()),
                                SheetWords.torque(retorque.torqueNm())));
        page.raw("</div>\n");
    }

    private void writeWork() {
        page.element("h2", "What was done");
        if (visit.workDone().isEmpty()) {
            page.element("p", "No work is recorded for this visit.");
        } else {
            page.list(lines(visit.workDone()), room.lines());
        }
    }

    private void writeOtherSet() {
        var others = assessment.history().sets().stream()
                .filter(set -> set.wheels().stream().noneMatch(wheel -> wheelAt.containsValue(wheel.tag())))
                .toList();
        if (others.isEmpty()) {
            return;
        }
        page.element("h2", "The other set");
        page.list(others.stream().map(this::otherSetWords).toList(), room.lines());
    }

    private String otherSetWords(WheelSet set) {
        var place = set.storePlace();
        var where = place == null ? "no store place is recorded" : "lies at " + name(place);
        var lasts = assessment.forecasts().stream()
                .filter(forecast -> forecast.set().id().equals(set.id()))
                .findFirst()
                .map(SheetPage::lastsWords)
                .orElse("its tread was not judged at this visit");
        return "%s set: %s; %s.".formatted(SheetWords.season(set.season()), where, lasts);
    }

    private static String lastsWords(SetForecast forecast) {
        var chance = forecast.probabilityHolds() > 0.99
                ? "over 99 %"
                : forecast.probabilityHolds() < 0.01
                        ? "under 1 %"
                        : "%.0f %%".formatted(forecast.probabilityHolds() * 100);
        return "%s its next season, %s to %s (chance that it does: %s)"
                .formatted(
                        forecast.probabilityHolds() >= forecast.confidence() ? "lasts" : "is not sure to last",
                        day(forecast.from()),
                        day(forecast.until()),
                        chance);
    }

    private void writeNotJudged() {
        if (!assessment.notJudged().isEmpty()) {
            page.element("h2", "What could not be judged");
            page.list(lines(assessment.notJudged().stream().map(Reader.DEFAULT::say).toList()), room.lines());
        }
    }

    /** Never cut: each of them keeps somebody from harm. */
    private void writeCautions() {
        page.element("h2", "Please mind");
        var cautions = new ArrayList<>(lines(notes.leftOpen().stream().map(Reader.DEFAULT::say).toList()));
        if (assessment.findings().stream().anyMatch(finding -> finding.verdict() == Verdict.UNSAFE)) {
            cautions.add("Do not drive this car until what is marked Unsafe has been put right.");
        }
        if (assessment.retorque() != null) {
            cautions.add("If the car shakes, knocks or pulls to one side, stop and have the wheels looked at.");
        }
        if (visit.workDone().stream().anyMatch(work -> BRAKE_WORK.matcher(work).find())) {
            cautions.add(burnish());
        }
        if (!readings.all(Measure.PRESSURE_SET).isEmpty()) {
            cautions.add("Tyre pressures are set for cold tyres.");
        }
        cautions.add("Check the tyre pressures once a month, before driving, against the placard on the car.");
        cautions.add("The vehicle manufacturer's data outrank this sheet.");
        var notes = visit.notes();
        if (notes != null && !notes.isBlank()) {
            cautions.add("Noted at this visit: " + line(notes));
        }
        page.list(cautions, cautions.size());
    }

    /**
     * Stops, speeds and pauses as planned from the car's data, or as the service literature for new friction material has them; feel:
     * common practice, no source.
     */
    private String burnish() {
        var vehicle = assessment.history().vehicle();
        var regenerating = vehicle.electric()
                ? " This car slows by its motor first: use the maker's own way to brake with the friction brakes."
                : "";
        return "After the work on the brakes: where traffic allows, slow moderately from 65 to 15 km/h %s, then drive 15 min with little braking to cool them."
                        .formatted(stops(vehicle))
                + regenerating
                + " The pedal may feel different at first; if it is soft or the car pulls, stop and call us.";
    }

    private static String stops(Vehicle vehicle) {
        var planning = BurnishPlanning.of(vehicle, BURNISH_AIR_C);
        if (!planning.missing().isEmpty()) {
            return "8 to 10 times, 15 to 30 s apart";
        }
        var plans = Arrays.stream(Axle.values())
                .map(axle -> planning.drive(axle, 0).plan())
                .toList();
        return "%d times, %.0f s apart"
                .formatted(
                        plans.stream().mapToInt(BurnishPlan::stops).max().orElseThrow(),
                        Math.ceil(plans.stream()
                                .mapToDouble(BurnishPlan::spacingS)
                                .max()
                                .orElseThrow()));
    }

    private void writeClose(Instant madeAt) {
        page.raw("<div class=\"close\">");
        page.element("p", "Next visit: " + day(assessment.nextVisit()));
        page.raw("<table class=\"signatures\"><tr>");
        var technician = visit.technician();
        page.element("td", technician == null ? "Technician" : "Technician: " + name(technician));
        page.element("td", "Customer: " + name(assessment.history().customer().name()));
        page.raw("</tr></table>");
        page.element(
                "p class=\"small\"",
                "Made on %s UTC. Dates are estimates from the readings and the distance driven so far."
                        .formatted(MOMENT.format(madeAt.atOffset(ZoneOffset.UTC))));
        page.raw("</div>");
    }

    private static List<String> lines(List<String> words) {
        return words.stream().map(SheetWords::line).toList();
    }

    private void writeBattery() {
        var battery = BatteryOverVisits.svg(assessment.battery());
        if (!battery.isEmpty()) {
            page.raw("<div class=\"together seizing\">").element("h3", "12 V battery over the visits");
            page.raw(Xhtml.described(battery)).raw("</div>");
        }
    }
}
