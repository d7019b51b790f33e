package cornerbook.app.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.AutoComplete;
import picocli.CommandLine;

/** Prints the completion script for bash and zsh. */
@CommandLine.Command(name = "completion", description = "Print the completion script for bash and zsh.")
final class Completion implements Runnable {
    private final PrintWriter out;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

    Completion(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var command = spec;
        if (command != null) {
            out.print(AutoComplete.bash("cornerbook", command.root().commandLine()));
        }
    }
}
