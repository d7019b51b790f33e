package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.AgreedDay;
import cornerbook.app.demo.DemoPrices;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.law.TaxOfPlace;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.car.CarHistory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine;

/** Serves the book of the invented shop; makes it when it is empty. */
@CommandLine.Command(name = "demo", description = "verb-demo")
final class Demo implements Runnable {
    private static final int STILL_OPEN_DAYS = 6;
    /** A book that nobody has yet waited for to the end. */
    private static final int MOST_CARS = 1_000_000;
    /** In one transaction: so many that writing it to the disk takes a small part of the time. */
    private static final int CARS_AT_ONCE = 100;

    private final Terminal terminal;

    @CommandLine.Mixin
    private ServeOptions options = new ServeOptions(Path.of("data", "demo"));

    @CommandLine.Option(names = "--cars", paramLabel = "N", descriptionKey = "option-cars")
    private int cars = DemoShop.TOLD_CARS;

    Demo(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        if (cars < DemoShop.TOLD_CARS || cars > MOST_CARS) {
            throw new CommandFailure(
                    CommandFailure.INPUT_REFUSED, new CliSaid.CarsOutOfRange(cars, DemoShop.TOLD_CARS, MOST_CARS));
        }
        var today = LocalDate.now(ZoneId.systemDefault());
        // A new book is made meanwhile.
        var first = options.isThere()
                ? null
                : CompletableFuture.supplyAsync(() -> DemoShop.histories(today, 0, Math.min(cars, CARS_AT_ONCE))
                        .toList());
        try (var book = options.open()) {
            refuseReal(book);
            if (book.cars().count() == 0) {
                book.climate().put(DemoShop.climate());
                DemoShop.tools(today).forEach(book.tools()::put);
                DemoShop.people().forEach((person, hours) -> {
                    book.devices().putPerson(person, "");
                    book.hours().put(person, hours);
                });
                book.hours().close(DemoShop.closed(today), "invented");
                price(book, today.minusYears(1));
                if (first != null) {
                    add(book, first.join(), today);
                    DemoShop.agreed(today).forEach(agreed -> agree(book, agreed, today));
                }
            }
            addMissing(book, today);
            PageServer.serve(
                    book,
                    options.door(),
                    new Letterhead(DemoShop.NAME, DemoShop.ADDRESS, DemoShop.TELEPHONE, true),
                    terminal,
                    new CliSaid.AllInvented(DemoShop.NAME));
        }
    }

    /** The cars that are missing, some at a time: where it was stopped, the next start goes on. */
    private void addMissing(Book book, LocalDate today) {
        for (int present = book.cars().count();
                present < cars;
                present = book.cars().count()) {
            add(
                    book,
                    DemoShop.histories(today, present, Math.min(cars, present + CARS_AT_ONCE))
                            .toList(),
                    today);
            if (cars > CARS_AT_ONCE) {
                terminal.say(new CliSaid.CarsSoFar(book.cars().count(), cars));
            }
        }
    }

    /** A book with a car that was not invented must not be served as if it were. */
    private void refuseReal(Book book) {
        book.cars().findIdNotBeginning(DemoShop.CAR_ID_BEGINS).ifPresent(id -> {
            throw new CommandFailure(CommandFailure.BOOK, new CliSaid.NotInvented(options.place(), id));
        });
    }

    /** Cars, with the re-torques of all but the latest of them as recorded. */
    private static void add(Book book, List<CarHistory> invented, LocalDate today) {
        book.records().addCars(invented);
        book.retorques().listOpen().stream()
                .filter(retorque -> retorque.dueDate().isBefore(today.minusDays(STILL_OPEN_DAYS)))
                .forEach(retorque -> book.retorques()
                        .record(
                                retorque.visitId(),
                                retorque.dueDate(),
                                retorque.dueOdometerKm(),
                                Objects.requireNonNull(retorque.torqueNm()),
                                null));
    }

    private static void price(Book book, LocalDate begins) {
        var at = atNoonOf(begins).madeAt();
        book.prices()
                .keep(
                        "demo-place",
                        new TaxPlace(
                                DemoPrices.PLACE,
                                DemoPrices.CURRENCY,
                                begins,
                                TaxOfPlace.of(DemoPrices.PLACE, begins).stream()
                                        .map(each -> new TaxPlace.OfShop(
                                                each.code().name(),
                                                null,
                                                DemoPrices.REGISTRATIONS.get(
                                                        each.code().ordinal())))
                                        .toList()),
                        "",
                        at);
        var rows = new ArrayList<PriceRow>();
        rows.add(new PriceRow(PriceKey.HOUR, PriceValue.of(DemoPrices.HOUR), begins, "", at));
        DemoPrices.work()
                .forEach((job, takes) -> rows.add(new PriceRow(
                        PriceKey.of(job), new PriceValue(takes.minutes(), takes.parts(), null), begins, "", at)));
        DemoPrices.tyres()
                .forEach(tyre -> rows.add(new PriceRow(
                        PriceKey.tyre(tyre.season(), tyre.size(), tyre.offer()),
                        new PriceValue(null, tyre.price(), tyre.newTreadMm()),
                        begins,
                        "",
                        at)));
        book.prices().keep("demo-prices", rows);
    }

    /** Agreed a week before, or yesterday where that is earlier. */
    private static void agree(Book book, AgreedDay agreed, LocalDate today) {
        var id = UUID.randomUUID().toString();
        var plan = new Plan(
                agreed.day(),
                agreed.time(),
                agreed.work(),
                agreed.work().usualMinutes(),
                null,
                agreed.worker(),
                agreed.note());
        var weekBefore = agreed.day().minusWeeks(1);
        var madeOn = weekBefore.isBefore(today) ? weekBefore : today.minusDays(1);
        book.appointments().make(id, agreed.carId(), AppointmentState.BOOKED, plan, atNoonOf(madeOn), madeOn);
        if (agreed.missed()) {
            book.appointments().miss(UUID.randomUUID().toString(), id, 0, atNoonOf(agreed.day()), agreed.day());
        }
    }

    private static Because atNoonOf(LocalDate day) {
        return new Because(null, null, day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC));
    }
}
