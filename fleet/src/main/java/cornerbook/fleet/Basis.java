package cornerbook.fleet;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.limits.JudgeCode;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.tread.WearKnowledge;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What of all that was learned a car is judged by, as a digest: a car whose file and whose basis are those of another night has the
 * same findings. It errs on one side only: what no finding of a car asks for may be in its basis too.
 */
final class Basis {
    /** The same numbers give the same text in any process. */
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
            .build();

    private final String general;
    private final Map<String, String> ofModels = new HashMap<>();

    /**
     * By this program.
     *
     * @param climate of the place, as a climate file; null where it is not known
     */
    Basis(Knowledge knowledge, @Nullable String climate) {
        var texts = new ArrayList<String>();
        texts.add(JudgeCode.digest());
        texts.add(Objects.requireNonNullElse(climate, ""));
        // The day on which the same was learned again changes no number.
        knowledge
                .distances()
                .forEach((season, distance) -> texts.add(season.name() + MAPPER.writeValueAsString(distance)));
        texts.add(MAPPER.writeValueAsString(knowledge.seizing()));
        var rowsOfModels = new HashMap<String, List<String>>();
        for (var row : knowledge.wear().rows()) {
            var model = row.tyreModel();
            (model == null ? texts : rowsOfModels.computeIfAbsent(model, key -> new ArrayList<>())).add(text(row));
        }
        general = digest(texts);
        rowsOfModels.forEach((model, rows) -> ofModels.put(model, digest(rows)));
    }

    /** Of a car with tyres of these models. */
    String of(Collection<String> models) {
        var texts = new ArrayList<String>();
        texts.add(general);
        new TreeSet<>(models)
                .forEach(model -> texts.add(model + '\n' + Objects.requireNonNullElse(ofModels.get(model), "")));
        return digest(texts);
    }

    private static String text(WearKnowledge.Row row) {
        var learned = row.learned();
        return MAPPER.writeValueAsString(Arrays.asList(
                row.drive(),
                row.season(),
                row.tyreModel(),
                new EnumMap<>(learned.parameters().values()),
                new EnumMap<>(learned.standardErrors()),
                learned.cars(),
                learned.readings(),
                learned.widening()));
    }

    private static String digest(List<String> texts) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            texts.stream().sorted().forEach(text -> digest.update((text + '\n').getBytes(UTF_8)));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
