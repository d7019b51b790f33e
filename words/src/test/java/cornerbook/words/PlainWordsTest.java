package cornerbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.DataGap;
import cornerbook.core.car.Scale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read is in the words of the trade: none of the models' own, none of the program's inside. */
class PlainWordsTest {
    private static final Path WORDS = Path.of("src/main/resources/cornerbook/words");

    private static final Map<Language, Pattern> FORBIDDEN = Map.of(
            Language.ENGLISH,
            Pattern.compile(
                    "(?iU)turnbull|weibull|bayes|\\bbands?\\b|\\bpriors?\\b|posterior|\\blearn\\w*|hazard|\\bhyper"
                            + "|likelihood|covariate|standard errors?|jurisdiction|limits? file|\\bnull\\b|\\bdocs/|\\bJSON\\b"
                            + "|corner.rate|(?:thickness|wear|rate|statistical|forecast)\\W+models?\\b|gaussian|harmonics?\\b"
                            + "|least squares|integrated over|\\bvectors?\\b|variance|standard deviation|percentile|quantile"
                            + "|confidence (?:interval|level)|regression|hypothes[ie]s|distributions?\\b|algorithm"),
            Language.FRENCH,
            Pattern.compile(
                    "(?iU)turnbull|weibull|bayes|\\bbandes?\\b(?! de roulement)|\\ba priori\\b|\\ba posteriori\\b"
                            + "|\\bappr(is|ise|ises|end|endre|ennent)\\b|\\bhyper|vraisemblance|covariable|erreurs? types?"
                            + "|juridiction|fichier des limites|\\bnull\\b|\\bdocs/|\\bJSON\\b"
                            + "|modèles? (?:d’(?:usure|épaisseur)|de taux|statistiques?)|gaussien|harmoniques?\\b|moindres carrés"
                            + "|intégrée? sur|\\bvecteurs?\\b|variance|écarts?[- ]types?|centile|quantile|intervalle de confiance"
                            + "|régression|hypothèses?|distributions?\\b|algorithme"));

    /** A room, or one of its messages, where such a word is the right one. */
    private static final Map<String, String> ALLOWED = Map.ofEntries(
            Map.entry("app/calibration", "a page about the forecasts themselves, made by the verb calibrate"),
            Map.entry("app/cli", "the command line names files, formats and what the verb learn does"),
            Map.entry("app/cli/arguments", "the same"),
            Map.entry("app/exchange", "who writes a visit file reads of its format"),
            Map.entry("app/bench#Label.PRESSURE_LEARNING", "a car learns its pressure sensors, as the trade says"),
            Map.entry("app/bench#Note.PRESSURE_SENSOR", "the same"),
            Map.entry("app/desk/car#Learns", "the same"),
            Map.entry("core/air#Computed.SENSORS_TO_LEARN", "the same"),
            Map.entry("core/air#Caution.SENSOR_USELESS", "the same"),
            Map.entry("core/air#ToLearn.LOOK_UP", "the same"),
            Map.entry("core/air#ToLearn.BY_ITSELF", "the same"),
            Map.entry("core/air#ToLearn.BY_DRIVING", "the same"),
            Map.entry("core/air#SensorUseless", "the same"));

    /** The names of facts stand in braces and are not read; options of the command line are typed as they are. */
    private static final Pattern NOT_READ = Pattern.compile("\\{\\w+[,}]|--[a-z-]+");

    private static final Pattern SOURCE_MARK =
            Pattern.compile("(?iU)from memory|common practice|de mémoire|pratique courante");

    @Test
    void nobodyReadsTheModelsOwnWords() throws IOException {
        assertThat(found(FORBIDDEN, room -> true)).isEmpty();
    }

    /** How well a fact is known is the technician's question; what the customer takes home says what to do. */
    @Test
    void customersPaperSaysNothingOfSources() throws IOException {
        assertThat(found(
                        Map.of(Language.ENGLISH, SOURCE_MARK, Language.FRENCH, SOURCE_MARK),
                        room -> room.startsWith("app/sheet")))
                .isEmpty();
    }

    /** An exception that is not needed any more is struck. */
    @Test
    void eachExceptionIsNeeded() {
        for (var place : ALLOWED.keySet()) {
            var room = place.replaceFirst("#.*", "");
            var texts = Catalogue.of(room);
            assertThat(FORBIDDEN.entrySet().stream()
                            .flatMap(words -> texts.texts(words.getKey()).entrySet().stream()
                                    .filter(text -> !place.contains("#") || place.endsWith("#" + text.getKey()))
                                    .filter(text -> isSaid(words.getValue(), text.getValue()))))
                    .as(place)
                    .isNotEmpty();
        }
    }

    /** A gap of a car's data is told by itself, before the link where it is given. */
    @Test
    void aGapBeginsAsASentence() {
        assertThat(Arrays.stream(Language.values())
                        .flatMap(language -> Arrays.stream(DataGap.Part.values())
                                .map(part -> Reader.DEFAULT.in(language).say(new DataGap(part, null)))))
                .noneMatch(gap -> Character.isLowerCase(gap.charAt(0)));
    }

    /** A word of these scales follows the name of any measure, feminine or plural too: "Fissures : signe marqué". */
    @Test
    void frenchWordsOfAScaleNeedNoAgreement() {
        var french = Reader.DEFAULT.in(Language.FRENCH);
        assertThat(Stream.of(Scale.MOVEMENT, Scale.AMOUNT, Scale.CONDITION, Scale.STATE)
                        .flatMap(scale -> scale.told().stream())
                        .map(french::say))
                .noneMatch(word -> word.matches("(?U)(usé|endommagé|grippé|marqué|léger|dur|libre|dangereux|aucun)"));
    }

    private static List<String> found(Map<Language, Pattern> forbidden, Predicate<String> rooms) throws IOException {
        var faults = new ArrayList<String>();
        try (var files = Files.walk(WORDS)) {
            for (var file : files.filter(each -> each.toString().endsWith(".properties"))
                    .sorted()
                    .toList()) {
                var room = WORDS.relativize(file).toString().replace(".properties", "");
                if (rooms.test(room) && !ALLOWED.containsKey(room)) {
                    forbidden.forEach((language, words) -> Catalogue.of(room)
                            .texts(language)
                            .forEach((key, text) -> {
                                if (!ALLOWED.containsKey(room + "#" + key) && isSaid(words, text)) {
                                    faults.add("%s, %s.%s: %s".formatted(room, key, language.tag(), text));
                                }
                            }));
                }
            }
        }
        return faults;
    }

    private static boolean isSaid(Pattern words, String text) {
        return words.matcher(NOT_READ.matcher(text).replaceAll(" ")).find();
    }
}
