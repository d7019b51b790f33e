package cornerbook.app.cli;

import cornerbook.app.bench.Ask;
import cornerbook.app.bench.AskException;
import cornerbook.app.bench.Given;
import cornerbook.app.bench.Part;
import cornerbook.app.bench.Question;
import cornerbook.app.cli.arguments.Descriptions;
import cornerbook.app.cli.arguments.UnitsOption;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.CalculationJson;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.words.Reader;
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
    private final Terminal terminal;
    private final Map<String, ArgSpec> arguments = new LinkedHashMap<>();

    @CommandLine.Option(names = "--why", descriptionKey = "option-compute-why")
    private boolean why;

    @CommandLine.Option(names = "--json", descriptionKey = "option-compute-json")
    private boolean json;

    private final ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    private final CommandSpec spec;

    private CalculatorVerb(Question question, Terminal terminal) {
        this.question = question;
        this.terminal = terminal;
        spec = CommandSpec.forAnnotatedObject(this).name(question.name());
    }

    /** The verb with an option for each thing asked; what all parts need is the first parameter when it stands alone. */
    static CommandSpec of(Question question, Terminal terminal) {
        var verb = new CalculatorVerb(question, terminal);
        var spec = verb.spec;
        spec.usageMessage()
                .footer(
                        "%n" + Descriptions.format(terminal.labels().of("quantities-carry-their-unit")),
                        Descriptions.format(terminal.labels().of("example", "line", question.example())));
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
                    .heading("%n" + verb.words(group.title()) + "%n");
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
                .description(words(ask.help()))
                .build();
        arguments.put(ask.name(), parameter);
        return parameter;
    }

    private OptionSpec option(Ask ask) {
        var builder = OptionSpec.builder("--" + ask.name()).description(words(ask.help()));
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

    private String words(Said said) {
        return Descriptions.format(terminal.reader().say(said));
    }

    private String label(Ask ask) {
        var words = terminal.labels();
        return switch (ask.kind()) {
            case Ask.Quantity quantity ->
                switch (quantity.bookUnit()) {
                    case "N·m" -> words.of("value-torque");
                    case "mm" -> words.of("value-length");
                    case "°" -> words.of("value-angle");
                    case "kg" -> words.of("value-mass");
                    case "kPa" -> words.of("value-pressure");
                    case "°C" -> words.of("value-temperature");
                    case "m" -> words.of("value-altitude");
                    case "km/h" -> words.of("value-speed");
                    case "V" -> words.of("value-voltage");
                    case "A" -> words.of("value-current");
                    default -> words.of("value-quantity");
                };
            case Ask.Count count -> "N";
            case Ask.Words text -> words.of("value-words");
            case Ask.Choice choice -> String.join("|", choice.words());
            case Ask.Day day -> words.of("value-date");
            case Ask.Tick tick -> "";
            case Ask.Several several -> "\"%s\"".formatted(terminal.reader().say(several.example()));
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
                units.find().isEmpty(),
                LocalDate.now(ZoneId.systemDefault()),
                climate.find());
        List<Part> parts;
        try {
            parts = question.answer(given);
        } catch (AskException unread) {
            throw new CommandFailure(exitCode(unread), new CliSaid.OfOption(unread.ask(), unread.said()));
        } catch (IllegalArgumentException refused) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, Refused.said(refused));
        }
        if (json) {
            var results = new LinkedHashMap<String, Explained>();
            parts.forEach(part -> results.put(part.name(), part.result()));
            terminal.out()
                    .println(Printed.json(CalculationJson.write(
                            question.name(), results, terminal.reader().in(units.orMetric()))));
        } else {
            new Answers(
                            terminal.reader().in(units.orMetric()),
                            spec.usageMessage().width())
                    .print(parts);
        }
    }

    /** A word that is no quantity is a wrong option; what has words of its own is input. */
    private int exitCode(AskException unread) {
        var kind = question.asks().stream()
                .filter(ask -> ask.name().equals(unread.ask()))
                .findFirst()
                .orElseThrow()
                .kind();
        boolean words = kind instanceof Ask.Words || kind instanceof Ask.Choice || kind instanceof Ask.Several;
        return unread.isRefused() || (words && !unread.isMissing())
                ? CommandFailure.INPUT_REFUSED
                : CommandLine.ExitCode.USAGE;
    }

    /** The answers as lines: what to mind first. */
    private final class Answers {
        private final Reader reader;
        private final int width;

        Answers(Reader reader, int width) {
            this.reader = reader;
            this.width = width;
        }

        void print(List<Part> parts) {
            var cautions = new LinkedHashSet<Said>();
            parts.forEach(part -> cautions.addAll(part.result().cautions()));
            cautions.forEach(caution -> print(terminal.labels().of("mind") + " ", caution));
            boolean first = cautions.isEmpty();
            for (var part : parts) {
                if (!first) {
                    terminal.out().println();
                }
                first = false;
                part.lines().forEach(line -> print("", line));
                if (why) {
                    part.result()
                            .steps()
                            .forEach(step -> print(
                                    INDENT + "- ",
                                    new CliSaid.StepLine(step.what(), step.shown(), step.formula(), step.source())));
                }
            }
        }

        private void print(String lead, Said said) {
            Printed.wrapped(lead, reader.say(said), width).forEach(terminal.out()::println);
        }
    }
}
