package cornerbook.app.handover;

import cornerbook.app.picture.CarFromAbove;
import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.VerdictMark;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Finding;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.SetForecast;
import cornerbook.core.visit.Subject;
import cornerbook.core.visit.Tyre;
import cornerbook.core.visit.Verdict;
import cornerbook.core.visit.Visit;
import cornerbook.core.visit.Wheel;
import cornerbook.core.visit.WheelSet;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes the words and pictures of the sheet as XHTML. */
final class SheetPage {
    private static final int LONGEST_LINE = 240;
    private static final int LONGEST_TITLE = 120;
    private static final int LONGEST_NAME = 60;
    private final Assessment assessment;
    private final Visit visit;
    private final VisitReadings readings;
    private final Map<Corner, String> wheelAt;
    private final int most;
    private final Xhtml page = new Xhtml();

    /**
     * A page to be written.
     *
     * @param most how many lines each list may have
     */
    SheetPage(Assessment assessment, int most) {
        this.assessment = assessment;
        this.visit = assessment.visit();
        this.readings = new VisitReadings(visit);
        this.wheelAt = visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
        this.most = most;
    }

    String write(String shopName, Instant madeAt) {
        var vehicle = assessment.history().vehicle();
        page.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head>");
        page.element("title", "Handover sheet, %s, %s".formatted(name(vehicle.name()), visit.date()));
        page.raw("<meta name=\"description\" content=\"What was done and found at one visit\"/>");
        page.raw("<meta name=\"author\" content=\"")
                .raw(Xhtml.escape(name(shopName)))
                .raw("\"/>");
        page.raw("<style>").raw(SheetStyle.CSS).raw("</style></head><body>\n");
        writeHead(shopName);
        writeOverview();
        writeWork();
        writeCorners();
        writeFindings();
        writeRetorque();
        writeOtherSet();
        writeNotJudged();
        writeCautions();
        writeClose(madeAt);
        return page.raw("</body></html>").toString();
    }

    private void writeHead(String shopName) {
        var history = assessment.history();
        var vehicle = history.vehicle();
        if (!shopName.isBlank()) {
            page.element("p class=\"shop\"", name(shopName));
        }
        page.element("h1", "Handover of " + name(vehicle.name()));
        if (shopName.toLowerCase(Locale.ROOT).contains("invented")) {
            page.element("p class=\"invented\"", "Invented data: shop, people, car and readings are made up.");
        }
        page.raw("<table class=\"facts\"><tr>");
        fact("Plate", vehicle.plate());
        fact("Odometer", km(visit.odometerKm()));
        fact("Date", visit.date().toString());
        fact("Customer", history.customer().name());
        page.raw("</tr></table>\n");
    }

    private void fact(String what, String value) {
        page.raw("<td><b>").raw(Xhtml.escape(what)).raw("</b><br/>");
        page.raw(Xhtml.escape(name(value))).raw("</td>");
    }

    private void writeOverview() {
        var findings = assessment.findings();
        if (findings.isEmpty()) {
            page.element("p class=\"overview\"", "Nothing could be judged at this visit.");
            return;
        }
        var gravest = findings.getFirst();
        var words = switch (gravest.verdict()) {
            case UNSAFE -> "Unsafe: this car must not be driven as it is.";
            case SPENT -> "Spent: something needs replacing now.";
            case RUNS_OUT -> "Runs out: something does not last until the next visit.";
            case HOLDS -> "Holds: all that was judged is good until the next visit.";
        };
        page.raw("<p class=\"overview " + gravest.verdict() + "\">").raw(mark(gravest, 26));
        page.raw(" <b>").raw(Xhtml.escape(words)).raw("</b> ");
        var counts = new ArrayList<String>();
        for (var verdict : List.of(Verdict.UNSAFE, Verdict.SPENT, Verdict.RUNS_OUT, Verdict.HOLDS)) {
            long count = findings.stream()
                    .filter(finding -> finding.verdict() == verdict)
                    .count();
            if (count > 0) {
                counts.add("%d × %s".formatted(count, verdict.word()));
            }
        }
        page.raw(Xhtml.escape(String.join(", ", counts))).raw("</p>\n");
    }

    private void writeWork() {
        page.element("h2", "What was done");
        if (visit.workDone().isEmpty()) {
            page.element("p", "No work is recorded for this visit.");
        } else {
            page.list(lines(visit.workDone()), most);
        }
    }

    private void writeCorners() {
        page.element("h2", "The four corners");
        page.raw("<div class=\"car\">")
                .raw(described(CarFromAbove.svg(labels())))
                .raw("</div>\n");
        page.raw("<table class=\"corners\"><thead><tr>");
        for (var heading : List.of("Corner", "Tyre", "Lowest tread", "Pressure set", "Wheel torque", "Thinnest pad")) {
            page.element("th scope=\"col\"", heading);
        }
        page.raw("</tr></thead><tbody>");
        for (var corner : Corner.values()) {
            var tag = Optional.ofNullable(wheelAt.get(corner));
            page.row(
                    corner.name(),
                    List.of(
                            tag.flatMap(assessment.history()::findWheel)
                                    .map(SheetPage::tyreWords)
                                    .orElse("–"),
                            lowestDepthMm(corner).map("%.1f mm"::formatted).orElse("–"),
                            tag.flatMap(wheel -> readings.lastOfWheel(Measure.PRESSURE_SET, wheel))
                                    .map(reading -> "%.0f kPa".formatted(reading.value()))
                                    .orElse("–"),
                            tag.flatMap(wheel -> readings.lastOfWheel(Measure.WHEEL_TORQUE, wheel))
                                    .map(reading -> "%.0f N·m".formatted(reading.value()))
                                    .orElse("–"),
                            readings.lowestAtCorner(Measure.PAD_THICKNESS, corner)
                                    .map(reading -> "%.1f mm".formatted(reading.value()))
                                    .orElse("–")));
        }
        page.raw("</tbody></table>\n");
        page.element(
                "p class=\"small\"",
                "L left, R right from the driver's seat; LF and RF in front. A dash: not measured at this visit.");
    }

    private static String tyreWords(Wheel wheel) {
        return "%s, %s %s"
                .formatted(
                        wheel.tag(),
                        Xhtml.shorten(wheel.tyre().model(), 30),
                        wheel.tyre().size());
    }

    private Map<Corner, CornerLabel> labels() {
        var labels = new EnumMap<Corner, CornerLabel>(Corner.class);
        for (var corner : Corner.values()) {
            var depthMm = lowestDepthMm(corner);
            var tag = wheelAt.get(corner);
            if (depthMm.isPresent()) {
                labels.put(corner, label(corner, depthMm.get()));
            } else if (tag != null) {
                labels.put(corner, CornerLabel.ofWheel(Xhtml.shorten(tag, 12), "not measured"));
            }
        }
        return labels;
    }

    private boolean goesOn(@Nullable String setId) {
        return forecast(SetForecast.Role.GOING_ON)
                .filter(forecast -> forecast.set().id().equals(setId))
                .isPresent();
    }

    /** The gravest of what was found at this corner and on the set as a whole. */
    private CornerLabel label(Corner corner, double depthMm) {
        var forecast = forecast(SetForecast.Role.GOING_ON);
        double limitMm = forecast.map(SetForecast::limitMm).orElse(0.0);
        double legalMm = forecast.map(SetForecast::legalLimitMm).orElse(0.0);
        var byDepth = depthMm < legalMm ? Verdict.UNSAFE : depthMm < limitMm ? Verdict.SPENT : Verdict.HOLDS;
        var verdict = assessment.findings().stream()
                .filter(finding -> finding.subject().corner() == corner
                        || (finding.subject().part() == Subject.Part.WHEEL_SET
                                && goesOn(finding.subject().setId())))
                .map(Finding::verdict)
                .reduce(byDepth, (first, second) -> first.compareTo(second) >= 0 ? first : second);
        double newMm = Optional.ofNullable(wheelAt.get(corner))
                .flatMap(assessment.history()::findWheel)
                .map(Wheel::tyre)
                .map(Tyre::newDepthMm)
                .orElse(depthMm);
        double lifeLeft = newMm > limitMm ? Math.clamp((depthMm - limitMm) / (newMm - limitMm), 0, 1) : 0;
        return CornerLabel.ofDepth(verdict, lifeLeft, depthMm);
    }

    private Optional<Double> lowestDepthMm(Corner corner) {
        return Optional.ofNullable(wheelAt.get(corner))
                .flatMap(tag -> readings.lowestOfWheel(Measure.TREAD_DEPTH, tag))
                .map(Reading::value);
    }

    private void writeFindings() {
        var grave = assessment.findings().stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .toList();
        var sound = assessment.findings().stream()
                .filter(finding -> finding.verdict() == Verdict.HOLDS)
                .toList();
        page.element("h2", "What was found");
        if (!grave.isEmpty()) {
            page.raw("<table class=\"findings\"><thead><tr><th scope=\"col\">Verdict</th><th scope=\"col\">Finding</th>"
                    + "<th scope=\"col\">Lasts until</th></tr></thead><tbody>");
            grave.stream().limit(most).forEach(this::writeFinding);
            page.raw("</tbody></table>\n");
        }
        if (grave.size() > most) {
            page.element("p", Xhtml.more(grave.size() - most));
        }
        if (!sound.isEmpty()) {
            page.element("h3", "What holds until the next visit");
            page.raw("<ul>");
            for (var part : Subject.Part.values()) {
                var titles = sound.stream()
                        .filter(finding -> finding.subject().part() == part)
                        .map(finding -> Xhtml.shorten(finding.title(), LONGEST_TITLE))
                        .toList();
                if (!titles.isEmpty()) {
                    var shown = String.join("; ", titles.subList(0, Math.min(most, titles.size())));
                    page.element("li", titles.size() > most ? shown + "; " + Xhtml.more(titles.size() - most) : shown);
                }
            }
            page.raw("</ul>\n");
        }
    }

    private void writeFinding(Finding finding) {
        var horizon = finding.horizon();
        var corner = finding.subject().corner();
        page.raw("<tr class=\"" + finding.verdict() + "\"><th scope=\"row\">").raw(mark(finding, 20));
        page.raw(" " + finding.verdict().word() + "</th><td>");
        var words = line(finding.plainWords());
        page.raw(Xhtml.escape(corner == null || words.contains(corner.name()) ? words : corner + ": " + words));
        page.raw("</td>");
        boolean already = finding.verdict() == Verdict.UNSAFE || finding.verdict() == Verdict.SPENT;
        page.element("td", Objects.toString(horizon, already ? "now" : "no date"));
        page.raw("</tr>\n");
    }

    private void writeRetorque() {
        var retorque = assessment.retorque();
        if (retorque == null) {
            return;
        }
        page.raw("<div class=\"box\">").element("h2", "Have the wheels tightened again");
        page.element(
                "p",
                "Come back at %s on the odometer, about %s: each wheel is tightened to %.0f N·m once more."
                        .formatted(km(retorque.dueOdometerKm()), retorque.dueDate(), retorque.torqueNm()));
        page.raw("</div>\n");
    }

    private void writeOtherSet() {
        var others = assessment.history().sets().stream()
                .filter(set -> set.wheels().stream().noneMatch(wheel -> wheelAt.containsValue(wheel.tag())))
                .toList();
        if (others.isEmpty()) {
            return;
        }
        page.element("h2", "The other set");
        page.list(others.stream().map(this::otherSetWords).toList(), most);
    }

    private String otherSetWords(WheelSet set) {
        var place = set.storePlace();
        var where = place == null ? "no store place is recorded" : "lies at " + name(place);
        var lasts = assessment.forecasts().stream()
                .filter(forecast -> forecast.set().id().equals(set.id()))
                .findFirst()
                .map(SheetPage::lastsWords)
                .orElse("its tread was not judged at this visit");
        return "%s set: %s; %s.".formatted(seasonWord(set.season()), where, lasts);
    }

    private static String lastsWords(SetForecast forecast) {
        var chance = forecast.probabilityHolds() > 0.99
                ? "over 99 %"
                : forecast.probabilityHolds() < 0.01
                        ? "under 1 %"
                        : "%.0f %%".formatted(forecast.probabilityHolds() * 100);
        return "%s its next season, %s to %s (%s likely)"
                .formatted(
                        forecast.probabilityHolds() >= forecast.confidence() ? "lasts" : "is not sure to last",
                        forecast.from(),
                        forecast.until(),
                        chance);
    }

    private void writeNotJudged() {
        if (!assessment.notJudged().isEmpty()) {
            page.element("h2", "What could not be judged");
            page.list(lines(assessment.notJudged()), most);
        }
    }

    private void writeCautions() {
        page.element("h2", "Please mind");
        var cautions = new ArrayList<String>();
        if (assessment.findings().stream().anyMatch(finding -> finding.verdict() == Verdict.UNSAFE)) {
            cautions.add("Do not drive this car until what is marked Unsafe has been put right.");
        }
        if (assessment.retorque() != null) {
            cautions.add("If the car shakes, knocks or pulls to one side, stop and have the wheels looked at.");
        }
        cautions.add("Tyre pressures are set for cold tyres. Check them once a month, before driving.");
        var notes = visit.notes();
        if (notes != null && !notes.isBlank()) {
            cautions.add(line(notes));
        }
        page.list(cautions, most);
    }

    private void writeClose(Instant madeAt) {
        page.raw("<div class=\"close\">");
        page.element("p", "Next visit: " + assessment.nextVisit());
        page.raw("<table class=\"signatures\"><tr>");
        var technician = visit.technician();
        page.element("td", technician == null ? "Technician" : "Technician: " + name(technician));
        page.element("td", "Customer: " + name(assessment.history().customer().name()));
        page.raw("</tr></table>");
        page.element(
                "p class=\"small\"",
                "Made on %s UTC. Dates are estimates from the readings and the distance driven so far."
                        .formatted(DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
                                .format(madeAt.atOffset(ZoneOffset.UTC))));
        page.raw("</div>");
    }

    private Optional<SetForecast> forecast(SetForecast.Role role) {
        return assessment.forecasts().stream()
                .filter(forecast -> forecast.role() == role)
                .findFirst();
    }

    private static String mark(Finding finding, int sizePx) {
        return described(VerdictMark.svg(finding.verdict(), finding.lifeLeft(), sizePx));
    }

    /** The renderer takes the alternative text of a picture from the attribute alt. */
    private static String described(String svg) {
        return svg.replaceFirst("aria-label=(\"[^\"]*\")", "aria-label=$1 alt=$1");
    }

    private static List<String> lines(List<String> words) {
        return words.stream().map(SheetPage::line).toList();
    }

    private static String line(String words) {
        return Xhtml.shorten(words, LONGEST_LINE);
    }

    private static String name(String words) {
        return Xhtml.shorten(words, LONGEST_NAME);
    }

    private static String km(double value) {
        return "%.0f km".formatted(value);
    }

    private static String seasonWord(SeasonKind season) {
        return switch (season) {
            case SUMMER -> "Summer";
            case WINTER -> "Winter";
            case ALL_SEASON -> "All-season";
        };
    }
}
