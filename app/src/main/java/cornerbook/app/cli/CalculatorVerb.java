package cornerbook.app.cli;

import cornerbook.app.exchange.CalculationJson;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** What the verbs that compute have in common: cautions first, then the answers, and why with {@code --why}. */
abstract class CalculatorVerb implements Runnable {
    private static final String INDENT = "  ";

    private final PrintWriter out;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

    @CommandLine.Option(names = "--why", description = "Print each step with its formula and source.")
    private boolean why;

    @CommandLine.Option(names = "--json", description = "Print inputs, results and steps as JSON.")
    private boolean json;

    CalculatorVerb(PrintWriter out) {
        this.out = out;
    }

    /**
     * One part of the answer.
     *
     * @param name for JSON, as "setting"
     * @param lines for people
     */
    record Part(String name, List<String> lines, Explained result) {}

    /** The parts that the options ask for. */
    abstract List<Part> parts();

    @Override
    public final void run() {
        List<Part> parts;
        try {
            parts = parts();
        } catch (IllegalArgumentException refused) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, String.valueOf(refused.getMessage()));
        }
        var command = spec == null ? CommandLine.Model.CommandSpec.create() : spec;
        if (json) {
            var results = new LinkedHashMap<String, Explained>();
            parts.forEach(part -> results.put(part.name(), part.result()));
            out.println(Printed.json(CalculationJson.write(command.name(), results)));
        } else {
            print(parts, command.usageMessage().width());
        }
    }

    private void print(List<Part> parts, int width) {
        var cautions = new LinkedHashSet<String>();
        parts.forEach(part -> cautions.addAll(part.result().cautions()));
        cautions.forEach(caution -> print("Mind: ", caution, width));
        boolean first = cautions.isEmpty();
        for (var part : parts) {
            if (!first) {
                out.println();
            }
            first = false;
            part.lines().forEach(line -> print("", line, width));
            if (why) {
                part.result().steps().forEach(step -> print(INDENT + "- ", words(step), width));
            }
        }
    }

    private static String words(Step step) {
        return "%s: %s; %s (%s)".formatted(step.what(), step.shown(), step.formula(), step.source());
    }

    private void print(String lead, String text, int width) {
        Printed.wrapped(lead, text, width).forEach(out::println);
    }
}
