package cornerbook.app.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The rules of the house inside app. */
@AnalyzeClasses(packages = "cornerbook.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule onlyTheBookKnowsSql = noClasses()
            .that()
            .resideOutsideOfPackage("cornerbook.app.book..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.sqlite..", "org.flywaydb..");

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
}
