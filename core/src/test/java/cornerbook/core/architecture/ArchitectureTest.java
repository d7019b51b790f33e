package cornerbook.core.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
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
            .callMethodWhere(describe(
                    "the day or the hour is asked for",
                    call -> call.getTargetOwner().getPackageName().equals("java.time")
                            && call.getName().equals("now")))
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
                    "cornerbook.core.brake.drag",
                    "cornerbook.core.brake.fluid",
                    "cornerbook.core.brake.interval",
                    "cornerbook.core.brake.pads",
                    "cornerbook.core.brake.seizing",
                    "cornerbook.core.changeover",
                    "cornerbook.core.coming",
                    "cornerbook.core.cost",
                    "cornerbook.core.cost.renew",
                    "cornerbook.core.days",
                    "cornerbook.core.days.plan",
                    "cornerbook.core.lift",
                    "cornerbook.core.order",
                    "cornerbook.core.price",
                    "cornerbook.core.reread",
                    "cornerbook.core.store",
                    "cornerbook.core.tool",
                    "cornerbook.core.torque",
                    "cornerbook.core.tread",
                    "cornerbook.core.tread.learn",
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

    /** The age of a tyre, the plan of its wheels and what to order rest on how long its tread lasts; no other judge asks another room's. */
    @ArchTest
    static final ArchRule judgesAskNoJudgeOfAnotherRoom = slices().matching("cornerbook.core.(*)..judge")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(
                    resideInAnyPackage(
                            "cornerbook.core.order.judge",
                            "cornerbook.core.tyre.judge",
                            "cornerbook.core.wheelplan.judge"),
                    resideInAPackage("cornerbook.core.tread.judge"));

    private static final String[] ROOMS = {
        "cornerbook.core.air..",
        "cornerbook.core.battery..",
        "cornerbook.core.brake..",
        "cornerbook.core.cost..",
        "cornerbook.core.lift..",
        "cornerbook.core.order..",
        "cornerbook.core.reread..",
        "cornerbook.core.sight..",
        "cornerbook.core.torque..",
        "cornerbook.core.tread..",
        "cornerbook.core.tyre..",
        "cornerbook.core.wheelplan.."
    };

    /** Where core names a room outside the rooms, and why it has to. */
    private static final Map<String, List<String>> NAMING_A_ROOM = Map.of(
            "the list of the judges",
            List.of("assess.Assessor", "assess.BrakeFindings"),
            "faults of several rooms that make each other worse",
            List.of("assess.BrakesTogether"),
            "the answers that an assessment hands out beside its findings",
            List.of("assess.Assessment"),
            "what the book learns of all cars",
            List.of("assess.CarShare", "assess.Learner", "finding.Knowledge", "finding.OthersKnowledge"),
            "what an entry must not contradict",
            List.of("assess.IdentityRules", "assess.VisitRules"),
            "how far a tyre ran at each corner, as the tread counts it",
            List.of("finding.RunHistory"),
            "the shop's tools are of no room, but a hoist has its arms",
            List.of("tool.ShopTool"),
            "a vehicle is made of its rooms' values",
            List.of("car.AxleSpecification", "car.Tyre", "car.Vehicle", "car.VehicleDetails", "car.WheelDetails"),
            "which of these values nobody has looked up, and which are given from another vehicle",
            List.of("assess.SameKind", "car.DataGap"),
            "what this car's equipment leaves nothing to read of",
            List.of("car.Caution", "car.Measure", "car.ServiceSteps"));

    /** Halls carry what any room says, and name none. */
    @ArchTest
    static void hallsNameNoRoom(JavaClasses classes) {
        assertThat(classes.stream()
                        .filter(resideInAnyPackage(ROOMS).negate())
                        .filter(each -> each.getDirectDependenciesFromSelf().stream()
                                .map(Dependency::getTargetClass)
                                .anyMatch(resideInAnyPackage(ROOMS)))
                        .map(each -> each.getName()
                                .replaceFirst("cornerbook\\.core\\.", "")
                                .replaceFirst("\\$.*", ""))
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(
                        NAMING_A_ROOM.values().stream().flatMap(List::stream).toList());
    }

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
