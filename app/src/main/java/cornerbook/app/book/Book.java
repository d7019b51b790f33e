package cornerbook.app.book;

import cornerbook.app.book.backup.BookBackup;
import cornerbook.app.book.backup.BookCheck;
import cornerbook.app.book.backup.BookCounts;
import cornerbook.app.book.backup.Restored;
import cornerbook.app.book.bay.BayLedger;
import cornerbook.app.book.car.CarChange;
import cornerbook.app.book.car.CarLists;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.UsedTools;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.car.VisitSummary;
import cornerbook.app.book.car.WheelChange;
import cornerbook.app.book.car.WheelChanges;
import cornerbook.app.book.knowledge.KnowledgeTables;
import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.record.RecordRows;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.shop.ClimateLedger;
import cornerbook.app.book.shop.ShopRules;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.BookServer;
import cornerbook.app.book.store.BookStore;
import cornerbook.app.book.store.ServingLock;
import cornerbook.app.book.tool.ToolLedger;
import cornerbook.app.book.tool.ToolTable;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.RetorqueLedger;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.visit.VisitChanges;
import cornerbook.app.book.visit.VisitLedger;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The book: every car with its wheels, visits and readings, kept in one folder. Each change is one transaction that is on
 * the disk when the method returns. Safe for use by many threads; writers take turns.
 */
public final class Book implements AutoCloseable {
    private final BookStore store;
    private final @Nullable ServingLock lock;

    public Book(BookStore store) {
        this(store, null);
    }

    private Book(BookStore store, @Nullable ServingLock lock) {
        this.store = store;
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

    /** How much is in the book. */
    public BookCounts count() {
        return store.read(BookCounts::of);
    }

    /** What was learned last; nothing when it never was. */
    public Knowledge knowledge() {
        return store.read(handle -> new KnowledgeTables(handle).read());
    }

    /** Learns from all cars and keeps it, in place of what was learned before. */
    public Knowledge learn(LocalDate today) {
        var knowledge = Learner.learn(listHistories(), today);
        store.write(handle -> {
            new KnowledgeTables(handle).replace(knowledge);
            return knowledge;
        });
        return knowledge;
    }

    /** What is wrong with the book, one sentence each; empty when it is sound. */
    public List<Said> check() {
        return BookCheck.problems(store);
    }

    /** A new car with its visits. */
    public void add(CarHistory history) {
        addAll(List.of(history));
    }

    /** New cars of which there is nothing but their histories; as {@link #addRecords}. */
    public List<Customer> addAll(List<CarHistory> histories) {
        return addRecords(histories.stream().map(CarRecord::new).toList());
    }

    /**
     * New cars with all that another book had of them, all or none. Gives the customers that the book knew with other
     * details, as they stand in it now; a detail that a car does not bring is kept.
     *
     * @throws BookException when one of them cannot stand, or an id is in the book already
     */
    public List<Customer> addRecords(List<CarRecord> records) {
        return store.write(handle -> {
            var changed = new LinkedHashMap<String, Customer>();
            for (var record : records) {
                new VisitLedger(handle)
                        .addCar(record.history())
                        .ifPresent(customer -> changed.put(customer.id(), customer));
                new RecordRows(handle).add(record);
            }
            return List.copyOf(changed.values());
        });
    }

    /** A car with all that the book has of it, photos too. */
    public Optional<CarRecord> findRecord(String vehicleId) {
        return store.read(handle -> new RecordRows(handle).find(vehicleId));
    }

    /** What was entered at a visit beside its readings, with the content of its photos. */
    public VisitNotes notes(String visitId) {
        return store.read(handle -> new RecordRows(handle).notes(visitId));
    }

    /** How often a car's history or data has changed; empty when there is no such car. */
    public Optional<Long> findRevision(String vehicleId) {
        return store.read(handle -> CarChange.findRevision(handle, vehicleId));
    }

    /**
     * What the car, its owner and its wheels are now, and wheel sets that are new; visits stay, and of a wheel that is put
     * right the book keeps what stood there.
     *
     * @param day on which it is changed
     * @param seenRevision the revision that the change was made from
     * @throws BookException when somebody else has changed the car since
     */
    public void change(CarHistory changed, long seenRevision, LocalDate day) {
        store.write(handle -> {
            new CarChange(handle).apply(changed, seenRevision, day);
            return changed;
        });
    }

    /** What was put right of a car's wheels, earliest first. */
    public List<WheelChange> listWheelChanges(String vehicleId) {
        return store.read(handle -> new WheelChanges(handle, vehicleId).list());
    }

    /**
     * Puts right on which day a visit was, or what its odometer read; the book keeps what stood there, with the reason.
     *
     * @param seen the visit as the person saw it
     * @param day on which it is put right
     * @throws BookException when somebody else has put it right since, or the visits could not stand so
     */
    public void putRight(Visit seen, LocalDate date, double odometerKm, String reason, LocalDate day) {
        store.write(handle -> new VisitLedger(handle).putRight(seen, date, odometerKm, reason, day));
    }

    /** What was put right of a car's visits, earliest first. */
    public List<VisitChange> listVisitChanges(String vehicleId) {
        return store.read(handle -> new VisitChanges(handle, vehicleId).list());
    }

    /** All cars by name. */
    public List<VehicleSummary> listVehicles() {
        return store.read(handle -> new CarLists(handle).vehicles());
    }

    /** The visits of a day. */
    public List<VisitSummary> listVisits(LocalDate date) {
        return store.read(handle -> new CarLists(handle).visits(date));
    }

    /** Brake pairs, one to an axle, that were worked on at the visits of these days, both counted. */
    public int countBrakePairs(LocalDate from, LocalDate until) {
        return store.read(handle -> new CarLists(handle).countBrakePairs(from, until));
    }

    /** Every car with all its visits, read at one go, by name. */
    public List<CarHistory> listHistories() {
        return store.read(handle -> new CarLists(handle).histories());
    }

    public Optional<CarHistory> findHistory(String vehicleId) {
        return store.read(handle -> new CarReader(handle).find(vehicleId));
    }

    public Optional<CarHistory> findHistoryOfVisit(String visitId) {
        return store.read(handle -> new VisitLedger(handle).findHistory(visitId));
    }

    /** One visit without the rest of its car's history. */
    public Optional<Visit> findVisit(String visitId) {
        return store.read(handle -> new CarReader(handle).findVisit(visitId));
    }

    /** The car that a wheel belongs to. */
    public Optional<CarHistory> findHistoryOfWheel(String tag) {
        return store.read(handle -> new CarLists(handle).findHistoryOfWheel(tag));
    }

    /** A new visit of a car that is in the book. */
    public void addVisit(String vehicleId, Visit visit) {
        store.write(handle -> new VisitLedger(handle).add(vehicleId, visit));
    }

    /** Appends readings to a visit. A reading that is there already, with the same content, counts once. */
    public void addReadings(String visitId, List<Reading> readings) {
        store.write(handle ->
                new ReadingLedger(handle).add(new VisitLedger(handle).getHistory(visitId), visitId, readings));
    }

    /** The photos of visits. */
    public PhotoLedger photos() {
        return new PhotoLedger(store);
    }

    /** Who works on tablets, and which tablets are paired. */
    public DeviceLedger devices() {
        return new DeviceLedger(store);
    }

    /** What the shop asks for beyond what everybody does. */
    public ShopRules rules() {
        return new ShopRules(store);
    }

    /** The torque wrenches, pressure gauges and hoists of the shop. */
    public ToolLedger tools() {
        return new ToolLedger(store);
    }

    /** The climate of the shop's place. */
    public ClimateLedger climate() {
        return new ClimateLedger(store);
    }

    /** What tablets in the bay enter beside readings, and what two of them read at one place. */
    public BayLedger bay() {
        return new BayLedger(store);
    }

    /** Which wheels the car leaves on. */
    public void recordLeaving(String visitId, Map<Corner, String> leftOn) {
        recordLeaving(visitId, leftOn, List.of());
    }

    /**
     * Which wheels the car leaves on, and what was read off those that came out of the store. Opens the re-torque.
     *
     * @throws BookException when a stored wheel differs from its take-off, or a wheel is at two corners
     */
    public void recordLeaving(String visitId, Map<Corner, String> leftOn, List<Identity> identities) {
        store.write(handle -> new VisitLedger(handle).recordLeaving(visitId, leftOn, identities));
    }

    /** Re-torques that are due or will be, soonest first. */
    public List<OpenRetorque> listOpenRetorques() {
        return store.read(handle -> new RetorqueLedger(handle).listOpen());
    }

    /**
     * The tool of a kind that a visit is worked with, as the shop keeps it now.
     *
     * @param id born where it was chosen: the same one again changes nothing
     * @param toolId mark of the tool; empty to take the choice back
     * @throws BookException when the shop keeps no such tool
     */
    public Arrival chooseTool(String id, String visitId, ShopTool.Kind kind, String toolId) {
        return store.write(handle -> {
            new VisitLedger(handle).getHistory(visitId);
            return new UsedTools(handle).choose(id, visitId, kind, toolId);
        });
    }

    /** The tools of a kind, the one that was used last before all others. */
    public List<ShopTool> offerTools(ShopTool.Kind kind) {
        return store.read(handle -> {
            var last = new UsedTools(handle).findLast(kind).orElse("");
            return new ToolTable(handle)
                    .list().stream()
                            .filter(tool -> tool.kind() == kind)
                            .sorted(Comparator.comparing(tool -> !tool.id().equals(last)))
                            .toList();
        });
    }

    /** The wheels were tightened again. */
    public void recordRetorque(String visitId, LocalDate date, double odometerKm, double torqueNm) {
        store.write(handle -> {
            new RetorqueLedger(handle).record(visitId, date, odometerKm, torqueNm);
            return null;
        });
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
