package cornerbook.app.cli.arguments;

import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Why arguments are not understood, as picocli found it. */
public final class WrongUse {
    private WrongUse() {}

    public static Said of(CommandLine.ParameterException wrong) {
        var argument = wrong.getArgSpec();
        return switch (wrong) {
            case CommandLine.MissingParameterException missing -> new ArgumentSaid.Missing(named(missing.getMissing()));
            case CommandLine.UnmatchedArgumentException unmatched ->
                new ArgumentSaid.Unknown(Listed.commas(
                        unmatched.getUnmatched().stream().map(Said::verbatim).toList()));
            case CommandLine.OverwrittenOptionException twice ->
                new ArgumentSaid.GivenTwice(name(twice.getOverwritten()));
            default ->
                argument != null && wrong.getValue() != null
                        ? new ArgumentSaid.CannotBe(name(argument), wrong.getValue())
                        : wrong.getCommandLine().getCommandSpec().parent() == null
                                ? ArgumentSaid.Plainly.NO_VERB
                                : new ArgumentSaid.WrongUse(String.valueOf(wrong.getMessage()));
        };
    }

    private static Listed named(List<ArgSpec> arguments) {
        return Listed.commas(
                arguments.stream().map(each -> Said.verbatim(name(each))).toList());
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
