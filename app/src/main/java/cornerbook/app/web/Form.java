package cornerbook.app.web;

import io.helidon.webserver.http.ServerRequest;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a person typed into a form, by field name; a field that was not sent is empty. */
record Form(Map<String, String> fields) {
    /** Enough for every field of a visit, several times over. */
    static final int LARGEST_BYTES = 128 * 1024;

    static final Form EMPTY = new Form(Map.of());

    Form {
        fields = Map.copyOf(fields);
    }

    /** Reads the body as application/x-www-form-urlencoded (WHATWG URL Standard, section 5.1). */
    static Form read(ServerRequest request) {
        var body = bodyOf(request);
        var fields = new LinkedHashMap<String, String>();
        for (var pair : body.split("&", -1)) {
            int equals = pair.indexOf('=');
            if (equals > 0) {
                fields.put(
                        decode(pair.substring(0, equals)),
                        decode(pair.substring(equals + 1)).strip());
            }
        }
        return new Form(fields);
    }

    /** What the address of a page carries behind its question mark. */
    static Form ofQuery(ServerRequest request) {
        var fields = new LinkedHashMap<String, String>();
        for (var name : request.query().names()) {
            fields.put(name, Pages.queryValue(request, name));
        }
        return new Form(fields);
    }

    String get(String name) {
        return fields.getOrDefault(name, "");
    }

    boolean has(String name) {
        return fields.containsKey(name);
    }

    private static String bodyOf(ServerRequest request) {
        return RequestBody.read(request, LARGEST_BYTES)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElseThrow(() ->
                        new PageException(413, "The form is larger than this program accepts, nothing was stored."));
    }

    private static String decode(String text) {
        try {
            return URLDecoder.decode(text, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            throw new PageException(400, "The form was not understood, nothing was stored.");
        }
    }
}
