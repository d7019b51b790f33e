package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarFormTest {
    private static final Pattern UNIT = Pattern.compile("bare number in ([^.]+)\\.$");

    @Test
    void aFieldIsExplainedAndMeasuredAsTheSchemaOfTheFileHasIt() {
        for (var field : fields()) {
            var description = description(field);
            if (description.isEmpty()) {
                continue;
            }
            assertThat(InEnglish.say(field.hint()))
                    .as(field.pointer())
                    .isEqualTo(description
                            .replaceFirst(" A text with its unit.*", "")
                            .replaceFirst(" Year-month-day\\.", ""));
            var unit = UNIT.matcher(description);
            assertThat(field.unit()).as(field.pointer()).isEqualTo(unit.find() ? unit.group(1) : "");
        }
    }

    @Test
    void everyFieldHasItsNameAndItsWordsInBothLanguages() {
        var french = Reader.DEFAULT.in(Language.FRENCH);
        for (var field : fields()) {
            assertThat(french.say(field.label())).isNotBlank();
            assertThat(french.say(field.hint())).isNotBlank();
            for (var choice : field.choices()) {
                // A language is told by its own name, everything else by the word of the file.
                assertThat(InEnglish.say(choice.label()))
                        .isEqualTo(
                                field.pointer().equals("/customer/language")
                                        ? Language.find(choice.word())
                                                .map(Language::title)
                                                .orElseThrow()
                                        : choice.word());
                assertThat(french.say(choice.label())).isNotBlank();
            }
        }
    }

    /** A share is a part of a whole; people write it in percent, too. */
    @ParameterizedTest
    @CsvSource({"48, 0.48", "48 %, 0.48", "0.48, 0.48", "'0,48', 0.48"})
    void aShareMayBeWrittenInPercent(String written, double share) {
        assertThat(CarForm.share(written)).isEqualTo(String.valueOf(share));
    }

    @Test
    void everyItemIsAField() {
        assertThat(new HashSet<>(fields().stream().map(CarField::item).toList()))
                .containsExactlyInAnyOrder(CarItem.values());
    }

    /** A small car with drums behind is asked for neither pads nor discs there, and in front for no drum. */
    @Test
    void whatADiscBrakeNeedsIsSparedByWhateverIsTypedOfADrum() {
        for (var axle : List.of("frontAxle", "rearAxle")) {
            var brake = "/vehicle/" + axle + "/brake";
            assertThat(fields())
                    .filteredOn(field ->
                            field.group().equals(brake) && !field.insteadOf().isEmpty())
                    .allSatisfy(field -> {
                        assertThat(field.required()).isTrue();
                        assertThat(field.insteadOf())
                                .containsExactlyInAnyOrder(
                                        brake + "/drumNew",
                                        brake + "/drumDiscard",
                                        brake + "/liningNew",
                                        brake + "/liningMinimum");
                    })
                    .extracting(CarField::name)
                    .containsExactlyInAnyOrder(
                            "caliper",
                            "padNew",
                            "padMinimum",
                            "discNew",
                            "discMinimum",
                            "runoutLimit",
                            "thicknessVariationLimit");
            assertThat(fields())
                    .filteredOn(
                            field -> field.group().equals(brake) && field.name().startsWith("drum"))
                    .hasSize(2)
                    .noneMatch(CarField::required);
        }
    }

    private static List<CarField> fields() {
        var fields = new ArrayList<>(CarForm.fields());
        fields.addAll(CarForm.setFields(0));
        fields.addAll(CarForm.wheelFields(0, 0));
        return fields;
    }

    /** What the schema says of a field; empty for the tag of a new set, which the file does not have. */
    private static String description(CarField field) {
        var node = VisitFileSchema.node();
        for (var part : field.pointer().substring(1).split("/", -1)) {
            var inside = part.matches("\\d+")
                    ? node.path("items")
                    : node.path("properties").path(part);
            var reference = inside.path("$ref").asString("");
            node = reference.isEmpty() || reference.endsWith("/quantity")
                    ? inside
                    : VisitFileSchema.node().at(reference.substring(1));
        }
        return node.path("description").asString("");
    }
}
