package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.bench.Questions;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.arguments.LanguageChoice;
import cornerbook.app.cli.arguments.Usage;
import cornerbook.app.cli.arguments.WrongUse;
import cornerbook.app.cli.bill.BillVerb;
import cornerbook.app.cli.customer.CustomersVerb;
import cornerbook.app.cli.knowledge.KnowledgeVerb;
import cornerbook.app.cli.order.OrderVerb;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.log.Faults;
import cornerbook.app.log.Log;
import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine;

/** The program. */
@CommandLine.Command(
        name = "cornerbook",
        description = "cornerbook",
        mixinStandardHelpOptions = true,
        version = Main.VERSION)
public final class Main {
    static final String VERSION = "Cornerbook 0.1.0";

    /** Some thousand cards without pictures, or what was learned of as many tyre models. */
    private static final int MOST_BYTES = 8 * 1024 * 1024;

    private Main() {}

    /** Runs one verb and ends the process with its exit code. */
    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ROOT);
        Log.begin();
        System.setProperty("java.awt.headless", "true");
        var out = new PrintWriter(System.out, true, UTF_8);
        var err = new PrintWriter(System.err, true, UTF_8);
        System.exit(run(System.getenv(), out, err, arguments));
    }

    /** Runs one verb with these outputs and gives its exit code. */
    static int run(Map<String, String> environment, PrintWriter out, PrintWriter err, String... arguments) {
        var language = LanguageChoice.of(environment, arguments);
        var terminal = new Terminal(new Reader(language, UnitSystem.METRIC, ZoneId.systemDefault()), out);
        int exitCode = run(terminal, err, arguments);
        out.flush();
        err.flush();
        return exitCode;
    }

    private static int run(Terminal terminal, PrintWriter err, String... arguments) {
        var reader = terminal.reader();
        var unfit = Arrays.stream(arguments)
                .flatMap(each -> PlainText.findUnfitInLines(each).stream())
                .findFirst();
        if (unfit.isPresent()) {
            err.println(Printed.sentence(reader.say(new CliSaid.UnfitArgument(unfit.get()))));
            return CommandLine.ExitCode.USAGE;
        }
        var line = new CommandLine(new Main());
        line.getCommandSpec().addOption(LanguageChoice.option());
        line.addSubcommand(new Serve(terminal)).addSubcommand(new Demo(terminal));
        // To build the other verbs would take a tenth of the time until a book is served.
        if (arguments.length == 0 || !line.getSubcommands().containsKey(arguments[0])) {
            addOthers(line, terminal, err);
        }
        line.setOut(terminal.out())
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setUsageHelpAutoWidth(true);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.getSubcommands().values().forEach(verb -> verb.getCommandSpec().mixinStandardHelpOptions(true));
        new Usage(reader).describe(line);
        line.setParameterExceptionHandler((exception, given) -> {
            err.println(Printed.sentence(reader.begin(WrongUse.of(exception))) + " "
                    + Printed.line(reader.say(CliSaid.Plainly.SEE_HELP)));
            return CommandLine.ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler(
                (exception, command, parsed) -> report(exception, command.getCommandName(), reader, err));
        return line.execute(arguments);
    }

    private static void addOthers(CommandLine line, Terminal terminal, PrintWriter err) {
        line.addSubcommand(new Assess(terminal))
                .addSubcommand(new Handover(terminal))
                .addSubcommand(new Import(terminal))
                .addSubcommand(new Export(terminal))
                .addSubcommand(new Backup(terminal))
                .addSubcommand(new Restore(terminal))
                .addSubcommand(new Move(terminal))
                .addSubcommand(new Learn(terminal))
                .addSubcommand(new Reread(terminal))
                .addSubcommand(new Calibrate(terminal))
                .addSubcommand(new PlaceClimate(terminal))
                .addSubcommand(new Check(terminal, err))
                .addSubcommand(new Kinds(terminal))
                .addSubcommand(order(terminal))
                .addSubcommand(knowledge(terminal))
                .addSubcommand(customers(terminal))
                .addSubcommand(bill(terminal))
                .addSubcommand(new Schema(terminal))
                .addSubcommand(new Completion(terminal));
        Questions.ALL.forEach(question -> line.addSubcommand(CalculatorVerb.of(question, terminal)));
    }

    private static CommandLine.Model.CommandSpec order(Terminal terminal) {
        var folder = new BookFolder();
        return CommandLine.Model.CommandSpec.forAnnotatedObject(new OrderVerb(terminal, folder::openExisting))
                .addMixin("folder", CommandLine.Model.CommandSpec.forAnnotatedObject(folder));
    }

    private static CommandLine.Model.CommandSpec knowledge(Terminal terminal) {
        var folder = new BookFolder();
        return CommandLine.Model.CommandSpec.forAnnotatedObject(
                        new KnowledgeVerb(terminal, folder::openExisting, Main::text))
                .addMixin("folder", CommandLine.Model.CommandSpec.forAnnotatedObject(folder));
    }

    private static CommandLine.Model.CommandSpec customers(Terminal terminal) {
        var folder = new BookFolder();
        return CommandLine.Model.CommandSpec.forAnnotatedObject(
                        new CustomersVerb(terminal, folder::openExisting, Main::text))
                .addMixin("folder", CommandLine.Model.CommandSpec.forAnnotatedObject(folder));
    }

    /** The text of a file; what is no UTF-8 is taken for the code page of western Europe (WHATWG Encoding Standard, section 9.1). */
    private static String text(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
            }
            var bytes = Files.readAllBytes(file);
            try {
                return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            } catch (CharacterCodingException e) {
                return new String(bytes, Charset.forName("windows-1252"));
            }
        } catch (IOException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
        }
    }

    private static CommandLine.Model.CommandSpec bill(Terminal terminal) {
        var folder = new BookFolder();
        return CommandLine.Model.CommandSpec.forAnnotatedObject(new BillVerb(terminal, folder::openExisting))
                .addMixin("folder", CommandLine.Model.CommandSpec.forAnnotatedObject(folder));
    }

    /** Tells a person what came of a verb that failed, and gives the exit code. */
    static int report(Exception exception, String verb, Reader reader, PrintWriter err) {
        return switch (exception) {
            case CommandFailure failure -> {
                failure.sentences().forEach(sentence -> err.println(Printed.sentence(reader.say(sentence))));
                yield failure.exitCode();
            }
            case Refused refused -> {
                err.println(Printed.sentence(reader.say(refused.said())));
                yield CommandFailure.INPUT_REFUSED;
            }
            case BookException refused -> {
                err.println(Printed.sentence(reader.say(refused.said())));
                yield refused.isOfBackup() ? CommandFailure.FILE_OR_PORT : CommandFailure.BOOK;
            }
            default -> {
                var file = Log.file();
                var id = Faults.note("running " + verb, exception);
                err.println(Printed.line(reader.say(new CliSaid.FaultNoted(id, file.toString()))));
                yield CommandLine.ExitCode.SOFTWARE;
            }
        };
    }
}
