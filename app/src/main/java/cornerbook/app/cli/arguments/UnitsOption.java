package cornerbook.app.cli.arguments;

import cornerbook.words.UnitSystem;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The option that names the units of what is printed. JSON stays in the book's. */
public final class UnitsOption {
    @CommandLine.Option(names = "--units", paramLabel = "metric|us", descriptionKey = "option-units")
    private @Nullable UnitSystem units;

    public Optional<UnitSystem> find() {
        return Optional.ofNullable(units);
    }

    public UnitSystem orMetric() {
        return find().orElse(UnitSystem.METRIC);
    }
}
