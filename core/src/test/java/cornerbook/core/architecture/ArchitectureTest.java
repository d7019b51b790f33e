package cornerbook.core.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The rules of the house inside core. */
@AnalyzeClasses(packages = "cornerbook", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
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

    @ArchTest
    static final ArchRule onlyVisitKnowsVisit = noClasses()
            .that()
            .resideOutsideOfPackage("cornerbook.core.visit..")
            .and()
            .resideInAPackage("cornerbook.core..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("cornerbook.core.visit..");

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
