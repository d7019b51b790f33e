package cornerbook.core.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

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
import java.lang.classfile.CodeElement;
import java.lang.classfile.CodeModel;
import java.lang.classfile.MethodModel;
import java.lang.classfile.constantpool.StringEntry;
import java.lang.classfile.instruction.ConstantInstruction.LoadConstantInstruction;
import java.lang.classfile.instruction.InvokeInstruction;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Core has no words and no locale: what it finds out is data, and the same on every machine. That no class holds a sentence is seen by
 * what it may make words of: records of {@link Said}, whose words stand elsewhere, and what is quoted.
 */
@AnalyzeClasses(packages = "cornerbook.core", importOptions = ImportOption.DoNotIncludeTests.class)
class NoWordsNoLocaleTest {
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
            .accessTargetWhere(describe(
                    "another locale than that of no language, which letters of tags, units and codes are in",
                    access -> access.getTargetOwner().isEquivalentTo(Locale.class)
                            && !access.getName().equals("ROOT")));

    @ArchTest
    static void whatIsQuotedIsNoSentence(JavaClasses classes) {
        var faults = new TreeSet<String>();
        for (var each : classes) {
            for (var method : methods(each)) {
                var elements =
                        method.code().stream().flatMap(CodeModel::elementStream).toList();
                if (elements.stream().anyMatch(NoWordsNoLocaleTest::quotes)) {
                    elements.stream()
                            .<String>mapMulti(NoWordsNoLocaleTest::text)
                            .filter(text -> SENTENCE.matcher(text).find())
                            .forEach(text -> faults.add(each.getName() + ": \"" + text + "\""));
                }
            }
        }
        assertThat(faults).as("words in a method that calls Said.verbatim").isEmpty();
    }

    private static List<MethodModel> methods(JavaClass type) {
        try (var bytes = type.getSource().orElseThrow().getUri().toURL().openStream()) {
            return ClassFile.of().parse(bytes.readAllBytes()).methods();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean quotes(CodeElement element) {
        return element instanceof InvokeInstruction call
                && call.owner().asInternalName().equals("cornerbook/core/say/Said")
                && call.name().equalsString("verbatim");
    }

    private static void text(CodeElement element, Consumer<String> to) {
        if (element instanceof LoadConstantInstruction constant
                && constant.constantEntry() instanceof StringEntry text) {
            to.accept(text.stringValue());
        }
    }
}
