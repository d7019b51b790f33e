package cornerbook.app.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import cornerbook.app.book.Book;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The rules of the house inside app. */
@AnalyzeClasses(packages = "cornerbook.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Files of a package, its description among them. */
    private static final int MOST_FILES = 30;

    @ArchTest
    static final ArchRule onlyTheBookKnowsSql = noClasses()
            .that()
            .resideOutsideOfPackage("cornerbook.app.book..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.sqlite..", "org.flywaydb..");

    /** A question about the book is answered by the ledger of its subject, not by the book. */
    @ArchTest
    static void theBookOnlyHandsOutItsLedgers(JavaClasses classes) {
        assertThat(classes.get(Book.class).getMethods().stream()
                        .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC)
                                && !method.getModifiers().contains(JavaModifier.STATIC))
                        .filter(method -> !method.getRawParameterTypes().isEmpty()
                                || !method.getRawReturnType().getPackageName().startsWith("cornerbook.app.book."))
                        .map(JavaMethod::getName))
                .containsExactlyInAnyOrder("backup", "check", "close", "move");
    }

    @ArchTest
    static final ArchRule theBookKnowsNoView = noClasses()
            .that()
            .resideInAPackage("cornerbook.app.book..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "cornerbook.app.desk..", "cornerbook.app.door..", "cornerbook.app.cli..", "cornerbook.app.sheet..");

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsTheCommandLine = noClasses()
            .that()
            .resideOutsideOfPackage("cornerbook.app.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("cornerbook.app.cli..", "picocli..");

    /** A general solver is known at one place, so that nothing of it is loaded before the first plan is asked for. */
    @ArchTest
    static final ArchRule onlyThePlannerKnowsTheSolver = noClasses()
            .that()
            .resideOutsideOfPackage("cornerbook.app.planner..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ai.timefold..");

    @ArchTest
    static final ArchRule noPackagesStandInACircle =
            slices().matching("cornerbook.app.(**)").should().beFreeOfCycles();

    /** Who may know whom, from the ground up: a new package has to be put on its floor here. The command line wires all of it. */
    @ArchTest
    static final ArchRule arrowsPointDownwards = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("ground")
            .definedBy(
                    "cornerbook.app.file..",
                    "cornerbook.app.knowledge..",
                    "cornerbook.app.law..",
                    "cornerbook.app.limits..",
                    "cornerbook.app.log..",
                    "cornerbook.app.mail..",
                    "cornerbook.app.parquet..",
                    "cornerbook.app.photo..",
                    "cornerbook.app.preference..",
                    "cornerbook.app.text..",
                    "cornerbook.app.unit..")
            .layer("judge")
            .definedBy("cornerbook.app.judge..")
            .layer("certificate")
            .definedBy("cornerbook.app.certificate..")
            .layer("bench")
            .definedBy("cornerbook.app.bench..")
            .layer("demo")
            .definedBy("cornerbook.app.demo..")
            .layer("picture")
            .definedBy("cornerbook.app.picture..")
            .layer("planner")
            .definedBy("cornerbook.app.planner..")
            .layer("calibration")
            .definedBy("cornerbook.app.calibration..")
            .layer("book")
            .definedBy("cornerbook.app.book..")
            .layer("exchange")
            .definedBy("cornerbook.app.exchange..")
            .layer("sheet")
            .definedBy("cornerbook.app.sheet..", "cornerbook.app.pages.sheet..")
            .layer("request")
            .definedBy("cornerbook.app.request..")
            .layer("desk")
            .definedBy("cornerbook.app.desk..", "cornerbook.app.pages.desk..")
            .layer("bay")
            .definedBy("cornerbook.app.bay..", "cornerbook.app.pages.bay..")
            .layer("door")
            .definedBy("cornerbook.app.door..", "cornerbook.app.pages.door..")
            .layer("cli")
            .definedBy("cornerbook.app.cli..")
            .whereLayer("ground")
            .mayNotAccessAnyLayer()
            .whereLayer("judge")
            .mayOnlyAccessLayers("ground")
            .whereLayer("certificate")
            .mayOnlyAccessLayers("ground")
            .whereLayer("bench")
            .mayOnlyAccessLayers("ground")
            .whereLayer("demo")
            .mayNotAccessAnyLayer()
            .whereLayer("planner")
            .mayNotAccessAnyLayer()
            .whereLayer("picture")
            .mayOnlyAccessLayers("ground")
            .whereLayer("calibration")
            .mayOnlyAccessLayers("picture")
            .whereLayer("book")
            .mayOnlyAccessLayers("ground")
            .whereLayer("exchange")
            .mayOnlyAccessLayers("ground", "book")
            .whereLayer("sheet")
            .mayOnlyAccessLayers("ground", "book", "picture")
            .whereLayer("request")
            .mayOnlyAccessLayers("ground", "book")
            .whereLayer("desk")
            .mayOnlyAccessLayers(
                    "ground", "judge", "bench", "picture", "planner", "book", "exchange", "sheet", "request")
            .whereLayer("bay")
            .mayOnlyAccessLayers("ground", "judge", "book", "request", "desk")
            .whereLayer("door")
            .mayOnlyAccessLayers("ground", "certificate", "picture", "book", "sheet", "request", "desk")
            .whereLayer("door")
            .mayOnlyBeAccessedByLayers("cli")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .ensureAllClassesAreContainedInArchitecture();

    /** The desk's own packages: pages know what all of them share, and never each other. */
    @ArchTest
    static final ArchRule pagesDoNotKnowEachOther = slices().matching("cornerbook.app.desk.(*)")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(
                    JavaClass.Predicates.resideInAPackage("cornerbook.app.desk.."),
                    JavaClass.Predicates.resideInAnyPackage("cornerbook.app.desk.asked", "cornerbook.app.desk.link"));

    private static final DescribedPredicate<JavaClass> ROOM = resideInAnyPackage(
            "cornerbook.core.air..",
            "cornerbook.core.battery..",
            "cornerbook.core.brake..",
            "cornerbook.core.cost..",
            "cornerbook.core.lift..",
            "cornerbook.core.reread..",
            "cornerbook.core.torque..",
            "cornerbook.core.tread..",
            "cornerbook.core.tyre..",
            "cornerbook.core.wheelplan..");

    /** Made for the rooms: each of its classes draws, computes or invents what one of them is about. */
    private static final DescribedPredicate<JavaClass> NO_HALL = resideInAnyPackage(
            "cornerbook.app.bench..",
            "cornerbook.app.calibration..",
            "cornerbook.app.demo..",
            "cornerbook.app.pages..",
            "cornerbook.app.picture..");

    /** Where a hall names a room of core, and why it has to. */
    private static final Map<String, List<String>> NAMING_A_ROOM = Map.of(
            "a vehicle is made of its rooms' values: they are kept, written and asked for part by part",
            List.of(
                    "book.car.CarReader",
                    "book.car.DetailRows",
                    "book.car.VehicleRows",
                    "book.car.WheelChanges",
                    "desk.car.CarFacts",
                    "desk.car.CarSaid",
                    "exchange.DetailsReader",
                    "exchange.DetailsWriter",
                    "exchange.HistoryReader",
                    "exchange.HistoryWriter",
                    "exchange.Spelling",
                    "sheet.RecordSection"),
            "a hoist is a tool with its arms",
            List.of(
                    "book.tool.ToolRows",
                    "desk.bench.BenchTools",
                    "desk.tools.ToolForm",
                    "desk.tools.ToolsPage",
                    "exchange.ToolForm"),
            "what the book learns of all cars",
            List.of(
                    "book.knowledge.CarShares",
                    "book.knowledge.KnowledgeLedger",
                    "book.knowledge.ShareBytes",
                    "knowledge.KnowledgeForm",
                    "desk.knowledge.NumberChanges",
                    "cli.Learn"),
            "what the book knows of those who read",
            List.of("cli.Reread", "desk.shop.RereadHandler", "desk.shop.RereadPage", "desk.year.BehindHandler"),
            "the answers that an assessment hands out beside its findings",
            List.of(
                    "book.visit.RetorqueLedger",
                    "cli.AssessmentLines",
                    "desk.car.VehiclePage",
                    "desk.estimate.TyreLines",
                    "desk.findings.FindingsPage",
                    "exchange.AssessmentJson",
                    "sheet.CornersSection",
                    "sheet.SheetPage"),
            "the wheel plan, where it is shown and asked for",
            List.of(
                    "desk.asked.WheelProposal",
                    "desk.plan.PlanRules",
                    "desk.plan.PlannedSet",
                    "desk.wheel.WheelHandler",
                    "desk.wheel.WheelPage",
                    "sheet.label.WheelTags"),
            "the page of the burnish drive, and the pictures of the bench",
            List.of("desk.bench.BenchPicture", "desk.burnish.BurnishHandler", "desk.burnish.BurnishPage"),
            "what an entry or a wheel from the store is held against",
            List.of(
                    "bay.BaySheets",
                    "bay.EntryIntake",
                    "bay.FieldMaker",
                    "book.visit.VisitLedger",
                    "desk.visit.EntryForm",
                    "desk.visit.LeavingForm"),
            "what hands have to do: how much air, which fastener next, where dust is",
            List.of("bay.BayStates", "bay.BaySteps", "book.visit.ReadingLedger"),
            "what has a price: tyres of a size, parts of both sides of an axle",
            List.of("desk.estimate.JobOf", "desk.price.PricesHandler"));

    /** Halls carry what any room says, and name none. */
    @ArchTest
    static void hallsNameNoRoom(JavaClasses classes) {
        assertThat(classes.stream()
                        .filter(NO_HALL.negate())
                        .filter(each -> each.getDirectDependenciesFromSelf().stream()
                                .map(Dependency::getTargetClass)
                                .anyMatch(ROOM))
                        .map(each -> each.getName()
                                .replaceFirst("cornerbook\\.app\\.", "")
                                .replaceFirst("\\$.*", ""))
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(
                        NAMING_A_ROOM.values().stream().flatMap(List::stream).toList());
    }

    @ArchTest
    static void noPackageIsTooBig(JavaClasses classes) {
        var files = classes.stream()
                .filter(type -> !type.getPackageName().startsWith("cornerbook.app.pages"))
                .filter(type -> type.getSource().isPresent())
                .collect(Collectors.groupingBy(
                        JavaClass::getPackageName,
                        Collectors.mapping(
                                type -> type.getSource()
                                        .orElseThrow()
                                        .getFileName()
                                        .orElse(type.getName()),
                                Collectors.toSet())));
        files.values().removeIf(names -> names.size() <= MOST_FILES);
        assertThat(files).isEmpty();
    }
}
