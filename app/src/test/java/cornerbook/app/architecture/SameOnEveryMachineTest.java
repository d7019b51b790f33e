package cornerbook.app.architecture;

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.classfile.ClassFile;
import java.lang.classfile.CodeModel;
import java.lang.classfile.MethodModel;
import java.lang.classfile.constantpool.StringEntry;
import java.lang.classfile.instruction.ConstantInstruction.LoadConstantInstruction;
import java.lang.classfile.instruction.InvokeInstruction;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What is computed, stored and written does not follow the locale of the machine, in no module: people have a {@code Reader}. */
@AnalyzeClasses(
        packages = {"cornerbook.core", "cornerbook.words", "cornerbook.app"},
        importOptions = ImportOption.DoNotIncludeTests.class)
class SameOnEveryMachineTest {
    /** {@code %s} writes a value as it writes itself, {@code %x} is hexadecimal anywhere; others ask the machine for its digits. */
    private static final Pattern BY_LOCALE = Pattern.compile("%[-+,.(#0-9]*[deEfgGaA]");

    @ArchTest
    static final ArchRule nothingFollowsTheLocaleOfTheMachine = noClasses()
            .should()
            .accessTargetWhere(
                    describe("it follows the locale of the machine", SameOnEveryMachineTest::followsTheMachine));

    private static boolean followsTheMachine(JavaAccess<?> access) {
        var target = access.getTarget();
        var parameters =
                target instanceof CodeUnitAccessTarget called ? called.getRawParameterTypes() : List.<JavaClass>of();
        var name = target.getName();
        if (target.getOwner().isEquivalentTo(String.class)) {
            return (Set.of("toLowerCase", "toUpperCase").contains(name) && parameters.isEmpty())
                    || (name.equals("format") && parameters.getFirst().isEquivalentTo(String.class));
        }
        return target.getOwner().isEquivalentTo(Locale.class) && name.equals("getDefault");
    }

    /** By the constants of each method that formats; one that names its locale may say what it likes. */
    @ArchTest
    static void whatIsFormattedIsTheSame(JavaClasses classes) {
        var faults = new TreeSet<String>();
        for (var each : classes) {
            for (var method : methods(each)) {
                var calls = calls(method);
                if (calls.contains("formatted") && !calls.contains("format")) {
                    texts(method)
                            .filter(text -> BY_LOCALE.matcher(text).find())
                            .forEach(text -> faults.add(each.getName() + ": \"" + text + "\""));
                }
            }
        }
        assertThat(faults).as("conversions that follow the locale").isEmpty();
    }

    private static List<MethodModel> methods(JavaClass type) {
        try (var bytes = type.getSource().orElseThrow().getUri().toURL().openStream()) {
            return ClassFile.of().parse(bytes.readAllBytes()).methods();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Names of the methods of String that it calls. */
    private static List<String> calls(MethodModel method) {
        return method.code().stream()
                .flatMap(CodeModel::elementStream)
                .<String>mapMulti((element, to) -> {
                    if (element instanceof InvokeInstruction call
                            && call.owner().asInternalName().equals("java/lang/String")) {
                        to.accept(call.name().stringValue());
                    }
                })
                .toList();
    }

    private static Stream<String> texts(MethodModel method) {
        return method.code().stream().flatMap(CodeModel::elementStream).mapMulti((element, to) -> {
            if (element instanceof LoadConstantInstruction constant
                    && constant.constantEntry() instanceof StringEntry text) {
                to.accept(text.stringValue());
            }
        });
    }
}
