package cornerbook.app.desk;

import cornerbook.core.corner.Corner;
import cornerbook.words.Catalogue;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;

/** The words that the modules of the bay sheet say by themselves, as one of those modules: whoever takes a tablet up reads in another language, without a link too. */
final class ModuleWords {
    /** Its name among the assets. */
    static final String NAME = "bay-catalogue.mjs";

    private static final String ROOM = "app/bay/modules";

    private ModuleWords() {}

    /** Messages by the tag of the language and their key; JSON is JavaScript (ECMA-262, since its edition of 2019). */
    static byte[] module() {
        var words = new LinkedHashMap<String, Map<String, String>>();
        for (var language : Language.values()) {
            var messages = new LinkedHashMap<>(Catalogue.of(ROOM).texts(language));
            Arrays.stream(Corner.values())
                    .forEach(corner -> messages.put(
                            corner.name(), Reader.DEFAULT.in(language).say(corner)));
            words.put(language.tag(), messages);
        }
        return ("export default " + JsonMapper.shared().writeValueAsString(words) + ";\n")
                .getBytes(StandardCharsets.UTF_8);
    }
}
