package cornerbook.app.desk.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.price.Job;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Reader;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** The lines that an estimate may have, of all invented cars. */
class DraftTest {
    private static final TaxPlace QUEBEC = new TaxPlace("CA-QC", CurrencyUnit.CAD, ServedShop.TODAY, List.of());
    private static final PriceList NO_PRICES = new PriceList(ServedShop.TODAY, null, List.of());

    private static boolean asksForBothSides(Finding finding) {
        return finding.todo() != null && finding.todo().action() == Todo.Action.REPLACE_PAIR;
    }

    private static boolean isOfPair(Finding finding) {
        return finding.subject().part() == Subject.Part.BRAKE_PAIR;
    }

    private static List<Assessment> withBoth() {
        var assessor = new Assessor(LimitsFile.load());
        return ServedShop.cars().stream()
                .flatMap(car -> car.visits().stream().map(Visit::id).map(visit -> assessor.assess(car, visit)))
                .filter(assessed -> assessed.findings().stream()
                        .filter(DraftTest::asksForBothSides)
                        .anyMatch(DraftTest::isOfPair))
                .filter(assessed -> assessed.findings().stream()
                        .filter(DraftTest::asksForBothSides)
                        .anyMatch(finding -> !isOfPair(finding)))
                .toList();
    }

    /** Only one side was replaced, and no part that was read asks for the other: the job of the axle is known all the same. */
    @Test
    void anAxleOfWhichOneSideWasReplacedIsOfferedByItsJob() {
        var text = CarLibrary.text("piston-seized");
        int last = text.lastIndexOf("\"readings\": [") + "\"readings\": [".length();
        var half = text.substring(0, last)
                + "{\"measure\": \"pads replaced\", \"corner\": \"RR\", \"value\": \"done\"},"
                + text.substring(last);
        var assessed = CarLibrary.assess(CarLibrary.car(half));
        assertThat(Draft.of(assessed, NO_PRICES, null, Reader.DEFAULT))
                .filteredOn(line -> line.line().key().startsWith(Subject.Part.BRAKE_PAIR.name()))
                .singleElement()
                .satisfies(line -> assertThat(line.line().works())
                        .isEqualTo(ChargedWork.of(Job.PADS, List.of(Corner.LR, Corner.RR))));
    }

    /** A worn pad asks for both sides of its axle, and so does the axle: the customer is offered that work once. */
    @Test
    void partsOfBothSidesAreOfferedOnce() {
        assertThat(withBoth())
                .isNotEmpty()
                .allSatisfy(assessed -> assertThat(Draft.of(assessed, NO_PRICES, null, Reader.DEFAULT))
                        .extracting(line -> line.line().key())
                        .noneMatch(key -> key.startsWith(Subject.Part.BRAKE_PAIR.name()))
                        .anyMatch(key -> key.endsWith(Todo.Action.REPLACE_PAIR.name())));
    }

    /** Each of two worn discs asks for both, each with its own figure: the work is offered once. */
    @Test
    void twoWornDiscsOfAnAxleAreOfferedAsOneWork() {
        var assessed = CarLibrary.assess(CarLibrary.car(CarLibrary.text("disc-under-minimum")));
        assertThat(Draft.of(assessed, NO_PRICES, null, Reader.DEFAULT))
                .filteredOn(line ->
                        line.line().works().equals(ChargedWork.of(Job.DISCS, List.of(Corner.LF, Corner.RF))))
                .hasSize(2)
                .filteredOn(DraftLine::chosen)
                .hasSize(1);
    }

    /** Both sets of a car may ask for it, and one set for two reasons: an alignment is measured once for the car. */
    @Test
    void anAlignmentIsOfferedOnce() {
        var car = ServedShop.car("demo-03");
        var assessed = new Assessor(LimitsFile.load())
                .assess(car, car.visits().getLast().id());
        assertThat(Draft.of(assessed, NO_PRICES, null, Reader.DEFAULT))
                .filteredOn(line -> line.line().key().contains(Todo.Action.MEASURE_ALIGNMENT.name()))
                .hasSizeGreaterThan(1)
                .filteredOn(DraftLine::chosen)
                .hasSize(1);
    }

    /** Pads were fitted at one side alone: the other side is offered at the price of the list, once, whatever the other axle needs. */
    @Test
    void theOtherSideIsOfferedWithItsPrice() {
        var car = ServedShop.car("demo-08");
        var last = car.visits().getLast();
        var fitted = last.withReadings(Stream.concat(
                        last.readings().stream(),
                        Stream.of(new Reading(
                                "pads", Measure.PADS_REPLACED, Corner.LF, null, null, 1, "done", null, null)))
                .toList());
        var visits = Stream.concat(car.visits().stream().limit(car.visits().size() - 1L), Stream.of(fitted))
                .toList();
        var assessed = new Assessor(LimitsFile.load())
                .assess(new CarHistory(car.vehicle(), car.customer(), car.sets(), visits), fitted.id());
        assertThat(Draft.of(assessed, withPads(), null, Reader.DEFAULT))
                .extracting(DraftLine::line)
                .filteredOn(line -> line.key().startsWith(Subject.Part.BRAKE_PAIR.name()))
                .singleElement()
                .satisfies(line -> assertThat(line.amount()).isEqualTo(Money.parse("CAD 89.00")))
                .satisfies(line -> assertThat(line.works())
                        .containsExactly(ChargedWork.find("PADS.FRONT").orElseThrow()));
    }

    /** What is bought and what is charged for it are two sentences: the size on one side, the price of each on the other. */
    @Test
    void tyresAreTakenByTheirSizeAndChargedByTheirNumber() {
        var assessor = new Assessor(LimitsFile.load());
        assertThat(ServedShop.cars())
                .flatExtracting(car -> Draft.of(
                        assessor.assess(car, car.visits().getLast().id()), withTyres(car), null, Reader.DEFAULT))
                .extracting(DraftLine::line)
                .filteredOn(line -> line.key().endsWith("/4"))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.said().whole()).startsWith("Four tyres "))
                .allSatisfy(line -> assertThat(line.detail()).contains("4 × $200.00, mounted and balanced"));
    }

    private static PriceList withTyres(CarHistory car) {
        return new PriceList(
                ServedShop.TODAY,
                QUEBEC,
                car.sets().stream()
                        .flatMap(set -> set.wheels().stream()
                                .map(wheel ->
                                        PriceKey.tyre(set.season(), wheel.tyre().size(), "")))
                        .distinct()
                        .map(key -> priced(key, "CAD 200.00"))
                        .toList());
    }

    private static PriceRow priced(PriceKey key, String amount) {
        return new PriceRow(key, PriceValue.of(Money.parse(amount)), ServedShop.TODAY, "", ServedShop.CLOCK.instant());
    }

    private static PriceList withPads() {
        return new PriceList(ServedShop.TODAY, QUEBEC, List.of(priced(PriceKey.of(Job.PADS), "CAD 89.00")));
    }
}
