package cornerbook.app.fuzz;

import cornerbook.app.bay.BayEntriesFuzz;
import cornerbook.app.bench.CalculatorFuzz;
import cornerbook.app.book.backup.RestoreFuzz;
import cornerbook.app.exchange.AssessedVisitFileFuzz;
import cornerbook.app.exchange.ClimateFileFuzz;
import cornerbook.app.exchange.EditedVisitFileFuzz;
import cornerbook.app.exchange.VisitFileFuzz;
import cornerbook.app.exchange.card.CardFileFuzz;
import cornerbook.app.limits.LimitsFileFuzz;
import cornerbook.app.photo.PhotoFuzz;
import cornerbook.app.unit.IdentifierFuzz;
import cornerbook.app.unit.QuantityFuzz;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The targets by their name, which is that of their folder in the corpus too. */
final class FuzzTargets {
    private static final Path CORPUS = Path.of("src", "test", "resources", "fuzz");

    private static final Map<String, Supplier<FuzzTarget>> ALL = Map.ofEntries(
            Map.entry("assessed-visit-file", AssessedVisitFileFuzz::new),
            Map.entry("bay-entries", BayEntriesFuzz::new),
            Map.entry("calculators", CalculatorFuzz::new),
            Map.entry("card-file", CardFileFuzz::new),
            Map.entry("climate-file", ClimateFileFuzz::new),
            Map.entry("edited-visit-file", EditedVisitFileFuzz::new),
            Map.entry("identifiers", IdentifierFuzz::new),
            Map.entry("limits-file", LimitsFileFuzz::new),
            Map.entry("photos", PhotoFuzz::new),
            Map.entry("quantities", QuantityFuzz::new),
            Map.entry("restore", RestoreFuzz::new),
            Map.entry("visit-file", VisitFileFuzz::new));

    private FuzzTargets() {}

    static List<String> names() {
        return ALL.keySet().stream().sorted().toList();
    }

    static FuzzTarget open(String name) {
        return Objects.requireNonNull(ALL.get(name), name).get();
    }

    /** Where the kept inputs of a target are. */
    static Path corpus(String name) {
        return CORPUS.resolve(name);
    }

    static List<Path> inputs(String name) {
        try (Stream<Path> files = Files.list(corpus(name))) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
