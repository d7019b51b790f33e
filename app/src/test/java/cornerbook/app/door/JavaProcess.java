package cornerbook.app.door;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A program in a process of its own, from the classes that the test was built with. */
public final class JavaProcess {
    /** It lives for seconds: what makes a start short counts for more than what makes code fast. */
    private static final List<String> SHORT_LIVED =
            List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "--enable-native-access=ALL-UNNAMED");

    private JavaProcess() {}

    /** Not yet started, with these options of Java's beside its own. */
    public static ProcessBuilder of(List<String> options, Class<?> program, String... arguments) {
        var command = new ArrayList<String>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(SHORT_LIVED);
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
        command.addAll(Arrays.asList(arguments));
        return new ProcessBuilder(command);
    }
}
