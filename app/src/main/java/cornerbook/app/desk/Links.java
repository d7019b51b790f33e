package cornerbook.app.desk;

import cornerbook.app.exchange.CarForm;
import cornerbook.app.request.PageException;
import cornerbook.core.car.DataGap;
import cornerbook.core.corner.Axle;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.finding.Finding;
import cornerbook.core.order.Article;
import cornerbook.core.wheelplan.Rule;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Addresses of the pages. */
public final class Links {
    public static final String DEVICES = "/devices";
    public static final String PAIR = "/pair";
    /** Behind it stand the secret and {@link #CALENDAR_FILE}. */
    public static final String CALENDAR = "/calendar/";

    public static final String CALENDAR_FILE = ".ics";

    /** Behind it stands the secret of an estimate that a customer answers without pairing. */
    public static final String AGREE = "/agree/";

    /** Behind it stands the secret by which a customer picks a day without pairing. */
    public static final String PICK = "/pick/";

    private Links() {}

    public static String car(String vehicleId) {
        return "/cars/" + segment(vehicleId);
    }

    /** Where the order of the work is set, for the shop. */
    public static String stepOrder() {
        return "/shop/order";
    }

    /** The same for cars of one kind. */
    public static String stepOrder(String vehicleId) {
        return stepOrder() + "?car=" + segment(vehicleId);
    }

    /** Who is to be asked to come back. */
    public static String coming() {
        return "/coming";
    }

    /** The e-mails that may be written to them, before they are sent. */
    public static String comingMail() {
        return coming() + "/mail";
    }

    /** The e-mails that were written. */
    public static String sentMail() {
        return comingMail() + "/sent";
    }

    /** What other shops' cars taught. */
    public static String othersKnowledge() {
        return "/shop/knowledge";
    }

    /** The server that takes the shop's e-mails. */
    public static String mailServer() {
        return "/shop/mail";
    }

    /** What to order until the coming change-over. */
    public static String order() {
        return "/order";
    }

    /** The year in pictures. */
    public static String year() {
        return "/year";
    }

    /** A list behind one of its pictures. */
    public static String behind(String list) {
        return year() + "/" + list;
    }

    /** One article of it, with the cars behind it. */
    public static String article(Article article) {
        var kind = article.kind();
        return order() + "/article?part=" + article.part().name() + "&kind=" + segment(kind == null ? "" : kind)
                + "&text=" + segment(article.text());
    }

    /** What the work of a visit would cost, and what the customer said to it. */
    public static String estimate(String visitId) {
        return visit(visitId) + "/estimate";
    }

    /** One of its estimates, for paper. */
    public static String estimatePdf(String visitId, int turn) {
        return estimate(visitId) + ".pdf?turn=" + turn;
    }

    /** Where the customer answers the last estimate on a tablet of the shop. */
    public static String agree(String visitId) {
        return visit(visitId) + "/agree";
    }

    /** What was charged for a visit, and what was paid. */
    public static String bill(String visitId) {
        return visit(visitId) + "/bill";
    }

    /** The latest bills of the shop. */
    public static String bills() {
        return "/bills";
    }

    /** A bill or a credit note, for paper. */
    public static String billPdf(int number) {
        return bills() + "/" + number + ".pdf";
    }

    /** The same for other programs. */
    public static String billXml(int number) {
        return bills() + "/" + number + ".xml";
    }

    /** The places of the store, and what lies there. */
    public static String store() {
        return "/store";
    }

    /** Where it is said how a set was taken in. */
    public static String storedSet() {
        return store() + "/set";
    }

    /** One set, on its car or in the store. */
    public static String storedSet(String vehicleId, String setId) {
        return storedSet() + "?car=" + segment(vehicleId) + "&set=" + segment(setId);
    }

    /** Where photos of it are sent. */
    public static String photosOfSet() {
        return storedSet() + "/photos";
    }

    public static String photosOfSet(String vehicleId, String setId) {
        return photosOfSet() + "?car=" + segment(vehicleId) + "&set=" + segment(setId);
    }

    /** The receipt for it. */
    public static String receipt(String vehicleId, String setId) {
        return store() + "/receipt.pdf?car=" + segment(vehicleId) + "&set=" + segment(setId);
    }

    /** Stored sets that nobody fetched. */
    public static String left() {
        return store() + "/left";
    }

    /** Counts of what lies in the store. */
    public static String count() {
        return store() + "/count";
    }

    /**
     * One of them.
     *
     * @param place that was scanned last; may be empty
     */
    public static String count(String countId, String place) {
        return count() + "?count=" + segment(countId) + (place.isEmpty() ? "" : "&place=" + segment(place));
    }

    /** Which sets are fetched for the next day, in walking order. */
    public static String fetch() {
        return store() + "/fetch";
    }

    /** The same for this day. */
    public static String fetch(LocalDate day) {
        return fetch() + "?day=" + day;
    }

    /** Sets that have to be brought from a store elsewhere. */
    public static String bring() {
        return store() + "/bring";
    }

    /** That a room of the store is elsewhere. */
    public static String storeRoom() {
        return store() + "/room";
    }

    /** One rack of the store. */
    public static String rack(String rackId) {
        return store() + "/rack?rack=" + segment(rackId);
    }

    /** Where sets go in and out by scan. */
    public static String scan() {
        return store() + "/scan";
    }

    /** The same with a set in hand that waits for its place. */
    public static String scanOf(String tag) {
        return scan() + "?tag=" + segment(tag);
    }

    /** The same after a place was scanned. */
    public static String scanAt(String place) {
        return scan() + "?place=" + segment(place);
    }

    /** The same to fetch sets for the car of a visit. */
    public static String scanFor(String visitId) {
        return scan() + "?visit=" + segment(visitId);
    }

    /**
     * The same after a set was moved.
     *
     * @param visitId for whose car more sets are fetched; may be empty
     */
    public static String scanned(String tag, String visitId) {
        return scan() + "?was=" + segment(tag) + (visitId.isEmpty() ? "" : "&visit=" + segment(visitId));
    }

    /** What the shop's work and parts cost. */
    public static String prices() {
        return "/shop/prices";
    }

    /** The data sheets of kinds of cars. */
    public static String kinds() {
        return "/shop/kinds";
    }

    /** One of them as a form, empty. */
    public static String kindForm() {
        return kinds() + "/form";
    }

    /** One of them, to be changed. */
    public static String kind(String name) {
        return kindForm() + "?kind=" + segment(name);
    }

    /** One of them as text. */
    public static String kindText(String name) {
        return kinds() + "?kind=" + segment(name);
    }

    /** One of them as a file. */
    public static String kindFile(String name) {
        return kinds() + "/file?kind=" + segment(name);
    }

    /** A sheet with what the book has of a car, to be looked through and kept. */
    public static String kindOf(String vehicleId) {
        return kindForm() + "?car=" + segment(vehicleId);
    }

    /** What the book keeps of a customer. */
    public static String customer(String customerId) {
        return "/customers/" + segment(customerId);
    }

    /** The same as a file. */
    public static String customerFile(String customerId) {
        return customer(customerId) + "/file";
    }

    /** Where it stands whether a customer is called and written to. */
    public static String contact(String customerId) {
        return customer(customerId) + "#contact";
    }

    /** Where that is said. */
    public static String contactAnswer(String customerId) {
        return customer(customerId) + "/contact";
    }

    public static String eraseCustomer(String customerId) {
        return customer(customerId) + "/erase";
    }

    /** Customers taken from cards. */
    public static String cards() {
        return goneCustomers() + "/cards";
    }

    /** Customers who were not here for long. */
    public static String goneCustomers() {
        return "/shop/customers";
    }

    /** Where the whole book is taken out. */
    public static String out() {
        return "/shop/out";
    }

    /** What was taken out, as one file. */
    public static String outFile() {
        return out() + "/file";
    }

    /** For a customer whom the book knows. */
    public static String newCar(String customerId) {
        return newCar() + "?customer=" + segment(customerId);
    }

    public static String newCar() {
        return "/cars/new";
    }

    /** Many new cars at once. */
    public static String carList() {
        return "/shop/cars";
    }

    public static String carData(String vehicleId) {
        return car(vehicleId) + "/data";
    }

    /** Where what nobody has looked up of a car is given: its field in the form of the car's data. */
    public static String give(String vehicleId, DataGap gap) {
        return carData(vehicleId) + "#" + CarForm.pointer(gap);
    }

    public static String wheel(String tag) {
        return "/wheels/" + segment(tag);
    }

    public static String newVisit(String vehicleId) {
        return car(vehicleId) + "/visits/new";
    }

    /** The same with the wheels of a set filled in. */
    public static String newVisitOn(String vehicleId, String setId) {
        return newVisit(vehicleId) + "?set=" + segment(setId);
    }

    /** The days of the shop. */
    public static String days() {
        return "/days";
    }

    /** One of them, in its week. */
    public static String days(LocalDate day) {
        return days() + "?day=" + day;
    }

    /** The same, asking for what is left of today. */
    public static String restOfToday() {
        return dayPlan() + "?today=1";
    }

    /** Where a plan of the coming days is proposed. */
    public static String dayPlan() {
        return days() + "/plan";
    }

    /** The shop's own server sends the address by which a customer picks a day. */
    public static String mailDay() {
        return askDay() + "/mail";
    }

    /** Where a customer is asked for a day. */
    public static String askDay() {
        return days() + "/ask";
    }

    /** Where it is said what becomes of a day that a customer would like. */
    public static String dayWish() {
        return days() + "/wish";
    }

    /** The weeks ahead. */
    public static String weeks() {
        return days() + "/weeks";
    }

    /** Where a new appointment is sent. */
    public static String appointments() {
        return "/appointments";
    }

    /** A day is agreed for a car that is looked for. */
    public static String newAppointment() {
        return appointments() + "/new";
    }

    /** The same for one of the cars that a search has found. */
    public static String newAppointmentFor(String query) {
        return newAppointment() + "?q=" + segment(query);
    }

    /** The same for this car. */
    public static String newAppointment(String vehicleId) {
        return newAppointment() + "?car=" + segment(vehicleId);
    }

    /** The same for the car of a visit whose wheels are to be tightened again. */
    public static String appointmentToTighten(String visitId) {
        return newAppointment() + "?visit=" + segment(visitId) + "&work=" + PlannedWork.RETORQUE;
    }

    public static String appointment(String id) {
        return appointments() + "/" + segment(id);
    }

    /** Where somebody says that it is confirmed, missed or called off. */
    public static String appointmentState(String id) {
        return appointment(id) + "/state";
    }

    public static String visit(String visitId) {
        return "/visits/" + segment(visitId);
    }

    /** Date and odometer of a visit, to be put right. */
    public static String visitData(String visitId) {
        return visit(visitId) + "/data";
    }

    /** The bay sheet of a visit, for tablets. */
    public static String bay(String visitId) {
        return "/bay" + visit(visitId);
    }

    public static String findings(String visitId) {
        return visit(visitId) + "/findings";
    }

    public static String handover(String visitId) {
        return visit(visitId) + "/handover.pdf";
    }

    /** Where the customer's answers are sent. */
    public static String retorqueConfirmed(String visitId) {
        return visit(visitId) + "/retorque/confirmed";
    }

    public static String declined(String visitId) {
        return visit(visitId) + "/declined";
    }

    /** The picture itself. */
    public static String photo(String photoId) {
        return "/bay/photos/" + segment(photoId);
    }

    /** Where the choice about a photo is sent. */
    public static String photo(String visitId, String photoId) {
        return visit(visitId) + "/photos/" + segment(photoId);
    }

    public static String plan(String visitId) {
        return visit(visitId) + "/plan";
    }

    /** The plan as it would be without some rules. */
    public static String planWithout(String visitId, Set<Rule> without) {
        return without.isEmpty()
                ? plan(visitId)
                : plan(visitId) + "?without="
                        + without.stream().map(Links::word).sorted().collect(Collectors.joining(","));
    }

    /**
     * The rules that such an address names.
     *
     * @throws PageException when it names one that there is not
     */
    public static Set<Rule> rules(String words) {
        var rules = EnumSet.noneOf(Rule.class);
        for (var word : words.isBlank() ? new String[0] : words.split(",", -1)) {
            rules.add(Arrays.stream(Rule.values())
                    .filter(rule -> word(rule).equals(word))
                    .findFirst()
                    .orElseThrow(() -> new PageException(
                            400,
                            new DeskSaid.NoSuchRule(
                                    word,
                                    Arrays.stream(Rule.values())
                                            .map(Links::word)
                                            .collect(Collectors.joining(", "))))));
        }
        return rules;
    }

    private static String word(Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static String burnish(String visitId) {
        return visit(visitId) + "/burnish";
    }

    public static String bench(String calculator) {
        return "/bench/" + segment(calculator);
    }

    /** A calculator with the car's own data filled in. */
    public static String bench(String calculator, String vehicleId) {
        return bench(calculator) + "?car=" + segment(vehicleId);
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

    /** One tag a page, for a roll of labels. */
    public static String tags(String visitId) {
        return visit(visitId) + "/tags.pdf";
    }

    public static String tagsOnA4(String visitId) {
        return tags(visitId) + "?paper=a4";
    }

    public static String leaving(String visitId) {
        return visit(visitId) + "/leaving";
    }

    /** Readings of a visit go to the right car. */
    public static String move(String visitId) {
        return visit(visitId) + "/move";
    }

    public static String cancel(String visitId) {
        return visit(visitId) + "/cancel";
    }

    /** A cancelled visit counts again. */
    public static String restore(String visitId) {
        return visit(visitId) + "/restore";
    }

    /** Where somebody says that the car of a visit is. */
    public static String state(String visitId) {
        return visit(visitId) + "/state";
    }

    /** A page of the re-torques that are open. */
    public static String retorques(int from) {
        return from == 0 ? "/#retorques" : "/?again=" + from + "#retorques";
    }

    /** A page of the visits of a day. */
    public static String visits(LocalDate day, int from) {
        return "/?date=" + day + "&visits=" + from + "#visits-title";
    }

    /** A page of the cars that were searched for. */
    public static String cars(String query, int from) {
        return "/?q=" + URLEncoder.encode(query, StandardCharsets.UTF_8) + "&from=" + from + "#cars";
    }

    /** Calls a number where the page is open on a telephone (RFC 3966); only what is dialled stands in it. */
    public static String call(String number) {
        return "tel:" + number.replaceAll("[^0-9+*#]", "");
    }

    /** Writes a message to a telephone, for the person to send (RFC 5724). */
    public static String message(String number, String text) {
        return "sms:" + number.replaceAll("[^0-9+]", "") + "?body=" + segment(text);
    }

    /** Writes an e-mail, for the person to send (RFC 6068). */
    public static String mail(String address, String subject, String text) {
        return "mailto:" + segment(address).replace("%40", "@") + "?subject=" + segment(subject) + "&body="
                + segment(text.replace("\n", "\r\n"));
    }

    /** Where somebody says what came of asking for a re-torque. */
    public static String retorqueAnswer(String visitId) {
        return retorque(visitId) + "/answer";
    }

    public static String retorque(String visitId) {
        return visit(visitId) + "/retorque";
    }

    /** The visit with the wheels of one set filled in as those that leave on the car. */
    public static String leavingWith(String visitId, String setId) {
        return visit(visitId) + "?set=" + segment(setId) + "#leaving";
    }

    /** The visit after its readings were stored, with what was typed about the wheels and is not recorded yet. */
    public static String saved(String visitId, int readings, Map<String, String> typed) {
        return visit(visitId) + "?saved=" + readings
                + typed.entrySet().stream()
                        .map(field -> "&" + segment(field.getKey()) + "=" + segment(field.getValue()))
                        .collect(Collectors.joining());
    }

    private static String segment(String words) {
        return URLEncoder.encode(words, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
