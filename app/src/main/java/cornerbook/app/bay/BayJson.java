package cornerbook.app.bay;

import com.fasterxml.jackson.annotation.JsonInclude;
import cornerbook.app.request.RequestBody;
import io.helidon.webserver.http.ServerRequest;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON that tablets and the server exchange (RFC 8259); what is absent is left out. */
final class BayJson {
    /** Some hundred entries, several times over. */
    private static final int LARGEST_BYTES = 256 * 1024;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
            .build();

    private BayJson() {}

    static JsonNode object(Map<String, String> parts) {
        return MAPPER.valueToTree(parts);
    }

    static String write(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /**
     * The body of a request.
     *
     * @throws RefusedEntry when it is too long or no JSON
     */
    static JsonNode read(ServerRequest request) {
        var bytes = RequestBody.read(request, LARGEST_BYTES)
                .orElseThrow(() -> new RefusedEntry("", BaySaid.Unreadable.TOO_LARGE));
        if (bytes.length == 0) {
            throw new RefusedEntry("", BaySaid.Unreadable.EMPTY);
        }
        try {
            return MAPPER.readTree(bytes);
        } catch (JacksonException e) {
            throw new RefusedEntry("", BaySaid.Unreadable.NO_JSON);
        }
    }
}
