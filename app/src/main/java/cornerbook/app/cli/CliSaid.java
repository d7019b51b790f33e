package cornerbook.app.cli;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the verbs print, and why they refuse. */
interface CliSaid extends Said {
    /** Sentences without facts. */
    enum Plainly implements CliSaid {
        SEE_HELP,
        NAME_ONE_OR_ALL,
        NAMES_OF_TABLES,
        TABLES_INTO_THEIR_FOLDER,
        NAME_FOLDER_FOR_ALL,
        NO_CLIMATE,
        UNSEALED,
        NOTHING_LEARNED
    }

    record UnfitArgument(Said unfit) implements CliSaid {}

    record FaultNoted(String faultId, String file) implements CliSaid {}

    /** What is said of an option. */
    record OfOption(String option, Said said) implements CliSaid {}

    /** What is said of a file, or of a place in it. */
    record OfFile(String file, @Nullable String place, Said said) implements CliSaid {}

    /**
     * An odometer that its car can hardly have.
     *
     * @param expected what is expected, one sentence
     * @param likely what was likely meant; null where nothing is likely
     */
    record OdometerAsked(
            Amount odometer, Said expected, @Nullable Listed likely) implements CliSaid {}

    record LikelyOdometer(Amount odometer, Said slip) implements CliSaid {}

    record NoFile(String file) implements CliSaid {}

    record NoVisit(String file) implements CliSaid {}

    record NoSuchVisit(String file, String visit, Listed visits) implements CliSaid {}

    record VisitNotJudged(String visit, String file, String faultId) implements CliSaid {}

    record FolderIsThere(String folder) implements CliSaid {}

    record IsFolder(String file) implements CliSaid {}

    record IsThere(String file) implements CliSaid {}

    record NoFolder(String folder) implements CliSaid {}

    record CannotBeWritten(String file) implements CliSaid {}

    record Wrote(String file) implements CliSaid {}

    record OnServer(String place) implements CliSaid {}

    record NoBook(String place) implements CliSaid {}

    record NotOfThisMachine(String address) implements CliSaid {}

    record OriginUnread(String origin) implements CliSaid {}

    record BehindProxy(Said said) implements CliSaid {}

    record ForTablets(Said said) implements CliSaid {}

    record NoSuchPort(String port, String highest) implements CliSaid {}

    record PortTaken(String port) implements CliSaid {}

    record PagesAt(String address) implements CliSaid {}

    record ProxyPasses(String origin, String port) implements CliSaid {}

    record TabletsOpen(String address) implements CliSaid {}

    record AllInvented(String shop) implements CliSaid {}

    record NotInvented(String place, String car) implements CliSaid {}

    record CarsOutOfRange(int cars, int least, int most) implements CliSaid {}

    record CarsSoFar(int present, int cars) implements CliSaid {}

    record BookIn(String folder) implements CliSaid {}

    record Sound(String place) implements CliSaid {}

    record Moved(String place, String from, long cars, long visits, long readings, long photos, long rows)
            implements CliSaid {}

    record Restored(String place, long cars, long visits, long readings, long photos) implements CliSaid {}

    record KeptClimate(String place) implements CliSaid {}

    record NoKind(String kind) implements CliSaid {}

    record KindKept(String kind) implements CliSaid {}

    /**
     * A data sheet of the book.
     *
     * @param vin its positions 1 to 8 and 10; null where a car is told by its name only
     */
    record KindListed(String kind, @Nullable String vin) implements CliSaid {}

    record NoCar(String car) implements CliSaid {}

    record CarsOverwrite(String file) implements CliSaid {}

    record CarNotWritten(String car, String faultId) implements CliSaid {}

    record Imported(String name, String plate) implements CliSaid {}

    /** A customer whose details an import has changed; null where a detail is not known. */
    record UpdatedCustomer(
            String customer,
            String name,
            @Nullable String phone,
            @Nullable String email) implements CliSaid {}

    /** The car and the visit that an assessment is of. */
    record VisitOf(String name, String plate, LocalDate day, Amount odometer) implements CliSaid {}

    record RunsOut(Said title, LocalDate on) implements CliSaid {}

    /** What is not used up, and is so until a day. */
    record Until(Said title, LocalDate day) implements CliSaid {}

    record EvidenceLine(Said what, Said value, Said how) implements CliSaid {}

    record SourceLine(Said source) implements CliSaid {}

    record StepLine(Said what, Said shown, Said formula, Said source) implements CliSaid {}

    record WheelTo(Corner corner) implements CliSaid {}

    record RetorqueDue(Said torque, Amount odometer, LocalDate about) implements CliSaid {}

    /**
     * What was learned of the wear of tyres.
     *
     * @param model null for all tyre models
     */
    record Wear(
            SeasonKind season,
            DriveLayout drive,
            @Nullable String model,
            PlusMinus front,
            PlusMinus rear,
            int readings,
            int cars)
            implements CliSaid {}

    record Widened(Amount times) implements CliSaid {}

    record NotLearned(Said what) implements CliSaid {}

    record Distance(SeasonKind season, PlusMinus perDay, int cars) implements CliSaid {}

    record PadsSeize(int padTimes, int cars, Amount chance, Between range, Amount distance) implements CliSaid {}

    record CleaningEvery(int months, int pads, Amount risk) implements CliSaid {}

    record Coefficient(Said name, PlusMinus value) implements CliSaid {}

    record Shape(PlusMinus value) implements CliSaid {}
}
