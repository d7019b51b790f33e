package cornerbook.app.cli;

import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Checks that the book is sound. */
@CommandLine.Command(name = "check", description = "verb-check")
final class Check implements Callable<Integer> {
    private final Terminal terminal;
    private final PrintWriter err;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", descriptionKey = "option-check-json")
    private boolean json;

    Check(Terminal terminal, PrintWriter err) {
        this.terminal = terminal;
        this.err = err;
    }

    private record Answer(boolean sound, List<String> problems) {}

    @Override
    public Integer call() {
        List<String> problems;
        try (var book = folder.openExisting()) {
            problems = book.check().stream().map(terminal.reader()::say).toList();
        }
        if (json) {
            terminal.out().println(Printed.jsonOf(new Answer(problems.isEmpty(), problems)));
        } else if (problems.isEmpty()) {
            terminal.say(new CliSaid.Sound(folder.shown()));
        } else {
            problems.forEach(problem -> err.println(Printed.sentence(problem)));
        }
        return problems.isEmpty() ? CommandLine.ExitCode.OK : CommandFailure.BOOK;
    }
}
