package cornerbook.app.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.List;
import java.util.Map;

/** How many parts a thing is made of, in every module. */
@AnalyzeClasses(
        packages = {"cornerbook.core", "cornerbook.words", "cornerbook.app"},
        importOptions = ImportOption.DoNotIncludeTests.class)
class ConstructorsTest {
    private static final int MOST_PARTS = 8;

    /** Constructors with more parts, records' too, by the reason for which they stay. */
    private static final Map<String, List<String>> WITH_MORE_PARTS = Map.of(
            "the lines of an answer and the fields of its JSON, as Explained says",
            List.of(
                    "core.air.LoadPressure",
                    "core.air.PressureSetting",
                    "core.brake.burnish.BurnishDrive",
                    "core.lift.ArmLoads",
                    "core.torque.ClampLoad",
                    "core.torque.ShortForm",
                    "core.tyre.SizeComparison",
                    "core.tyre.SizeMeaning",
                    "core.tyre.TyreAge"),
            "the fields of the assessment's JSON",
            List.of("core.finding.Finding", "core.tread.judge.SetForecast", "core.wheelplan.WheelPlan"),
            "what each room has found",
            List.of("core.assess.Assessment"),
            "the columns of a data sheet, or of the book",
            List.of(
                    "app.book.bill.Bill",
                    "app.book.estimate.Agreement",
                    "app.book.estimate.Estimate",
                    "app.book.estimate.EstimateLine",
                    "app.book.out.CarRows",
                    "app.book.out.VisitRows",
                    "core.brake.BrakeSpecification",
                    "core.car.Reading",
                    "core.car.Vehicle"),
            "a row of a table",
            List.of("core.brake.pads.BrakeSign", "app.demo.CastMember", "app.sheet.label.LabelPaper"),
            "the fields of the JSON that other programs or the tablet's modules read",
            List.of(
                    "app.bay.BaySheet",
                    "app.bay.BaySheet$Field",
                    "app.bay.BaySheet$Limit",
                    "app.bay.BayState",
                    "app.exchange.AssessmentJson$AssessmentFile"),
            "what one template shows",
            List.of("app.desk.bench.BenchPage", "app.desk.estimate.AgreePage", "app.desk.visit.EntryPage$Field"));

    /** More parts than these are told apart by counting; those that belong together are a value with a name. */
    @ArchTest
    static void constructorsHaveFewParts(JavaClasses classes) {
        var longOnes = classes.stream()
                .flatMap(type -> type.getConstructors().stream())
                .filter(constructor -> parts(constructor) > MOST_PARTS)
                .map(constructor -> constructor.getOwner().getName().replaceFirst("^cornerbook\\.", ""))
                .distinct();
        assertThat(longOnes)
                .containsExactlyInAnyOrderElementsOf(
                        WITH_MORE_PARTS.values().stream().flatMap(List::stream).toList());
    }

    /** Without the name and the number that every constant of an enum has. */
    private static int parts(JavaConstructor constructor) {
        return constructor.getRawParameterTypes().size()
                - (constructor.getOwner().isEnum() ? 2 : 0);
    }
}
