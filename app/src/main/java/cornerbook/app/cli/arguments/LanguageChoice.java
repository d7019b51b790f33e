package cornerbook.app.cli.arguments;

import cornerbook.words.Language;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** In which language the command line speaks: as the option says, else as the environment says. */
public final class LanguageChoice {
    private static final String OPTION = "--language";
    /** The first that is set counts (POSIX.1-2024, chapter 8.2). */
    private static final List<String> VARIABLES = List.of("LC_ALL", "LC_MESSAGES", "LANG");

    private LanguageChoice() {}

    /** The option as every verb has it. */
    public static OptionSpec option() {
        return OptionSpec.builder(OPTION)
                .paramLabel("en|fr")
                .arity("1")
                .type(Language.class)
                .converters(LanguageChoice::read)
                .descriptionKey("option-language")
                .scopeType(CommandLine.ScopeType.INHERIT)
                .build();
    }

    /** Asked before the arguments are read, for that may have to be refused in it. */
    public static Language of(Map<String, String> environment, String... arguments) {
        return IntStream.range(0, arguments.length)
                .boxed()
                .flatMap(at -> written(arguments, at).stream())
                .flatMap(tag -> Language.find(tag).stream())
                .findFirst()
                .orElseGet(() -> ofEnvironment(environment));
    }

    private static Optional<String> written(String[] arguments, int at) {
        if (arguments[at].startsWith(OPTION + "=")) {
            return Optional.of(arguments[at].substring(OPTION.length() + 1));
        }
        return arguments[at].equals(OPTION) && at + 1 < arguments.length
                ? Optional.of(arguments[at + 1])
                : Optional.empty();
    }

    private static Language ofEnvironment(Map<String, String> environment) {
        return VARIABLES.stream()
                .flatMap(name -> Stream.ofNullable(environment.get(name)))
                .filter(value -> !value.isEmpty())
                .findFirst()
                .flatMap(Language::find)
                .orElse(Language.ENGLISH);
    }

    private static Language read(String tag) {
        return Language.find(tag).orElseThrow(() -> new CommandLine.TypeConversionException(tag));
    }
}
