package cornerbook.app.exchange;

import com.fasterxml.jackson.annotation.JsonInclude;
import cornerbook.core.assess.Assessment;
import cornerbook.core.finding.Finding;
import cornerbook.core.say.Said;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * An assessment as JSON, for other programs. Names carry their units; what is absent is left out; dates are
 * year-month-day. What is said stands there twice: "title" is its words, "titleSaid" the sentence, its facts and the words.
 */
public final class AssessmentJson {
    private AssessmentJson() {}

    /** The text of the assessment, indented, in the words of this reader; the same assessment gives the same text. */
    public static String write(Assessment assessment, Reader reader) {
        var visit = assessment.visit();
        var vehicle = assessment.history().vehicle();
        var file = new AssessmentFile(
                "cornerbook-assessment",
                1,
                vehicle.id(),
                vehicle.name(),
                vehicle.plate(),
                visit.id(),
                visit.date(),
                visit.odometerKm(),
                assessment.nextVisit(),
                assessment.findings(),
                assessment.forecasts(),
                assessment.plan(),
                assessment.retorque(),
                assessment.notJudged(),
                assessment.doubted().stream()
                        .<Said>map(TreadPrediction::question)
                        .toList());
        return JsonMapper.builder()
                        .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
                        .changeDefaultPropertyInclusion(
                                inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
                        .addModule(new SaidModule(reader))
                        .build()
                        .writerWithDefaultPrettyPrinter()
                        .writeValueAsString(file)
                + "\n";
    }

    /** The head of the JSON, its fields in their order. */
    private record AssessmentFile(
            String format,
            int version,
            String vehicleId,
            String vehicleName,
            String plate,
            String visitId,
            LocalDate date,
            double odometerKm,
            LocalDate nextVisit,
            List<Finding> findings,
            List<SetForecast> forecasts,
            @Nullable WheelPlan plan,
            @Nullable Retorque retorque,
            List<Said> notJudged,
            List<Said> readAgain) {}
}
