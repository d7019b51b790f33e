package cornerbook.app.cli;

import cornerbook.words.Reader;
import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.bench.Questions;
import cornerbook.app.book.store.BookException;
import cornerbook.app.log.Faults;
import cornerbook.app.log.Log;
import cornerbook.app.text.PlainText;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Locale;
import picocli.CommandLine;

/** The program. */
@CommandLine.Command(
        name = "cornerbook",
        description = "Keeps every reading at every corner of a car, and says what holds until the next visit.",
        mixinStandardHelpOptions = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:Done.",
            "1:The program has a fault.",
            "2:The verb, an option or a parameter is wrong.",
            "3:The input is refused; each sentence names file and place, or the part that cannot be.",
            "4:The book refuses, or is not there, or is not sound.",
            "5:A file, a backup or a port cannot be used."
        },
        version = Main.VERSION)
public final class Main {
    static final String VERSION = "Cornerbook 0.1.0";

    private Main() {}

    /** Runs one verb and ends the process with its exit code. */
    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ROOT);
        Log.begin();
        System.setProperty("java.awt.headless", "true");
        var out = new PrintWriter(System.out, true, UTF_8);
        var err = new PrintWriter(System.err, true, UTF_8);
        System.exit(run(out, err, arguments));
    }

    /** Runs one verb with these outputs and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        var unfit = Arrays.stream(arguments)
                .flatMap(each -> PlainText.findUnfitInLines(each).stream())
                .findFirst();
        if (unfit.isPresent()) {
            err.println("In what follows cornerbook stands %s, expected text.".formatted(Reader.DEFAULT.say(unfit.get())));
            err.flush();
            return CommandLine.ExitCode.USAGE;
        }
        var line = new CommandLine(new Main())
                .addSubcommand(new Serve(out))
                .addSubcommand(new Demo(out))
                .addSubcommand(new Assess(out))
                .addSubcommand(new Handover(out))
                .addSubcommand(new Import(out))
                .addSubcommand(new Export(out))
                .addSubcommand(new Backup(out))
                .addSubcommand(new Restore(out))
                .addSubcommand(new Learn(out))
                .addSubcommand(new Calibrate(out))
                .addSubcommand(new PlaceClimate(out))
                .addSubcommand(new Check(out, err))
                .addSubcommand(new Completion(out));
        Questions.ALL.forEach(question -> line.addSubcommand(CalculatorVerb.of(question, out)));
        line.setOut(out).setErr(err).setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setUsageHelpAutoWidth(true);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        var usage = line.getCommandSpec().usageMessage();
        for (var verb : line.getSubcommands().values()) {
            verb.getCommandSpec()
                    .mixinStandardHelpOptions(true)
                    .usageMessage()
                    .exitCodeListHeading(usage.exitCodeListHeading())
                    .exitCodeList(usage.exitCodeList());
        }
        line.setParameterExceptionHandler((exception, given) -> {
            err.println(Printed.sentence(String.valueOf(exception.getMessage()))
                    + " See cornerbook --help for what is expected.");
            return CommandLine.ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler(
                (exception, command, parsed) -> report(exception, command.getCommandName(), err));
        int exitCode = line.execute(arguments);
        out.flush();
        err.flush();
        return exitCode;
    }

    /** Tells a person what came of a verb that failed, and gives the exit code. */
    static int report(Exception exception, String verb, PrintWriter err) {
        return switch (exception) {
            case CommandFailure failure -> {
                String.valueOf(failure.getMessage())
                        .lines()
                        .forEach(sentence -> err.println(Printed.sentence(sentence)));
                yield failure.exitCode();
            }
            case BookException refused -> {
                err.println(Printed.sentence(Reader.DEFAULT.say(refused.said())));
                yield refused.isOfBackup() ? CommandFailure.FILE_OR_PORT : CommandFailure.BOOK;
            }
            default -> {
                var file = Log.file();
                var id = Faults.note("running " + verb, exception);
                err.println(Printed.line(
                        "Cornerbook has a fault and stopped (fault %s); what led to it stands in %s, without personal data."
                                .formatted(id, file)));
                yield CommandLine.ExitCode.SOFTWARE;
            }
        };
    }
}
