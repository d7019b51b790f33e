package cornerbook.fleet;

import cornerbook.app.exchange.ClimateFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.finding.Knowledge;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;

/**
 * What cars are judged by beside their own history, in the form in which it goes to all machines.
 *
 * @param knowledge as {@link #of} writes it
 * @param climate of the place, as a climate file; null where it is not known
 */
record JudgedBy(String knowledge, @Nullable String climate) implements Serializable {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** Numbers are written with as many digits as give the same number back. */
    static JudgedBy of(Knowledge knowledge, @Nullable String climate) {
        return new JudgedBy(MAPPER.writeValueAsString(knowledge), climate);
    }

    /** What was learned, to the last bit. */
    Knowledge read() {
        return MAPPER.readValue(knowledge, Knowledge.class);
    }

    Basis basis() {
        return new Basis(read(), climate);
    }

    Assessor assessor() {
        return new Assessor(LimitsFile.load()).with(read()).in(climate == null ? null : ClimateFile.parse(climate));
    }
}
