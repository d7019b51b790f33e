package cornerbook.app.desk;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.app.request.RequestBody;
import cornerbook.app.text.PlainText;
import cornerbook.app.text.UnfitCharacter;
import io.helidon.webserver.http.ServerRequest;
import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a person typed into a form, by field name; a field that was not sent is empty. */
public record Form(Map<String, String> fields) {
    /** Enough for every field of a visit, several times over. */
    public static final int LARGEST_BYTES = 128 * 1024;

    public static final Form EMPTY = new Form(Map.of());

    public Form {
        fields = Map.copyOf(fields);
    }

    /** Reads the body as application/x-www-form-urlencoded (WHATWG URL Standard, section 5.1). */
    public static Form read(ServerRequest request) {
        return read(request, LARGEST_BYTES, PlainText::findUnfit);
    }

    /** The same where a field may have several lines. */
    public static Form readLines(ServerRequest request) {
        return readLines(request, LARGEST_BYTES);
    }

    /** The same as long as this. */
    public static Form readLines(ServerRequest request, int largestBytes) {
        return read(request, largestBytes, PlainText::findUnfitInLines);
    }

    private static Form read(
            ServerRequest request, int largestBytes, Function<String, Optional<UnfitCharacter>> findUnfit) {
        var body = bodyOf(request, largestBytes);
        var fields = new LinkedHashMap<String, String>();
        for (var pair : body.split("&", -1)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                var name = decode(pair.substring(0, equals));
                fields.put(
                        name,
                        plain(name, decode(pair.substring(equals + 1)), findUnfit)
                                .strip());
            }
        }
        return new Form(fields);
    }

    private static String plain(String name, String text, Function<String, Optional<UnfitCharacter>> findUnfit) {
        findUnfit.apply(text).ifPresent(unfit -> {
            throw new PageException(400, new DeskSaid.UnfitField(PlainText.shown(name), unfit));
        });
        return text;
    }

    /** What the address of a page carries behind its question mark. */
    public static Form ofQuery(ServerRequest request) {
        var fields = new LinkedHashMap<String, String>();
        for (var name : request.query().names()) {
            fields.put(name, Pages.queryValue(request, name));
        }
        return new Form(fields);
    }

    public String get(String name) {
        return fields.getOrDefault(name, "");
    }

    /** The identity that the form was given when it was shown. */
    public String identity(String name) {
        try {
            return UUID.fromString(get(name)).toString();
        } catch (IllegalArgumentException e) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
    }

    /** Who works on the tablet that sent it, else who was typed; null where nobody is named. */
    public @Nullable String person() {
        var name = Caller.current().tablet().map(TabletAtWork::person).orElse(get("person"));
        return name.isEmpty() ? null : name;
    }

    /** Which of these a field names by its constant; empty where it names none of them. */
    public <E extends Enum<E>> Optional<E> choice(String name, List<E> choices) {
        return choices.stream().filter(each -> each.name().equals(get(name))).findFirst();
    }

    public boolean has(String name) {
        return fields.containsKey(name);
    }

    /** Each byte as one character, so that what was encoded and what was not are decoded alike. */
    private static String bodyOf(ServerRequest request, int largestBytes) {
        return RequestBody.read(request, largestBytes)
                .map(bytes -> new String(bytes, StandardCharsets.ISO_8859_1))
                .orElseThrow(() -> new PageException(413, new DeskSaid.FormTooLarge()));
    }

    /** What is no UTF-8 is refused: in its place would stand a sign that nobody typed. */
    private static String decode(String text) {
        try {
            var bytes = URLDecoder.decode(text, StandardCharsets.ISO_8859_1).getBytes(StandardCharsets.ISO_8859_1);
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (IllegalArgumentException | CharacterCodingException e) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
    }
}
