package cornerbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Everything that is said has its words in every language, with the same facts in each, and nothing stands there that nobody says. */
class CatalogueTest {
    private static final Path HOUSE = Path.of("..");
    private static final Path WORDS = HOUSE.resolve("words/src/main/resources/cornerbook/words");
    private static final Pattern ROOM = Pattern.compile("labels\\(\\s*\"([^\"]+)\"");
    private static final Pattern LABEL = Pattern.compile("\\.of\\(\\s*\"([a-z0-9-]+(?:\\.[a-z0-9-]+)*)\"");
    private static final Pattern QUOTES_AN_ARGUMENT = Pattern.compile("'[{}]");
    private static final Set<Class<?>> FACTS = Set.of(
            String.class,
            LocalDate.class,
            MonthDay.class,
            Instant.class,
            int.class,
            long.class,
            boolean.class,
            Integer.class,
            Long.class,
            Boolean.class);

    private static List<Class<?>> said;

    @BeforeAll
    static void findWhatIsSaid() {
        said = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("cornerbook").stream()
                        .filter(each -> each.isAssignableTo(Said.class) && !each.isInterface())
                        .filter(each -> !each.getPackageName().equals("cornerbook.core.say"))
                        .map(JavaClass::reflect)
                        .filter(each -> each.isRecord() || each.isEnum())
                        .collect(Collectors.toList());
        assertThat(said).isNotEmpty();
    }

    /** The keys of what is said, by room. */
    private static Map<String, Set<String>> keysSaid() {
        var keys = new TreeMap<String, Set<String>>();
        for (var type : said) {
            var room = keys.computeIfAbsent(Catalogue.roomOf(type), unused -> new TreeSet<>());
            keysOf(type)
                    .forEach(key -> assertThat(room.add(key))
                            .as(type + " shares its key " + key)
                            .isTrue());
        }
        return keys;
    }

    private static List<String> keysOf(Class<?> type) {
        return type.isEnum()
                ? Arrays.stream(type.getEnumConstants())
                        .map(each -> type.getSimpleName() + "." + ((Enum<?>) each).name())
                        .toList()
                : List.of(type.getSimpleName());
    }

    @Test
    void everySentenceHasItsWordsInEveryLanguageWithItsFacts() {
        var faults = new ArrayList<String>();
        for (var type : said) {
            for (var key : keysOf(type)) {
                for (var language : Language.values()) {
                    try {
                        check(
                                type,
                                Catalogue.of(Catalogue.roomOf(type)).get(key, language),
                                key + "." + language.tag(),
                                faults);
                    } catch (IllegalArgumentException e) {
                        faults.add(type.getName() + ": " + e.getMessage());
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static void check(Class<?> type, Message message, String key, List<String> faults) {
        var components = type.isRecord()
                ? Arrays.stream(type.getRecordComponents())
                        .collect(Collectors.toMap(RecordComponent::getName, Function.identity()))
                : Map.<String, RecordComponent>of();
        for (var argument : message.arguments()) {
            if (!components.containsKey(argument)) {
                faults.add("%s wants {%s}, which %s has not".formatted(key, argument, type.getSimpleName()));
                continue;
            }
            var fact = components.get(argument).getType();
            var choices = new TreeSet<>(message.choices(argument));
            choices.removeAll(Set.of("none", "true", "false"));
            if (fact.isEnum()) {
                choices.removeAll(Arrays.stream(fact.getEnumConstants())
                        .map(each -> ((Enum<?>) each).name())
                        .toList());
            }
            if (!choices.isEmpty() && (fact.isEnum() || fact == boolean.class)) {
                faults.add("%s chooses by %s, which {%s} never is".formatted(key, choices, argument));
            }
        }
    }

    @Test
    void factsAreNoWordsAndNoBareNumbers() {
        assertThat(said.stream()
                        .filter(Class::isRecord)
                        .flatMap(type -> Arrays.stream(type.getRecordComponents()))
                        .filter(component -> !FACTS.contains(component.getType())
                                && !component.getType().isEnum()
                                && !Said.class.isAssignableFrom(component.getType())
                                && component.getType() != List.class)
                        .map(component -> component.getDeclaringRecord().getName() + "." + component.getName()))
                .isEmpty();
    }

    @Test
    void everyMessageStandsInEveryLanguageWithTheSameFacts() {
        var faults = new ArrayList<String>();
        for (var room : rooms()) {
            var catalogue = Catalogue.of(room);
            for (var key : catalogue.keys()) {
                var arguments = new ArrayList<Set<String>>();
                for (var language : Language.values()) {
                    try {
                        arguments.add(catalogue.get(key, language).arguments());
                    } catch (IllegalArgumentException e) {
                        faults.add(String.valueOf(e.getMessage()));
                    }
                    catalogue
                            .findText(key, language)
                            .filter(text -> QUOTES_AN_ARGUMENT.matcher(text).find() || !text.equals(text.strip()))
                            .ifPresent(text -> faults.add("%s, %s: \"%s\"".formatted(room, key, text)));
                }
                if (arguments.stream().distinct().count() > 1) {
                    faults.add("%s, %s has the facts %s".formatted(room, key, arguments));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Labels are asked for by their key: each that is asked for is there, and each that is there is asked for. */
    /** Of two the later one would stand, whichever that is. */
    @Test
    void noMessageStandsTwice() throws IOException {
        var twice = new ArrayList<String>();
        for (var room : rooms()) {
            var seen = new HashSet<String>();
            Files.readAllLines(WORDS.resolve(room + ".properties")).stream()
                    .filter(line -> line.indexOf('=') > 0 && !line.startsWith("#"))
                    .map(line -> line.substring(0, line.indexOf('=')).strip())
                    .filter(key -> !seen.add(key))
                    .forEach(key -> twice.add(room + ": " + key));
        }
        assertThat(twice).isEmpty();
    }

    @Test
    void everyLabelIsThereAndUsed() {
        var faults = new ArrayList<String>();
        var sources = sources();
        for (var source : sources.entrySet()) {
            var rooms = ROOM.matcher(source.getValue())
                    .results()
                    .map(match -> match.group(1))
                    .collect(Collectors.toSet());
            if (!rooms.isEmpty()) {
                LABEL.matcher(source.getValue())
                        .results()
                        .map(match -> match.group(1))
                        .forEach(key -> {
                            if (rooms.stream()
                                    .noneMatch(room -> Catalogue.of(room).keys().contains(key))) {
                                faults.add(
                                        "%s asks for %s, which none of %s has".formatted(source.getKey(), key, rooms));
                            }
                        });
            }
        }
        var all = String.join("\n", sources.values());
        var keysSaid = keysSaid();
        for (var room : rooms()) {
            for (var key : Catalogue.of(room).keys()) {
                if (!keysSaid.getOrDefault(room, Set.of()).contains(key) && !all.contains('"' + key + '"')) {
                    faults.add("nobody says %s of %s".formatted(key, room));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Papers and screens call one thing by one word. */
    @Test
    void frenchHasOneWordForTheCar() {
        var other = Pattern.compile("(?iU)\\b(voitures?|autos?)\\b");
        assertThat(rooms().stream()
                        .flatMap(room -> Catalogue.of(room).texts(Language.FRENCH).entrySet().stream())
                        .filter(text -> other.matcher(text.getValue()).find()))
                .as("véhicule")
                .isEmpty();
    }

    private static List<String> rooms() {
        try (var files = Files.walk(WORDS)) {
            return files.filter(file -> file.toString().endsWith(".properties"))
                    .map(file -> WORDS.relativize(file).toString().replace(".properties", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> sources() {
        return Stream.of(
                        "core/src/main/java",
                        "words/src/main/java",
                        "app/src/main/java",
                        "app/src/main/jte",
                        "app/src/main/resources")
                .flatMap(folder -> {
                    try (var files = Files.walk(HOUSE.resolve(folder))) {
                        return files.filter(file -> file.toString().matches(".*\\.(java|jte|mjs)")).toList().stream();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                })
                .collect(Collectors.toMap(Path::toString, file -> {
                    try {
                        return Files.readString(file);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }));
    }
}
