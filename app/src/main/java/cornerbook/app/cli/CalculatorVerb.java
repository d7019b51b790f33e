package cornerbook.app.cli;

import cornerbook.core.say.Refused;
import cornerbook.words.Reader;

import cornerbook.app.bench.Ask;
import cornerbook.app.bench.AskException;
import cornerbook.app.bench.Given;
import cornerbook.app.bench.Part;
import cornerbook.app.bench.Question;
import cornerbook.app.exchange.CalculationJson;
import cornerbook.app.unit.QuantityText;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import cornerbook.words.Shown;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A question of the bench as a verb: cautions first, then the answers, and why with {@code --why}. */
final class CalculatorVerb implements Runnable {
    private static final String INDENT = "  ";

    private final Question question;
    private final PrintWriter out;
    private final Map<String, ArgSpec> arguments = new LinkedHashMap<>();

    @CommandLine.Option(names = "--why", description = "Print each step with its formula and source.")
    private boolean why;

    @CommandLine.Option(names = "--json", description = "Print inputs, results and steps as JSON.")
    private boolean json;

    private final ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    private final CommandSpec spec;

    private CalculatorVerb(Question question, PrintWriter out) {
        this.question = question;
        this.out = out;
        spec = CommandSpec.forAnnotatedObject(this).name(question.name());
    }

    /** The verb with an option for each thing asked; what all parts need is the first parameter when it stands alone. */
    static CommandSpec of(Question question, PrintWriter out) {
        var verb = new CalculatorVerb(question, out);
        var spec = verb.spec;
        spec.usageMessage()
                .description(question.description())
                .footer(
                        "%nQuantities carry their unit: \"98 lbf·ft\", \"6 in\", \"2300 lb\"; a bare number is in the book's unit, with --units us in that of the trade there.",
                        "Example: " + question.example().replace("%", "%%"));
        // So that "-5 N·m" is read as a quantity, and refused as one.
        spec.parser().unmatchedOptionsArePositionalParams(true);
        for (var ask : question.common()) {
            spec.add(question.common().size() == 1 ? verb.parameter(ask) : verb.option(ask));
        }
        if (question.byClimate()) {
            spec.addMixin("climate", CommandSpec.forAnnotatedObject(verb.climate));
        }
        for (var group : question.groups()) {
            var options = ArgGroupSpec.builder()
                    .exclusive(false)
                    .validate(false)
                    .multiplicity("0..1")
                    .heading("%n" + group.title().replace("%", "%%") + "%n");
            group.asks().forEach(ask -> options.addArg(verb.option(ask)));
            spec.addArgGroup(options.build());
        }
        return spec;
    }

    private PositionalParamSpec parameter(Ask ask) {
        var parameter = PositionalParamSpec.builder()
                .paramLabel(label(ask))
                .arity("1")
                .index("0")
                .type(String.class)
                .description(ask.help().replace("%", "%%"))
                .build();
        arguments.put(ask.name(), parameter);
        return parameter;
    }

    private OptionSpec option(Ask ask) {
        var builder =
                OptionSpec.builder("--" + ask.name()).description(ask.help().replace("%", "%%"));
        var option = switch (ask.kind()) {
            case Ask.Tick tick -> builder.arity("0").type(boolean.class).build();
            case Ask.Several several ->
                builder.paramLabel(label(ask))
                        .arity("1")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .build();
            default ->
                builder.paramLabel(label(ask)).arity("1").type(String.class).build();
        };
        arguments.put(ask.name(), option);
        return option;
    }

    private static String label(Ask ask) {
        return switch (ask.kind()) {
            case Ask.Quantity quantity ->
                switch (quantity.bookUnit()) {
                    case "N·m" -> "TORQUE";
                    case "mm" -> "LENGTH";
                    case "°" -> "ANGLE";
                    case "kg" -> "MASS";
                    case "kPa" -> "PRESSURE";
                    case "°C" -> "TEMPERATURE";
                    case "m" -> "ALTITUDE";
                    case "km/h" -> "SPEED";
                    case "V" -> "VOLTAGE";
                    case "A" -> "CURRENT";
                    default -> "QUANTITY";
                };
            case Ask.Count count -> "N";
            case Ask.Words words -> "WORDS";
            case Ask.Choice choice -> String.join("|", choice.words());
            case Ask.Day day -> "DATE";
            case Ask.Tick tick -> "";
            case Ask.Several several -> "\"%s\"".formatted(several.example());
        };
    }

    @Override
    public void run() {
        var typed = new HashMap<String, List<String>>();
        arguments.forEach((name, argument) -> {
            if (!argument.stringValues().isEmpty()) {
                typed.put(name, argument.stringValues());
            }
        });
        var given = new Given(
                question,
                typed,
                units.orMetric(),
                units.find().<Shown>map(system -> system).orElse(Shown.BOTH),
                LocalDate.now(ZoneId.systemDefault()),
                climate.find());
        List<Part> parts;
        try {
            parts = question.answer(given);
        } catch (AskException unread) {
            throw new CommandFailure(exitCode(unread), "--%s: %s".formatted(unread.ask(), unread.getMessage()));
        } catch (IllegalArgumentException refused) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, Reader.DEFAULT.say(Refused.said(refused)));
        }
        if (json) {
            var results = new LinkedHashMap<String, Explained>();
            parts.forEach(part -> results.put(part.name(), part.result()));
            out.println(Printed.json(CalculationJson.write(question.name(), results, Reader.DEFAULT)));
        } else {
            print(parts, spec.usageMessage().width());
        }
    }

    /** A word that is no quantity is a wrong option; what has words of its own is input. */
    private int exitCode(AskException unread) {
        var kind = question.asks().stream()
                .filter(ask -> ask.name().equals(unread.ask()))
                .findFirst()
                .orElseThrow()
                .kind();
        boolean words = kind instanceof Ask.Words || kind instanceof Ask.Choice;
        return words && !unread.isMissing() ? CommandFailure.INPUT_REFUSED : CommandLine.ExitCode.USAGE;
    }

    private void print(List<Part> parts, int width) {
        var cautions = new LinkedHashSet<String>();
        parts.forEach(part -> part.result().cautions().forEach(caution -> cautions.add(Reader.DEFAULT.say(caution))));
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
        return "%s: %s; %s (%s)".formatted(Reader.DEFAULT.say(step.what()), Reader.DEFAULT.say(step.shown()), Reader.DEFAULT.say(step.formula()), Reader.DEFAULT.say(step.source()));
    }

    private void print(String lead, String text, int width) {
        Printed.wrapped(lead, QuantityText.sentence(text, units.orMetric()), width)
                .forEach(out::println);
    }
}
