package cornerbook.app.cli;

import cornerbook.app.cli.print.Terminal;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Prints the completion script for bash and zsh. */
@CommandLine.Command(name = "completion", description = "verb-completion")
final class Completion implements Runnable {
    private final Terminal terminal;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

    Completion(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var command = spec;
        if (command != null) {
            terminal.out().print(AutoComplete.bash("cornerbook", command.root().commandLine()));
        }
    }
}
