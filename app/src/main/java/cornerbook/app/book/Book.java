package cornerbook.app.book;

import cornerbook.app.book.appointment.AppointmentLedger;
import cornerbook.app.book.appointment.ClockedTimes;
import cornerbook.app.book.appointment.DayWishLedger;
import cornerbook.app.book.backup.BookBackup;
import cornerbook.app.book.backup.BookCheck;
import cornerbook.app.book.backup.Restored;
import cornerbook.app.book.bay.BayLedger;
import cornerbook.app.book.bay.Misplaced;
import cornerbook.app.book.bill.BillLedger;
import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.car.CarSearch;
import cornerbook.app.book.car.UsedToolLedger;
import cornerbook.app.book.coming.ComingLedger;
import cornerbook.app.book.customer.CardLedger;
import cornerbook.app.book.customer.ContactLedger;
import cornerbook.app.book.customer.CustomerLedger;
import cornerbook.app.book.estimate.EstimateLedger;
import cornerbook.app.book.knowledge.KnowledgeLedger;
import cornerbook.app.book.knowledge.OthersLedger;
import cornerbook.app.book.mail.MailLedger;
import cornerbook.app.book.move.BookMove;
import cornerbook.app.book.move.Moved;
import cornerbook.app.book.order.OrderLedger;
import cornerbook.app.book.out.OutLedger;
import cornerbook.app.book.people.CalendarLedger;
import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.book.people.SkillLedger;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.price.PriceLedger;
import cornerbook.app.book.rack.BringingLedger;
import cornerbook.app.book.rack.CountLedger;
import cornerbook.app.book.rack.IntakeLedger;
import cornerbook.app.book.rack.RackLedger;
import cornerbook.app.book.rack.StockLedger;
import cornerbook.app.book.rack.TermLedger;
import cornerbook.app.book.record.RecordLedger;
import cornerbook.app.book.shop.ClimateLedger;
import cornerbook.app.book.shop.KindSheets;
import cornerbook.app.book.shop.ShopHours;
import cornerbook.app.book.shop.ShopRules;
import cornerbook.app.book.shop.StepOrders;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.BookServer;
import cornerbook.app.book.store.BookStore;
import cornerbook.app.book.store.Changes;
import cornerbook.app.book.store.ServingLock;
import cornerbook.app.book.store.ToldStore;
import cornerbook.app.book.tool.ToolLedger;
import cornerbook.app.book.verdict.VerdictLedger;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.RetorqueLedger;
import cornerbook.app.book.visit.VisitLedger;
import cornerbook.app.book.year.YearLedger;
import cornerbook.core.say.Said;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The book: every car with its wheels, visits and readings, kept in one folder. It opens, closes, is copied out and in, and
 * hands out its ledgers; each change in one of them is one transaction that is on the disk when the method returns. Safe for
 * use by many threads; writers take turns.
 */
public final class Book implements AutoCloseable {
    private final Changes changes = new Changes();
    private final BookStore store;
    private final @Nullable ServingLock lock;

    public Book(BookStore store) {
        this(store, null);
    }

    private Book(BookStore store, @Nullable ServingLock lock) {
        this.store = new ToldStore(store, changes);
        this.lock = lock;
    }

    /**
     * Opens the book in a folder; makes folder and book when they are not there, and brings an older book up to date.
     *
     * @throws BookException when it cannot be used
     */
    public static Book open(Path folder) {
        return new Book(BookFile.open(folder));
    }

    /**
     * The same for the one process that serves it; others may go on to use it, but not serve it, until it is closed.
     *
     * @throws BookException when it cannot be used, or another process serves it
     */
    public static Book openToServe(Path folder) {
        var file = BookFile.open(folder);
        try {
            return new Book(file, ServingLock.take(folder));
        } catch (BookException e) {
            file.close();
            throw e;
        }
    }

    /**
     * Makes a book in a folder that has none, of what is put into it; when that fails, there is none.
     *
     * @throws BookException when the folder cannot take it
     */
    public static <T> T make(Path folder, Function<Book, T> fill) {
        return BookFile.make(folder, store -> fill.apply(new Book(store)));
    }

    /**
     * Opens the book in a PostgreSQL database; fills the database when it is empty.
     *
     * @param url as {@code jdbc:postgresql://host/database?user=name}; the password is found by PGPASSWORD or .pgpass as well
     * @throws BookException when it cannot be used
     */
    public static Book onServer(String url) {
        return new Book(BookServer.open(url));
    }

    /** Whether a folder has a book, sound or not. */
    public static boolean isIn(Path folder) {
        return Files.exists(folder.resolve(BookFile.NAME));
    }

    /**
     * Puts a backup into a folder that has no book yet; returns when the book there is sound and has all that the backup has.
     *
     * @throws BookException when the backup is not as it was written, or the folder cannot take it
     */
    public static Restored restore(Path backupFile, Path folder) {
        return BookBackup.restore(backupFile, folder);
    }

    /** Writes a copy of the whole book to a file that is not there yet. */
    public void backup(Path targetFile) {
        BookBackup.write(store, targetFile);
    }

    /**
     * Takes the whole book to a place that has none; it stays here as well.
     *
     * @param place a folder, or the address of a PostgreSQL database
     */
    public Moved move(String place) {
        return BookMove.move(store, place);
    }

    /** What is wrong with the book, one sentence each; empty when it is sound. */
    public List<Said> check() {
        return BookCheck.problems(store);
    }

    /** Finds cars by what a person has of them, and lists them. */
    public CarSearch search() {
        return new CarSearch(store);
    }

    /** What each car is, with its owner, its wheels and its history. */
    public CarLedger cars() {
        return new CarLedger(store);
    }

    /** What the book keeps of people, and how that is erased. */
    public CustomerLedger customers() {
        return new CustomerLedger(store);
    }

    /** People from cards. */
    public CardLedger cards() {
        return new CardLedger(store);
    }

    /** What customers said to being called and written to. */
    public ContactLedger contacts() {
        return new ContactLedger(store);
    }

    /** All that the book has of a car, to go from one book to another; new cars come in by it. */
    public RecordLedger records() {
        return new RecordLedger(store);
    }

    /** All that was measured and done, car after car, for other programs. */
    public OutLedger out() {
        return new OutLedger(store);
    }

    /** When cars were here, on which wheels they came and left, and what was put right of that. */
    public VisitLedger visits() {
        return new VisitLedger(store);
    }

    /** Which cars are to come on which day. */
    public AppointmentLedger appointments() {
        return new AppointmentLedger(store);
    }

    /** Which days customers would like. */
    public DayWishLedger dayWishes() {
        return new DayWishLedger(store);
    }

    /** How long visits took. */
    public ClockedTimes clockedTimes() {
        return new ClockedTimes(store);
    }

    /** What was measured and seen at visits. */
    public ReadingLedger readings() {
        return new ReadingLedger(store);
    }

    /** Wheels that have to be tightened again. */
    public RetorqueLedger retorques() {
        return new RetorqueLedger(store);
    }

    /** The photos of visits. */
    public PhotoLedger photos() {
        return new PhotoLedger(store);
    }

    /** What tablets in the bay enter beside readings, and what two of them read at one place. */
    public BayLedger bay() {
        return new BayLedger(store);
    }

    /** What was learned from all cars. */
    public KnowledgeLedger knowledge() {
        return new KnowledgeLedger(store);
    }

    /** What was taken in of other shops' knowledge, and whose keys are trusted. */
    public OthersLedger others() {
        return new OthersLedger(store);
    }

    /** What lists show of each car, and which of it is old. */
    public VerdictLedger verdicts() {
        return new VerdictLedger(store);
    }

    /** What cars may need, what was ordered for them, and what became of it. */
    public OrderLedger orders() {
        return new OrderLedger(store);
    }

    /** What a year comes to. */
    public YearLedger year() {
        return new YearLedger(store);
    }

    /** Who is to be asked to come back, and what came of it. */
    public ComingLedger coming() {
        return new ComingLedger(store);
    }

    /** What was written to customers by e-mail, and by which server. */
    public MailLedger mails() {
        return new MailLedger(store);
    }

    /** The racks of the store and their places. */
    public RackLedger racks() {
        return new RackLedger(store);
    }

    /** Which set lies where in the store, and how it came there. */
    public StockLedger stock() {
        return new StockLedger(store);
    }

    /** Counts of what lies in the store. */
    public CountLedger counts() {
        return new CountLedger(store);
    }

    /** What things cost, and whose taxes the shop's papers bear. */
    public PriceLedger prices() {
        return new PriceLedger(store);
    }

    /** How sets were when they were taken into the store. */
    public IntakeLedger intakes() {
        return new IntakeLedger(store);
    }

    /** Which rooms of the store are elsewhere, and which sets are brought from there. */
    public BringingLedger bringing() {
        return new BringingLedger(store);
    }

    /** Until when the storage of sets is agreed. */
    public TermLedger terms() {
        return new TermLedger(store);
    }

    /** What work would cost, and what customers said to it. */
    public EstimateLedger estimates() {
        return new EstimateLedger(store);
    }

    /** What was charged, and what was paid. */
    public BillLedger bills() {
        return new BillLedger(store);
    }

    /** Tells when something was written. */
    public Changes changes() {
        return changes;
    }

    /** The torque wrenches, pressure gauges and hoists of the shop. */
    public ToolLedger tools() {
        return new ToolLedger(store);
    }

    /** Which tools visits are worked with. */
    public UsedToolLedger usedTools() {
        return new UsedToolLedger(store);
    }

    /** When people work, and when the shop is closed. */
    public ShopHours hours() {
        return new ShopHours(store);
    }

    /** What people have learned that some of the work needs. */
    public SkillLedger skills() {
        return new SkillLedger(store);
    }

    /** What the shop asks for beyond what everybody does. */
    public ShopRules rules() {
        return new ShopRules(store);
    }

    /** What was entered at the wrong corner or car. */
    public Misplaced misplaced() {
        return new Misplaced(store);
    }

    public KindSheets kindSheets() {
        return new KindSheets(store);
    }

    public StepOrders stepOrders() {
        return new StepOrders(store);
    }

    /** The climate of the shop's place. */
    public ClimateLedger climate() {
        return new ClimateLedger(store);
    }

    /** Whose appointments calendars may read. */
    public CalendarLedger calendars() {
        return new CalendarLedger(store);
    }

    /** Who works on tablets, and which tablets are paired. */
    public DeviceLedger devices() {
        return new DeviceLedger(store);
    }

    /** Returns when the work that is going on is done; later work is refused. */
    @Override
    public void close() {
        store.close();
        if (lock != null) {
            lock.close();
        }
    }
}
