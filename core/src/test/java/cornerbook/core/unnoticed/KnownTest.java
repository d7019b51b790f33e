package cornerbook.core.unnoticed;

import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestExecutionResult.Status;
import org.junit.platform.engine.UniqueId;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.EngineFilter;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.pitest.testapi.AbstractTestUnit;
import org.pitest.testapi.Description;
import org.pitest.testapi.ResultCollector;

/** One test, known by the name that JUnit has for it. */
final class KnownTest extends AbstractTestUnit {
    /** To make one anew takes as long as a short test. */
    private static final Launcher LAUNCHER = LauncherFactory.create();

    private final UniqueId id;

    KnownTest(String name, Class<?> testClass) {
        super(new Description(name, testClass));
        this.id = UniqueId.parse(name);
    }

    @Override
    public void execute(ResultCollector results) {
        var request = LauncherDiscoveryRequestBuilder.request()
                .selectors(DiscoverySelectors.selectUniqueId(id))
                .filters(EngineFilter.includeEngines(id.getEngineId().orElseThrow()))
                .build();
        LAUNCHER.execute(request, new Telling(results, getDescription()));
    }

    /** Tells PIT how it went; a class that could not be set up has failed too. */
    private record Telling(ResultCollector results, Description test) implements TestExecutionListener {
        @Override
        public void executionStarted(TestIdentifier started) {
            if (started.isTest()) {
                results.notifyStart(test);
            }
        }

        @Override
        public void executionSkipped(TestIdentifier skipped, String reason) {
            if (skipped.isTest()) {
                results.notifySkipped(test);
            }
        }

        @Override
        public void executionFinished(TestIdentifier finished, TestExecutionResult result) {
            if (result.getStatus() == Status.FAILED) {
                results.notifyEnd(test, result.getThrowable().orElseGet(AssertionError::new));
            } else if (finished.isTest()) {
                results.notifyEnd(test);
            }
        }
    }
}
