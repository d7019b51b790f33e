package cornerbook.app.cli.arguments;

import cornerbook.app.bench.Questions;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The help of the verbs in the words of the catalogue. */
public final class Usage {
    /** In the order of the codes, from 0. */
    private static final List<String> EXIT_CODES = List.of("exit-0", "exit-1", "exit-2", "exit-3", "exit-4", "exit-5");

    private final Reader reader;
    private final Labels words;

    public Usage(Reader reader) {
        this.reader = reader;
        this.words = reader.labels("app/cli/arguments");
    }

    /** Puts the words to the program and each of its verbs, which name in place of a description the label that has it. */
    public void describe(CommandLine line) {
        describe(line.getCommandSpec());
        line.getSubcommands().values().forEach(verb -> describe(verb.getCommandSpec()));
    }

    private void describe(CommandSpec verb) {
        var codes = new LinkedHashMap<String, String>();
        EXIT_CODES.forEach(key -> codes.put(String.valueOf(codes.size()), Descriptions.format(words.of(key))));
        var usage = verb.usageMessage();
        usage.description(Descriptions.format(Arrays.stream(usage.description())
                        .findFirst()
                        .map(label -> words.of(label))
                        .orElseGet(() -> reader.say(
                                Questions.find(verb.name()).orElseThrow().description()))))
                .synopsisHeading(Descriptions.format(words.of("usage")) + " ")
                .synopsisSubcommandLabel(words.of("verb"))
                .commandListHeading("%n" + Descriptions.format(words.of("verbs")) + "%n")
                .exitCodeListHeading("%n" + Descriptions.format(words.of("exit-codes")) + "%n")
                .exitCodeList(codes);
        verb.resourceBundle(new Descriptions(verb, words));
    }
}
