package cornerbook.core.unnoticed;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;
import org.pitest.classinfo.ClassByteArraySource;
import org.pitest.help.PitHelpError;
import org.pitest.junit5.JUnit5TestPluginFactory;
import org.pitest.testapi.Configuration;
import org.pitest.testapi.TestGroupConfig;
import org.pitest.testapi.TestPluginFactory;
import org.pitest.testapi.TestSuiteFinder;
import org.pitest.testapi.TestUnitFinder;

/** PIT's plugin for JUnit that looks for the tests of a class once; PIT finds it by the class path of the tests. */
public final class KnownTests implements TestPluginFactory {
    /** PIT asks the plugin with the lowest number first. */
    private static final int BEFORE_THE_OTHERS = Configuration.DEFAULT_PRIORITY - 1;

    private final TestPluginFactory junit = new JUnit5TestPluginFactory();

    @Override
    public Configuration createTestFrameworkConfiguration(
            TestGroupConfig groups,
            ClassByteArraySource source,
            Collection<String> excludedRunners,
            Collection<String> includedMethods) {
        return new Remembering(
                junit.createTestFrameworkConfiguration(groups, source, excludedRunners, includedMethods));
    }

    @Override
    public String name() {
        return "known-tests";
    }

    @Override
    public String description() {
        return "JUnit's tests, looked for once";
    }

    private record Remembering(Configuration junit) implements Configuration {
        @Override
        public int priority() {
            return BEFORE_THE_OTHERS;
        }

        @Override
        public TestUnitFinder testUnitFinder() {
            return new KnownTestFinder(junit.testUnitFinder(), Path.of("target", "known-tests"));
        }

        @Override
        public TestSuiteFinder testSuiteFinder() {
            return junit.testSuiteFinder();
        }

        @Override
        public Optional<PitHelpError> verifyEnvironment() {
            return junit.verifyEnvironment();
        }
    }
}
