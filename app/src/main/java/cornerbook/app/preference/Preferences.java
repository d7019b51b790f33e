package cornerbook.app.preference;

import cornerbook.core.corner.Corner;
import cornerbook.words.Language;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How one person wants the pages.
 *
 * @param walk every corner once, in the order in which this person takes them
 */
public record Preferences(UnitSystem units, Look look, List<Corner> walk, Language language) {
    /** Of a person who never chose. */
    public static final Preferences DEFAULT =
            new Preferences(UnitSystem.METRIC, Look.DEVICE, List.of(Corner.values()), Language.ENGLISH);

    private static final String BETWEEN = "-";

    public Preferences {
        walk = List.copyOf(walk);
        if (walk.size() != Corner.values().length || EnumSet.copyOf(walk).size() != walk.size()) {
            throw new IllegalArgumentException("the walk is %s, expected every corner once".formatted(walk));
        }
    }

    /** A walk by its name in addresses, as "LF-RF-RR-LR"; empty for anything else. */
    public static Optional<List<Corner>> findWalk(String words) {
        try {
            var walk =
                    Arrays.stream(words.split(BETWEEN, -1)).map(Corner::valueOf).toList();
            return Optional.of(DEFAULT.withWalk(walk).walk());
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The walk as its name in addresses. */
    public String walkWords() {
        return walk.stream().map(Corner::name).collect(Collectors.joining(BETWEEN));
    }

    public Preferences withUnits(UnitSystem other) {
        return new Preferences(other, look, walk, language);
    }

    public Preferences withLook(Look other) {
        return new Preferences(units, other, walk, language);
    }

    public Preferences withWalk(List<Corner> other) {
        return new Preferences(units, look, other, language);
    }

    public Preferences withLanguage(Language other) {
        return new Preferences(units, look, walk, other);
    }
}
