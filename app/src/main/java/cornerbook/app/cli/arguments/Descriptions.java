package cornerbook.app.cli.arguments;

import cornerbook.words.Labels;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** The words of a verb's options and parameters as picocli asks for them: by the keys that stand at them. */
public final class Descriptions extends ResourceBundle {
    /** Picocli's own keys, of the options that every verb has. */
    private static final Map<String, String> STANDARD = Map.of(
            "mixinStandardHelpOptions.help", "option-help", "mixinStandardHelpOptions.version", "option-version");

    /** What stands for a value, as ${bundle:label-file} at an option or a parameter. */
    private static final List<String> LABELS = List.of(
            "label-action",
            "label-address",
            "label-count",
            "label-day",
            "label-file",
            "label-folder",
            "label-id",
            "label-name",
            "label-out",
            "label-port",
            "label-telephone",
            "label-url",
            "label-vehicle");

    private final Map<String, String> texts = new HashMap<>();

    Descriptions(CommandSpec verb, Labels words) {
        LABELS.forEach(key -> texts.put(key, words.of(key)));
        verb.args().stream().map(ArgSpec::descriptionKey).forEach(key -> {
            if (key != null) {
                texts.put(key, format(words.of(STANDARD.getOrDefault(key, key), "usual", "${DEFAULT-VALUE}")));
            }
        });
    }

    /** As picocli takes text, where % begins something else; with plain blanks as in all that is printed. */
    public static String format(String words) {
        return words.replace("%", "%%").replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return texts.get(key);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(texts.keySet());
    }
}
