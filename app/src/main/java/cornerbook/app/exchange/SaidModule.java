package cornerbook.app.exchange;

import cornerbook.core.say.Said;
import cornerbook.words.Facts;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.BeanDescription;
import tools.jackson.databind.JavaType;
import tools.jackson.databind.SerializationConfig;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.BeanPropertyWriter;
import tools.jackson.databind.ser.ValueSerializerModifier;
import tools.jackson.databind.util.NameTransformer;

/**
 * Writes what is said as JSON twice: under its name the words, and beside it, under the name with "Said", the same for programs: which
 * sentence it is, its facts, and the words again. Constants stay their names.
 */
final class SaidModule extends SimpleModule {
    private static final long serialVersionUID = 1;

    /** In the words of this reader. */
    SaidModule(Reader reader) {
        setSerializerModifier(new InTwoForms(reader));
    }

    private static final class InTwoForms extends ValueSerializerModifier {
        private static final long serialVersionUID = 1;

        private final transient Reader reader;

        InTwoForms(Reader reader) {
            this.reader = reader;
        }

        @Override
        public List<BeanPropertyWriter> changeProperties(
                SerializationConfig config, BeanDescription.Supplier bean, List<BeanPropertyWriter> properties) {
            var changed = new ArrayList<BeanPropertyWriter>();
            for (var property : properties) {
                changed.add(property);
                if (isSaid(property.getType()) || isSaid(property.getType().getContentType())) {
                    var beside = property.rename(NameTransformer.simpleTransformer("", "Said"));
                    property.assignSerializer(new Writing(reader, false));
                    beside.assignSerializer(new Writing(reader, true));
                    changed.add(beside);
                }
            }
            return changed;
        }

        private static boolean isSaid(@Nullable JavaType type) {
            return type != null && type.isTypeOrSubTypeOf(Said.class) && !type.isEnumType();
        }
    }

    /** Writes one thing that is said, or several. */
    private static final class Writing extends ValueSerializer<Object> {
        private final Reader reader;
        private final boolean forPrograms;

        Writing(Reader reader, boolean forPrograms) {
            this.reader = reader;
            this.forPrograms = forPrograms;
        }

        @Override
        public void serialize(Object value, JsonGenerator json, SerializationContext context) {
            json.writePOJO(form(value));
        }

        private Object form(Object value) {
            return switch (value) {
                case List<?> several -> several.stream().map(this::form).toList();
                case Said said -> forPrograms ? new ForPrograms(Facts.of(said), reader.say(said)) : reader.say(said);
                default -> value;
            };
        }
    }

    private record ForPrograms(String code, Map<String, Object> facts, String words) {
        ForPrograms(Facts facts, String words) {
            this(facts.code(), facts.facts(), words);
        }
    }
}
