package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.cli.arguments.LanguageChoice;
import cornerbook.words.Language;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of the command line is the option's, else the environment's, and never that of the Java machine. */
class LanguageChoiceTest {
    private static String printed(Map<String, String> environment, String... arguments) {
        var printed = new StringWriter();
        var writer = new PrintWriter(printed);
        Main.run(environment, writer, writer, arguments);
        return printed.toString();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LANG=fr_CA.UTF-8 | FRENCH",
                "LANG=en_CA.UTF-8 | ENGLISH",
                "LANG=C | ENGLISH",
                "LANG=de_DE | ENGLISH",
                "LC_MESSAGES=fr_FR LANG=en_CA | FRENCH",
                "LC_ALL=en_CA LC_MESSAGES=fr_FR LANG=fr_CA | ENGLISH",
                "LC_ALL= LANG=fr | FRENCH",
                "NOTHING=fr | ENGLISH"
            })
    void theEnvironmentSays(String variables, Language expected) {
        var environment = new HashMap<String, String>();
        for (var each : variables.split(" ", -1)) {
            environment.put(each.substring(0, each.indexOf('=')), each.substring(each.indexOf('=') + 1));
        }
        assertThat(LanguageChoice.of(environment)).isEqualTo(expected);
    }

    @Test
    void theOptionOutranksTheEnvironmentWhereverItStands() {
        var french = Map.of("LANG", "fr_CA");
        assertThat(LanguageChoice.of(french, "torque", "--language", "en")).isEqualTo(Language.ENGLISH);
        assertThat(LanguageChoice.of(french, "--language=en", "torque")).isEqualTo(Language.ENGLISH);
        assertThat(LanguageChoice.of(french, "torque", "--language")).isEqualTo(Language.FRENCH);
        assertThat(printed(Map.of(), "--language", "fr", "torque", "130", "--count", "5"))
                .startsWith("Attention : ")
                .contains("Ordre, positions comptées dans le sens horaire à partir du haut : 1 3 5 2 4");
        assertThat(printed(french, "torque", "130", "--count", "5", "--language=en"))
                .startsWith("Mind: ");
        assertThat(printed(Map.of(), "--language", "de", "check")).contains("--language cannot be de");
    }

    @Test
    void theLanguageOfTheJavaMachineDoesNotMatter() {
        var before = Locale.getDefault();
        Locale.setDefault(Locale.CANADA_FRENCH);
        try {
            assertThat(printed(Map.of(), "--help"))
                    .contains("Usage:", "Exit codes:")
                    .doesNotContain("Utilisation");
        } finally {
            Locale.setDefault(before);
        }
    }

    /** What picocli itself would say is English, and "null" stands where a description is missing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "serve",
                "demo",
                "assess",
                "handover",
                "import",
                "export",
                "backup",
                "restore",
                "learn",
                "reread",
                "calibrate",
                "climate",
                "check",
                "completion",
                "lift",
                "pressure",
                "torque",
                "tyre",
                "cost",
                "renew",
                "battery",
                "burnish",
                "drag",
                "guides",
                "changeover"
            })
    void theHelpOfEachVerbIsFrench(String verb) {
        var arguments = verb.isEmpty() ? new String[] {"--help"} : new String[] {verb, "--help"};
        assertThat(printed(Map.of("LANG", "fr_CA"), arguments))
                .startsWith("Utilisation : ")
                .contains("Afficher cette aide et quitter.", "Codes de sortie :")
                .doesNotContain(
                        "null", "bundle", "Usage", "Show", "Print", "verb-", "option-", "param-", "FILE", "FOLDER");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "assess | Il manque : FICHIER.",
                "polish | Inconnu : polish.",
                "calibrate | Il manque : --to.",
                "serve --port many | --port ne peut pas être many.",
                "serve --port 1 --port 2 | --port est donné deux fois, attendu : une seule.",
                "torque 130 --length 450 | --adapter : manque :",
                "torque 130 --length 20 --adapter 10 | 20 mm, attendu : 100 à 2 000 mm.",
                "export --data x | Donner l’un de ceux-ci : un VÉHICULE, --all",
                "check --data absent | Il n’y a pas de registre dans absent, attendu : un registre; voir --data."
            })
    void refusalsAreFrench(String arguments, String part) {
        assertThat(printed(Map.of("LANG", "fr_CA"), arguments.split(" ", -1))).contains(part);
    }
}
