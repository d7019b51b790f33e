package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.photo.Photo;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The types by which the modules of the bay sheet are checked are those of what the server sends. */
class BayTypesTest {
    private static final Path TYPES = Path.of("src/main/types/bay.d.ts");
    private static final Pattern MEMBER = Pattern.compile("^    (\\w+\\??):", Pattern.MULTILINE);

    static Stream<Class<?>> sent() {
        var nested =
                Stream.of(BaySheet.class, BayState.class).flatMap(type -> Arrays.stream(type.getDeclaredClasses()));
        return Stream.concat(
                nested.filter(Class::isRecord),
                Stream.of(
                        BaySheet.class,
                        BayState.class,
                        Me.class,
                        Me.Chosen.class,
                        EntryAnswer.class,
                        Photo.class,
                        Departure.Reason.class));
    }

    @ParameterizedTest
    @MethodSource("sent")
    void eachRecordHasAnInterfaceWithItsComponents(Class<?> type) throws Exception {
        var name = type.getSimpleName().replaceFirst("^(Bay|Entry)(?=.)", "");
        var body = Pattern.compile("interface " + name + " \\{\n(.*?)\n  }", Pattern.DOTALL)
                .matcher(Files.readString(TYPES));
        assertThat(body.find()).as(name).isTrue();
        assertThat(MEMBER.matcher(body.group(1)).results().map(member -> member.group(1)))
                .containsExactlyElementsOf(Arrays.stream(type.getRecordComponents())
                        .map(BayTypesTest::member)
                        .toList());
    }

    /** What may be absent is left out. */
    private static String member(RecordComponent component) {
        boolean mayBeAbsent = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return component.getName() + (mayBeAbsent ? "?" : "");
    }

    @Test
    void eachKindOfStepIsKnown() throws Exception {
        var kinds =
                Arrays.stream(BaySheet.Kind.values()).map("\"%s\""::formatted).collect(Collectors.joining(" | "));
        assertThat(Files.readString(TYPES)).contains("type Kind = " + kinds + ";");
        assertThat(List.of(BaySheet.Seen.values())).hasToString("[CORNER, CAR]");
    }
}
