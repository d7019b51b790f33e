package cornerbook.app.cli;

import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Why arguments are not understood, as picocli found it. */
final class WrongUse {
    private WrongUse() {}

    static Said of(CommandLine.ParameterException wrong) {
        var argument = wrong.getArgSpec();
        return switch (wrong) {
            case CommandLine.MissingParameterException missing -> new CliSaid.Missing(named(missing.getMissing()));
            case CommandLine.UnmatchedArgumentException unmatched ->
                new CliSaid.Unknown(Listed.commas(
                        unmatched.getUnmatched().stream().map(Said::verbatim).toList()));
            case CommandLine.OverwrittenOptionException twice -> new CliSaid.GivenTwice(name(twice.getOverwritten()));
            case CommandLine.ParameterException other when argument != null && other.getValue() != null ->
                new CliSaid.CannotBe(name(argument), other.getValue());
            case CommandLine.ParameterException other when wrong.getCommandLine().getCommandSpec().parent() == null ->
                CliSaid.Plainly.NO_VERB;
            default -> new CliSaid.WrongUse(String.valueOf(wrong.getMessage()));
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
