package cornerbook.core.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Collectors;

/** The rules of the house inside core. */
@AnalyzeClasses(packages = "cornerbook.core", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final long MOST_FILES = 30;

    @ArchTest
    static final ArchRule coreStandsAlone = noClasses()
            .that()
            .resideInAPackage("cornerbook.core..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("cornerbook.app..", "cornerbook.fleet..", "cornerbook.bench..");

    @ArchTest
    static final ArchRule coreDoesNoInputOrOutput = noClasses()
            .that()
            .resideInAPackage("cornerbook.core..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.sql..", "java.net..", "java.awt..");

    @ArchTest
    static final ArchRule coreReadsNoClock = noClasses()
            .that()
            .resideInAPackage("cornerbook.core..")
            .should()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime");

    /** A floor knows those below it, and nothing knows the floor above. */
    @ArchTest
    static final ArchRule noArrowPointsUpwards = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("words")
            .definedBy(
                    "cornerbook.core.corner",
                    "cornerbook.core.numeric",
                    "cornerbook.core.quantity",
                    "cornerbook.core.say",
                    "cornerbook.core.why")
            .layer("season")
            .definedBy("cornerbook.core.season")
            .layer("rooms")
            .definedBy(
                    "cornerbook.core.air",
                    "cornerbook.core.battery",
                    "cornerbook.core.brake",
                    "cornerbook.core.brake.burnish",
                    "cornerbook.core.brake.disc",
                    "cornerbook.core.brake.fluid",
                    "cornerbook.core.brake.pads",
                    "cornerbook.core.brake.seizing",
                    "cornerbook.core.lift",
                    "cornerbook.core.tool",
                    "cornerbook.core.torque",
                    "cornerbook.core.tread",
                    "cornerbook.core.tyre",
                    "cornerbook.core.wheelplan",
                    "cornerbook.core.wheelplan.search")
            .layer("car")
            .definedBy("cornerbook.core.car")
            .layer("finding")
            .definedBy("cornerbook.core.finding")
            .layer("judges")
            .definedBy("cornerbook.core..judge", "cornerbook.core.brake.caliper")
            .layer("assess")
            .definedBy("cornerbook.core.assess", "cornerbook.core.release")
            .ensureAllClassesAreContainedInArchitecture()
            .whereLayer("words")
            .mayNotAccessAnyLayer()
            .whereLayer("season")
            .mayOnlyAccessLayers("words")
            .whereLayer("rooms")
            .mayOnlyAccessLayers("words", "season")
            .whereLayer("car")
            .mayOnlyAccessLayers("words", "season", "rooms")
            .whereLayer("finding")
            .mayOnlyAccessLayers("words", "season", "rooms", "car")
            .whereLayer("judges")
            .mayOnlyAccessLayers("words", "season", "rooms", "car", "finding")
            .whereLayer("assess")
            .mayNotBeAccessedByAnyLayer();

    @ArchTest
    static final ArchRule noPackagesStandInACircle =
            slices().matching("cornerbook.core.(**)").should().beFreeOfCycles();

    /** The age of a tyre and the plan of its wheels rest on how long its tread lasts; no other judge asks another room's. */
    @ArchTest
    static final ArchRule judgesAskNoJudgeOfAnotherRoom = slices().matching("cornerbook.core.(*)..judge")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(
                    resideInAnyPackage("cornerbook.core.tyre.judge", "cornerbook.core.wheelplan.judge"),
                    resideInAPackage("cornerbook.core.tread.judge"));

    /** Whoever looks for a file has to find it among few; a room that grows larger is two rooms. */
    @ArchTest
    static void noRoomIsAHall(JavaClasses classes) {
        var files = classes.stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(each -> each.getPackageName().startsWith("cornerbook.core"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
        assertThat(files)
                .isNotEmpty()
                .allSatisfy((room, count) -> assertThat(count).as(room).isLessThanOrEqualTo(MOST_FILES));
    }

    @ArchTest
    static final ArchRule calculatorsAreFinal = classes()
            .that()
            .resideInAPackage("cornerbook.core..")
            .and()
            .areTopLevelClasses()
            .and()
            .areNotInterfaces()
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL);
}
