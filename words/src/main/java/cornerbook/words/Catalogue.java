package cornerbook.words;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The messages of one room. Each stands once for each language, one under the other: {@code MayEnd.en = …} and
 * {@code MayEnd.fr = …}, so that what is missing is seen where it is missing.
 */
public final class Catalogue {
    private static final Map<String, Catalogue> READ = new ConcurrentHashMap<>();
    private static final String ROOT = "cornerbook.";
    /** What judges a room's subject speaks with the room's words. */
    private static final String JUDGE = ".judge";

    private final String room;
    private final Properties texts;
    private final Map<String, Message> parsed = new ConcurrentHashMap<>();

    private Catalogue(String room, Properties texts) {
        this.room = room;
        this.texts = texts;
    }

    /**
     * Of a room by its path, as "core/tread" or "app/desk/car".
     *
     * @throws IllegalArgumentException when it has none
     */
    public static Catalogue of(String room) {
        return READ.computeIfAbsent(room, Catalogue::read);
    }

    /** The path of the room in which a sentence is declared. */
    static String roomOf(Class<?> declared) {
        var name = declared.getPackageName();
        var inHouse = name.startsWith(ROOT) ? name.substring(ROOT.length()) : name;
        return (inHouse.endsWith(JUDGE) ? inHouse.substring(0, inHouse.length() - JUDGE.length()) : inHouse)
                .replace('.', '/');
    }

    private static Catalogue read(String room) {
        try (var stream = Catalogue.class.getResourceAsStream(room + ".properties")) {
            if (stream == null) {
                throw new IllegalArgumentException("no catalogue for the room " + room);
            }
            var texts = new Properties();
            texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return new Catalogue(room, texts);
        } catch (IOException e) {
            throw new UncheckedIOException("the catalogue of " + room + " cannot be read", e);
        }
    }

    /** The keys that it has in any language. */
    Set<String> keys() {
        var keys = new TreeSet<String>();
        for (var key : texts.stringPropertyNames()) {
            keys.add(key.substring(0, Math.max(0, key.lastIndexOf('.'))));
        }
        return keys;
    }

    /** Every message of one language by its key, as it is written. */
    public Map<String, String> texts(Language language) {
        var written = new TreeMap<String, String>();
        keys().forEach(key -> findText(key, language).ifPresent(text -> written.put(key, text)));
        return written;
    }

    /** The text of a message as it is written; empty when that language lacks it. */
    Optional<String> findText(String key, Language language) {
        return Optional.ofNullable(texts.getProperty(key + "." + language.tag()));
    }

    /**
     * A message.
     *
     * @throws IllegalArgumentException when that language lacks it, or it is no message
     */
    Message get(String key, Language language) {
        return parsed.computeIfAbsent(key + "." + language.tag(), name -> {
            var text = texts.getProperty(name);
            if (text == null) {
                throw new IllegalArgumentException("the catalogue of %s lacks %s".formatted(room, name));
            }
            try {
                return new Message(text, language.locale());
            } catch (RuntimeException e) {
                throw new IllegalArgumentException("%s of %s is no message: %s".formatted(name, room, text), e);
            }
        });
    }
}
