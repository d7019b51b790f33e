package cornerbook.core.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.classfile.ClassFile;
import java.lang.classfile.CodeModel;
import java.lang.classfile.MethodModel;
import java.lang.classfile.constantpool.StringEntry;
import java.lang.classfile.instruction.ConstantInstruction.LoadConstantInstruction;
import java.lang.classfile.instruction.InvokeInstruction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Core has no words and no locale: what it finds out is data, and the same on every machine. That no class holds a sentence is seen by
 * what it may make words of: records of {@link Said}, whose words stand elsewhere, and what is quoted.
 */
@AnalyzeClasses(packages = "cornerbook.core", importOptions = ImportOption.DoNotIncludeTests.class)
class NoWordsNoLocaleTest {
    /** {@code %s} writes a value as the value writes itself; every other conversion asks the machine for its digits and signs. */
    private static final Pattern BY_LOCALE = Pattern.compile("%(?![s%n]|$)");

    /** In a citation, numbers stand between the words; in a formula, signs. */
    private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,} \\p{L}{2,} \\p{L}{2,}");

    @ArchTest
    static final ArchRule coreKnowsNoWords = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("cornerbook.words..", "com.ibm.icu..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.ResourceBundle");

    @ArchTest
    static final ArchRule coreKnowsNoPlaceAndNoHour = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching("java\\.time\\.(Clock|Instant|LocalDateTime|LocalTime|Offset.*|Zone.*|zone\\..*)")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Calendar|Date|TimeZone)");

    @ArchTest
    static final ArchRule coreAsksForNoLocale = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.text..", "java.time.format..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.(Currency|Formatter|Scanner)")
            .orShould()
            .accessTargetWhere(describe("it follows the locale of the machine", NoWordsNoLocaleTest::followsTheMachine));

    /** Letters of tags, units and codes are of no language: {@code Locale.ROOT}, and nothing else of locales. */
    private static boolean followsTheMachine(JavaAccess<?> access) {
        var target = access.getTarget();
        var parameters = target instanceof CodeUnitAccessTarget called ? called.getRawParameterTypes() : List.<JavaClass>of();
        var name = target.getName();
        if (target.getOwner().isEquivalentTo(String.class)) {
            return Set.of("toLowerCase", "toUpperCase").contains(name) && parameters.isEmpty()
                    || name.equals("format") && parameters.getFirst().isEquivalentTo(String.class);
        }
        return target.getOwner().isEquivalentTo(Locale.class) && !name.equals("ROOT");
    }

    @ArchTest
    static void whatIsFormattedIsTheSameOnEveryMachine(JavaClasses classes) {
        var faults = new TreeSet<String>();
        for (var method : methods(classes)) {
            if (calls(method, "java/lang/String", "formatted") && !calls(method, "java/lang/String", "format")) {
                texts(method).stream()
                        .filter(text -> BY_LOCALE.matcher(text).find())
                        .forEach(text -> faults.add(place(method) + ": \"" + text + "\""));
            }
        }
        assertThat(faults).as("conversions other than %%s").isEmpty();
    }

    @ArchTest
    static void whatIsQuotedIsNoSentence(JavaClasses classes) {
        var faults = new TreeSet<String>();
        for (var method : methods(classes)) {
            if (calls(method, Said.class.getName().replace('.', '/'), "verbatim")) {
                texts(method).stream()
                        .filter(text -> SENTENCE.matcher(text).find())
                        .forEach(text -> faults.add(place(method) + ": \"" + text + "\""));
            }
        }
        assertThat(faults).as("words beside Said.verbatim").isEmpty();
    }

    private static List<MethodModel> methods(JavaClasses classes) {
        var methods = new ArrayList<MethodModel>();
        for (var each : classes) {
            try {
                var file = Path.of(each.getSource().orElseThrow().getUri());
                methods.addAll(ClassFile.of().parse(Files.readAllBytes(file)).methods());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertThat(methods).isNotEmpty();
        return methods;
    }

    private static boolean calls(MethodModel method, String owner, String name) {
        return method.code().stream()
                .flatMap(CodeModel::elementStream)
                .anyMatch(element -> element instanceof InvokeInstruction call
                        && call.owner().asInternalName().equals(owner)
                        && call.name().equalsString(name));
    }

    private static List<String> texts(MethodModel method) {
        return method.code().stream()
                .flatMap(CodeModel::elementStream)
                .mapMulti((element, to) -> {
                    if (element instanceof LoadConstantInstruction constant
                            && constant.constantEntry() instanceof StringEntry text) {
                        to.accept(text.stringValue());
                    }
                })
                .map(String.class::cast)
                .toList();
    }

    private static String place(MethodModel method) {
        return method.parent().orElseThrow().thisClass().asInternalName() + "." + method.methodName();
    }
}
