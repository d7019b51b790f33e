package cornerbook.app.limits;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.tread.judge.TreadSaid;
import cornerbook.words.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The rows with dates of the limits file, on a car of the examples that stays on its winter wheels. */
class SeasonLimitsTest {
    private static final Path EXAMPLE = Path.of("../docs/examples/first-visit.json");

    /** Sweden: 3 mm from 1 December to 31 March, 1.6 mm else. */
    @Test
    void swedenAsksMoreOfWinterTyresInWinterOnly() throws IOException {
        assertThat(legalLimitMm(assess("SE", "2025-11-21", "2026-04-14"))).isEqualTo(3.0);
        assertThat(legalLimitMm(assess("SE", "2026-03-31", "2026-10-20"))).isEqualTo(3.0);
        assertThat(legalLimitMm(assess("SE", "2026-04-01", "2026-10-20"))).isEqualTo(1.6);
        assertThat(legalLimitMm(assess("NO", "2026-04-01", "2026-10-20"))).isEqualTo(3.0);
    }

    /** Austria: 4 mm for winter tyres from 1 November to 15 April; the house asks the same without dates. */
    @Test
    void austriaIsNamedWithinItsDates() throws IOException {
        assertThat(seasonSource(assess("AT", "2025-11-21", "2026-04-14"))).startsWith("Austria: 4 mm");
        assertThat(seasonSource(assess("AT", "2026-04-16", "2026-10-31"))).endsWith("house rule");
        assertThat(seasonSource(assess("AT", "2026-04-16", "2026-11-01"))).startsWith("Austria: 4 mm");
    }

    private static double legalLimitMm(Assessment assessment) {
        return assessment.forecasts().getFirst().legalLimitMm();
    }

    private static String seasonSource(Assessment assessment) {
        return assessment.findings().stream()
                .flatMap(finding -> finding.evidence().stream())
                .filter(evidence -> evidence.what() == TreadSaid.Label.SEASONS_MINIMUM)
                .map(evidence -> Reader.DEFAULT.say(evidence.how()))
                .findFirst()
                .orElseThrow();
    }

    private static Assessment assess(String jurisdiction, String date, String nextVisit) throws IOException {
        var text = Files.readString(EXAMPLE)
                .replace("\"CA-QC\"", "\"%s\"".formatted(jurisdiction))
                .replace(
                        "\"date\": \"2025-11-21\"",
                        "\"date\": \"%s\", \"nextVisitDue\": \"%s\"".formatted(date, nextVisit));
        var read = (VisitFile.Read) VisitFile.read(text, LocalDate.of(2026, 11, 25));
        return new Assessor(LimitsFile.load()).assess(read.history(), "first-v1");
    }
}
