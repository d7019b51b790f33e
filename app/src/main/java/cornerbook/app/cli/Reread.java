package cornerbook.app.cli;

import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.core.reread.ReadingStudy;
import cornerbook.core.reread.RereadSaid;
import cornerbook.core.reread.StudyLines;
import picocli.CommandLine;

/** How well people read, from the grooves of the book that were read twice unchanged. */
@CommandLine.Command(name = "reread", description = "verb-reread")
final class Reread implements Runnable {
    private final Terminal terminal;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", descriptionKey = "option-reread-json")
    private boolean json;

    Reread(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        ReadingStudy study;
        try (var book = folder.openExisting()) {
            study = ReadingStudy.find(book.knowledge().readTwice());
        }
        if (json) {
            terminal.out().println(study == null ? "{}" : Printed.jsonOf(study));
            return;
        }
        if (study == null) {
            terminal.say(RereadSaid.Plainly.TOO_FEW);
            return;
        }
        StudyLines.ofAll(study).forEach(terminal::say);
        study.persons().forEach(person -> StudyLines.of(person).forEach(terminal::say));
    }
}
