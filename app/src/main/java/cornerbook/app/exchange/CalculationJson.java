package cornerbook.app.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.words.Reader;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/**
 * The results of a calculator as JSON, for other programs: inputs, results, cautions and steps of each part. Names carry
 * their units; what is absent is left out; dates are year-month-day. What is said stands there twice, as in
 * {@link AssessmentJson}.
 */
public final class CalculationJson {
    private CalculationJson() {}

    /**
     * The text, indented, in the words of this reader; the same results give the same text.
     *
     * @param calculation the verb, as "torque"
     * @param parts by the name of the part, in the order to be written
     */
    public static String write(String calculation, Map<String, Explained> parts, Reader reader) {
        var file = new CalculationFile("cornerbook-calculation", 1, calculation, parts);
        return JsonMapper.builder()
                        .changeDefaultPropertyInclusion(
                                inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
                        .addModule(new SaidModule(reader))
                        .addMixIn(Explained.class, Flat.class)
                        .build()
                        .writerWithDefaultPrettyPrinter()
                        .writeValueAsString(file)
                + "\n";
    }

    /** Cautions and steps stand beside the results. */
    private interface Flat {
        @SuppressWarnings("UnusedMethod") // what the writer of JSON asks of it
        @JsonUnwrapped
        Explanation explanation();
    }

    private record CalculationFile(String format, int version, String calculation, Map<String, Explained> parts) {}
}
