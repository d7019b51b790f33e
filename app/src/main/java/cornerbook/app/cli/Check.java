package cornerbook.app.cli;

import cornerbook.words.Reader;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;

/** Checks that the book is sound. */
@CommandLine.Command(name = "check", description = "Check that the book is sound.")
final class Check implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", description = "Print the answer as JSON.")
    private boolean json;

    Check(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    private record Answer(boolean sound, List<String> problems) {}

    @Override
    public Integer call() {
        List<String> problems;
        try (var book = folder.openExisting()) {
            problems = book.check().stream().map(Reader.DEFAULT::say).toList();
        }
        if (json) {
            out.println(Printed.jsonOf(new Answer(problems.isEmpty(), problems)));
        } else if (problems.isEmpty()) {
            out.println(Printed.line("The book in %s is sound.".formatted(folder.shown())));
        } else {
            problems.forEach(problem -> err.println(Printed.sentence(problem)));
        }
        return problems.isEmpty() ? CommandLine.ExitCode.OK : CommandFailure.BOOK;
    }
}
