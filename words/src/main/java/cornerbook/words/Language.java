package cornerbook.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language that the catalogues have, with the habits of writing of the country where the demo's shop is. */
public enum Language {
    ENGLISH("English", Locale.CANADA),
    FRENCH("Français", Locale.CANADA_FRENCH);

    private final String title;
    private final Locale locale;

    Language(String title, Locale locale) {
        this.title = title;
        this.locale = locale;
    }

    /** Its own name for itself. */
    public String title() {
        return title;
    }

    /** The tag of the language (BCP 47) without a country: "fr". */
    public String tag() {
        return locale.getLanguage();
    }

    /** Its habits of writing dates and numbers. */
    public Locale locale() {
        return locale;
    }

    /** By a tag such as "fr", "fr-CA" or "fr_CA.UTF-8"; empty where no catalogue has that language. */
    public static Optional<Language> find(String tag) {
        var language = tag.strip().toLowerCase(Locale.ROOT).split("[-_.@;]", 2)[0];
        return Arrays.stream(values())
                .filter(each -> each.tag().equals(language))
                .findFirst();
    }
}
