package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.words.Facts;
import cornerbook.words.Reader;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class AssessmentJsonTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void findingsStandInTheFileAsTheyWereFound() {
        var history = DemoShop.histories(TODAY).getFirst();
        var assessment = new Assessor(LimitsFile.load())
                .assess(history, history.visits().getLast().id());

        var text = AssessmentJson.write(assessment, Reader.DEFAULT);

        var file = JsonMapper.shared().readTree(text);
        assertThat(file.required("format").stringValue()).isEqualTo("cornerbook-assessment");
        assertThat(file.required("visitId").stringValue())
                .isEqualTo(assessment.visit().id());
        assertThat(file.required("nextVisit").stringValue())
                .isEqualTo(assessment.nextVisit().toString());
        assertThat(file.required("findings")).hasSameSizeAs(assessment.findings());
        var first = file.required("findings").get(0);
        var gravest = assessment.findings().getFirst();
        assertThat(first.required("verdict").stringValue())
                .isEqualTo(gravest.verdict().name());
        assertThat(first.required("title").stringValue()).isEqualTo(Reader.DEFAULT.say(gravest.title()));
        assertThat(first.required("titleSaid").required("code").stringValue())
                .isEqualTo(Facts.of(gravest.title()).code());
        assertThat(first.required("titleSaid").required("words")).isEqualTo(first.required("title"));
        assertThat(first.required("evidence")).hasSameSizeAs(gravest.evidence());
        assertThat(text).doesNotContain(": null").isEqualTo(AssessmentJson.write(assessment, Reader.DEFAULT));
    }
}
