package cornerbook.app.cars;

import cornerbook.core.assess.Assessment;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What must never be said of any car. Each rule is a sentence; its faults name the finding that breaks it. */
final class NeverSaid {
    /** What a program says when it is not sure of its own values. */
    private static final Pattern INSIDE = Pattern.compile(
            "NaN|Infinity|∞|\\bnull\\b|[{}\\[\\]]|\\b[A-Z]{2,}_[A-Z_]+\\b|\\bcornerbook\\.|@[0-9a-f]{5,}");

    private static final Pattern NEGATIVE =
            Pattern.compile("(?<![\\w.,])[-−–]\\d+(?:[.,]\\d+)? (?:mm|psi|kPa|bar|N·m|/32)");
    /** Finer than any tool in a workshop. */
    private static final Pattern TOO_FINE = Pattern.compile(
            "\\d[.,]\\d{2,} (?:N·m|kPa|km|mi|°C|°F|A\\b)|\\d[.,]\\d{3,} V\\b|between 0 and 0|entre 0 et 0");

    private static final Pattern CERTAIN = Pattern.compile("\\b100(?:[.,]0+)?[  ]?%");
    private static final Pattern NOT_TO_DRIVE = Pattern.compile(
            "(?iU)(?:do not|don’t|must not|not to) (?:be )?driven?\\b"
                    + "|ne (?:pas )?(?:roule|condui|pren\\w+ pas la route)\\w*|before the car moves|avant que le véhicule roule");
    private static final Pattern ENOUGH = Pattern.compile(
            "(?iU)(?<!may not )\\b(?:has|have|is|are) (?:still )?enough\\b|\\b(?:a|ont|reste) assez\\b");
    private static final Pattern REPLACE =
            Pattern.compile("(?iU)\\breplace (?:it|them|now|the)\\b|\\b(?:used|worn) (?:up|out)\\b");
    private static final Pattern ASKS = Pattern.compile(
            "(?iU)\\bto be looked at\\b|\\bhave the\\b|\\bà (?:examiner|vérifier)\\b|\\bfaire (?:mesurer|chercher)\\b");
    /** That it holds until a day, as a share. */
    private static final Pattern CHANCE = Pattern.compile("(?iU)% to hold until|% de chances? de tenir");

    private static final Pattern LASTS = Pattern.compile("(?iU)(?<!not )\\blasts? until\\b|\\bdure jusqu");
    /** That it is not asked for may be told. */
    private static final Pattern CRANKING =
            Pattern.compile("(?iU)^(?!.*(?:not asked|n’est pas demandé)).*(?:\\bcrank|\\bdémarrage à froid)");

    private static final Pattern HIGH_VOLTAGE =
            Pattern.compile("(?iU)drive battery|high.voltage|haute tension|batterie de traction");
    private static final Pattern FROZEN = Pattern.compile("(?iU)\\bfrozen|\\bfreez|\\bgel(?:é|er)");

    /** What only a disc brake has; not a part of a wheel's tag. */
    private static final Pattern OF_A_DISC = Pattern.compile(
            "(?iU)(?<![-\\w])(?:discs?|pads?|pins?|calipers?|disques?|plaquettes?|colonnettes?|goupilles?|étriers?)(?![-\\w])");
    /** What only a drum brake has; a parking brake may have its shoes inside of a disc. */
    private static final Pattern OF_A_DRUM = Pattern.compile(
            "(?iU)(?<![-\\w])(?:drums?|shoe linings?|wheel cylinders?|tambours?|garnitures? des segments|cylindres? de roue)(?![-\\w])");

    private static final Pattern CAPITAL = Pattern.compile("^(?:[LR][FR]|A[VR][GD]),? \\p{Lu}\\p{Ll}");

    /** Of a mark that is for whoever works on the program. */
    private static final Pattern MARK = Pattern.compile("(?iU)\\bfrom memory\\b|\\bde mémoire\\b");

    private static final Pattern ENGLISH = Pattern.compile(
            "(?iU)(?<![-\\w])(?:the|and|common practice|no source|house rule|secondary source|trade literature)(?![-\\w])");

    private static final Set<Todo.Action> REPLACES = EnumSet.of(
            Todo.Action.REPLACE,
            Todo.Action.REPLACE_PAIR,
            Todo.Action.ORDER,
            Todo.Action.REPAIR,
            Todo.Action.FIT_ANOTHER_WHEEL,
            Todo.Action.TORQUE_AGAIN);

    /** Parts whose findings may be about one axle or the other; their subject does not tell them apart. */
    private static final Set<Part> OF_AN_AXLE =
            EnumSet.of(Part.BRAKE_PAIR, Part.TREAD_DIFFERENCE, Part.TYRE_FITTING, Part.WHEEL_FIT);

    /** Rules on one finding. */
    private static final Map<String, Function<Assessment, Predicate<Finding>>> OF_A_FINDING = Map.ofEntries(
            Map.entry(
                    "what holds is neither replaced nor repaired",
                    all -> finding -> finding.verdict() == Verdict.HOLDS
                            && ((finding.todo() != null
                                            && REPLACES.contains(finding.todo().action())
                                            && !isNearTorque(finding))
                                    || said(finding, REPLACE)
                                    || said(finding, NOT_TO_DRIVE))),
            Map.entry(
                    "what holds and asks for a look shows it as something to do",
                    all -> finding ->
                            finding.verdict() == Verdict.HOLDS && finding.todo() == null && said(finding, ASKS)),
            Map.entry(
                    "what is unsafe is so now, with no chance and no day to come",
                    all -> finding -> finding.verdict() == Verdict.UNSAFE
                            && (finding.probability() != null || finding.horizon() != null || said(finding, CHANCE))),
            Map.entry(
                    "what does not hold says what to do",
                    all -> finding -> finding.verdict() != Verdict.HOLDS && finding.todo() == null),
            Map.entry(
                    "what runs out has not enough",
                    all -> finding -> finding.verdict() != Verdict.HOLDS && said(finding, ENOUGH)),
            Map.entry(
                    "what is spent does not last until a day",
                    all -> finding -> finding.verdict().compareTo(Verdict.SPENT) >= 0 && said(finding, LASTS)),
            Map.entry(
                    "what runs out does so between this visit and the next",
                    all -> finding -> finding.horizon() != null
                            && (finding.horizon().isBefore(all.visit().date())
                                    || (finding.verdict() == Verdict.HOLDS
                                            && finding.horizon().isBefore(all.nextVisit())))),
            Map.entry(
                    "nobody is told not to drive on wheels that lie in the store",
                    all -> finding -> isStored(all, finding)
                            && (finding.verdict() == Verdict.UNSAFE || said(finding, NOT_TO_DRIVE))),
            Map.entry("after the corner a title goes on in small letters", all -> finding -> said(finding, CAPITAL)),
            Map.entry("no depth and no pressure is below nothing", all -> finding -> said(finding, NEGATIVE)),
            Map.entry("no number is finer than its tool", all -> finding -> said(finding, TOO_FINE)),
            Map.entry(
                    "nothing to come is certain",
                    all -> finding -> finding.probability() != null && said(finding, CERTAIN)),
            Map.entry(
                    "a frozen battery, or lithium below 0 °C, is not charged",
                    all -> finding -> finding.todo() != null
                            && finding.todo().action() == Todo.Action.CHARGE_AND_TEST
                            && (isColdLithium(all) || said(finding, FROZEN))),
            Map.entry(
                    "an electric car is not asked to crank",
                    all -> finding -> all.history().vehicle().electric() && said(finding, CRANKING)),
            Map.entry(
                    "a drum has no disc, pads, pins or caliper, and a disc no drum",
                    all -> finding -> finding.subject().corner() != null
                            && said(finding, ofTheOther(all, finding.subject().corner()))),
            Map.entry(
                    "no source on a customer's paper has a mark that is for whoever works on the program",
                    all -> finding -> !finding.subject().part().isOfShop()
                            && inEach(Stream.of(finding.source()))
                                    .anyMatch(source -> MARK.matcher(source).find())),
            Map.entry(
                    "an unsafe car has an open point",
                    all -> finding -> finding.verdict() == Verdict.UNSAFE
                            && !finding.subject().part().isOfShop()
                            && all.open().isEmpty()),
            Map.entry(
                    "the shop's own tools say nothing of the car",
                    all -> finding -> finding.subject().part().isOfShop()
                            && (all.ofCar().contains(finding)
                                    || all.open().stream()
                                            .anyMatch(point -> point.part()
                                                    == finding.subject().part()))));

    private NeverSaid() {}

    /** It counts as tightened, and farther off than a wrench may be: gone round once more, as the words beside it say. */
    private static boolean isNearTorque(Finding finding) {
        return finding.plainWords() instanceof TorqueSaid.NearTorque;
    }

    /** The rules that are broken, each with what breaks it; empty where none is. */
    static List<String> faults(Assessment assessment) {
        var faults = new ArrayList<String>();
        OF_A_FINDING.forEach((rule, broken) -> assessment.findings().stream()
                .filter(broken.apply(assessment))
                .forEach(finding -> faults.add(rule + ": " + ExpectedCar.told(finding))));
        told(assessment)
                .filter(sentence -> INSIDE.matcher(sentence).find())
                .forEach(sentence -> faults.add("nothing of the program's inside is told: " + sentence));
        Arrays.stream(Corner.values())
                .forEach(corner -> assessment.notJudged().stream()
                        .map(Reader.DEFAULT::say)
                        .filter(sentence -> sentence.startsWith(corner + ",") || sentence.startsWith(corner + " "))
                        .filter(sentence ->
                                ofTheOther(assessment, corner).matcher(sentence).find())
                        .forEach(sentence -> faults.add("nothing is asked of a drum that a disc has: " + sentence)));
        assessment.findings().stream()
                .flatMap(finding -> Stream.of(finding.title(), finding.plainWords(), finding.source()))
                .map(Reader.DEFAULT.in(Language.FRENCH)::say)
                .filter(sentence -> ENGLISH.matcher(sentence).find())
                .forEach(sentence -> faults.add("who reads French is told nothing in English: " + sentence));
        faults.addAll(contradictions(assessment));
        assessment.forecasts().forEach(forecast -> faults.addAll(depths(forecast)));
        assessment.findings().stream()
                .filter(finding -> finding.subject().part() == Part.WHEEL_SET && finding.verdict() == Verdict.SPENT)
                .filter(finding -> condemnedByForecast(assessment, finding))
                .forEach(finding -> faults.add("no tyre is condemned by a forecast from one reading, nor a new one: "
                        + ExpectedCar.told(finding)));
        if (!assessment.history().vehicle().electric()) {
            told(assessment)
                    .filter(sentence -> HIGH_VOLTAGE.matcher(sentence).find())
                    .forEach(sentence -> faults.add("an engine has no drive battery: " + sentence));
        } else {
            Stream.of(Language.values())
                    .flatMap(language -> assessment.notJudged().stream().map(Reader.DEFAULT.in(language)::say))
                    .filter(sentence -> CRANKING.matcher(sentence).find())
                    .forEach(sentence -> faults.add("an electric car is not asked to crank: " + sentence));
        }
        var verdicts = assessment.findings().stream().map(Finding::verdict).toList();
        if (!verdicts.equals(
                verdicts.stream().sorted((one, other) -> other.compareTo(one)).toList())) {
            faults.add("the gravest is told first: " + verdicts);
        }
        return faults;
    }

    /** One subject does not hold and fail at once, and nothing is told of it twice. A pad may be thick enough and stuck. */
    private static List<String> contradictions(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> !OF_AN_AXLE.contains(finding.subject().part()))
                .collect(Collectors.groupingBy(Finding::subject))
                .values()
                .stream()
                .filter(about -> about.size() > 1)
                .filter(about -> (about.getFirst().subject().part() != Part.PAD
                                && about.stream().anyMatch(finding -> finding.verdict() == Verdict.HOLDS)
                                && about.stream()
                                        .anyMatch(finding -> finding.verdict().compareTo(Verdict.SPENT) >= 0))
                        || about.stream()
                                        .map(finding -> Reader.DEFAULT.say(finding.plainWords()))
                                        .distinct()
                                        .count()
                                < about.size())
                .map(about -> "one subject has one verdict, and is told once: "
                        + about.stream().map(ExpectedCar::told).toList())
                .toList();
    }

    /** What a gauge has read outvotes the model. */
    private static List<String> depths(SetForecast forecast) {
        return forecast.tyres().stream()
                .flatMap(tyre -> tyre.grooves().stream()
                        .filter(groove -> groove.depthMm() < 0
                                || (!groove.readings().isEmpty()
                                        && groove.depthMm()
                                                > groove.readings().getLast().depthMm() + 0.05))
                        .map(groove -> "no depth is above what was read or below nothing: "
                                + tyre.wheel().tag() + " " + groove.groove() + " " + groove.depthMm() + " mm"))
                .toList();
    }

    /** Read above its limit on fewer than two days, or new. */
    private static boolean condemnedByForecast(Assessment assessment, Finding finding) {
        return assessment.forecasts().stream()
                .filter(forecast -> forecast.set().id().equals(finding.subject().setId()))
                .anyMatch(forecast -> {
                    var grooves = forecast.tyres().stream()
                            .flatMap(tyre -> tyre.grooves().stream())
                            .filter(groove -> !groove.readings().isEmpty())
                            .toList();
                    double lowestMm = grooves.stream()
                            .mapToDouble(groove -> groove.readings().getLast().depthMm())
                            .min()
                            .orElse(0);
                    double newMm = forecast.tyres().stream()
                            .mapToDouble(tyre -> tyre.wheel().tyre().newDepthOrUsualMm())
                            .min()
                            .orElse(0);
                    boolean readOnce = grooves.stream()
                            .allMatch(groove -> groove.readings().stream()
                                            .map(SetForecast.DepthReading::date)
                                            .distinct()
                                            .count()
                                    < 2);
                    return lowestMm >= forecast.limitMm() && (readOnce || lowestMm > newMm - 0.5);
                });
    }

    private static boolean isStored(Assessment assessment, Finding finding) {
        var leftOn = assessment.visit().leftOn();
        var tags = finding.subject().wheelTag() != null
                ? List.of(finding.subject().wheelTag())
                : assessment.history().sets().stream()
                        .filter(set -> set.id().equals(finding.subject().setId()))
                        .flatMap(set -> set.wheels().stream())
                        .map(wheel -> wheel.tag())
                        .toList();
        return !tags.isEmpty() && !leftOn.isEmpty() && tags.stream().noneMatch(leftOn::containsValue);
    }

    private static Pattern ofTheOther(Assessment assessment, Corner corner) {
        return assessment.history().vehicle().axle(corner.axle()).brake().hasDrum() ? OF_A_DISC : OF_A_DRUM;
    }

    private static boolean isColdLithium(Assessment assessment) {
        var battery = assessment.history().vehicle().battery();
        var lithium = battery != null && battery.chemistry() == Chemistry.LITHIUM;
        return new StandingReadings(assessment.visit())
                .ofVehicle(Measure.BATTERY_TEMPERATURE)
                .filter(reading -> lithium && reading.value() < 0)
                .isPresent();
    }

    private static boolean said(Finding finding, Pattern pattern) {
        return sentences(finding).anyMatch(sentence -> pattern.matcher(sentence).find());
    }

    /** What a customer may read of it, in every language. */
    private static Stream<String> sentences(Finding finding) {
        return inEach(
                Stream.of(finding.title(), finding.plainWords(), finding.todo()).filter(Objects::nonNull));
    }

    private static Stream<String> told(Assessment assessment) {
        return inEach(Stream.of(
                        assessment.findings().stream()
                                .flatMap(finding -> Stream.concat(
                                        Stream.of(
                                                        finding.title(),
                                                        finding.plainWords(),
                                                        finding.source(),
                                                        finding.todo())
                                                .filter(Objects::nonNull),
                                        finding.evidence().stream()
                                                .flatMap(each -> Stream.of(each.what(), each.value(), each.how())))),
                        assessment.notJudged().stream(),
                        assessment.open().stream(),
                        assessment.workDone().stream(),
                        assessment.doubted().stream().map(each -> (Said) each.question()))
                .flatMap(each -> each));
    }

    private static Stream<String> inEach(Stream<? extends Said> said) {
        var all = said.toList();
        return Arrays.stream(Language.values()).flatMap(language -> all.stream().map(Reader.DEFAULT.in(language)::say));
    }
}
