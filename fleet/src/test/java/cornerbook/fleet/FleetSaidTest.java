package cornerbook.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FleetSaidTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);

    private static final List<FleetSaid> ALL = List.of(
            new FleetSaid.Usage(),
            new FleetSaid.NoDay("30.11.2026"),
            new FleetSaid.NoCars("/cars"),
            new FleetSaid.NoClimate("climate.csv"),
            new FleetSaid.IsThere("/tables"),
            new FleetSaid.NoText("a.json"),
            new FleetSaid.Unreadable("car-1"),
            new FleetSaid.NoVisit("car-1"),
            new FleetSaid.Twice("car-1"),
            new FleetSaid.ManyTwice(Night.MOST_TWICE),
            new FleetSaid.Fault("visit-1", "ArithmeticException"),
            new FleetSaid.TooManyCars(MadeCars.MOST),
            new FleetSaid.Made(1200, "/cars"),
            new FleetSaid.NoNight("/tables"),
            new FleetSaid.LaterNight("/tables", new Day(TODAY.plusDays(1)), new Day(TODAY)),
            new FleetSaid.OtherProgram("/tables"),
            new FleetSaid.DoneSince(12, 2, 3, Amount.of(61, "s"), "/tables"),
            new FleetSaid.Done(12, 3, Amount.of(61, "s"), "/tables"));

    @Test
    void allIsSaidInEachLanguage() {
        assertThat(ALL.stream().map(Object::getClass))
                .containsExactlyInAnyOrderElementsOf(Arrays.asList(FleetSaid.class.getPermittedSubclasses()));
        for (var language : Language.values()) {
            var reader = Reader.DEFAULT.in(language);
            assertThat(ALL).allSatisfy(said -> assertThat(reader.say(said)).endsWith("."));
        }
        assertThat(Reader.DEFAULT.in(Language.FRENCH).say(ALL.getLast()))
                .startsWith("12 véhicules jugés en 61")
                .contains("3 mis de côté");
    }

    @Test
    void whatWasAskedForIsRead() {
        assertThat(Arguments.parse(TODAY, "cars", "--to", "tables"))
                .isEqualTo(new Arguments("cars", 0, "tables", TODAY, null, 0, null, null));
        assertThat(Arguments.parse(TODAY, "--day", "2026-10-01", "--make", "500", "--to", "cars"))
                .isEqualTo(new Arguments(null, 500, "cars", LocalDate.of(2026, 10, 1), null, 0, null, null));
        assertThat(Arguments.parse(TODAY, "cars", "--keep-learned", "--since", "last", "--to", "tables"))
                .isEqualTo(new Arguments("cars", 0, "tables", TODAY, new Arguments.Since("last", true), 0, null, null));
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        refused(new FleetSaid.Usage());
        refused(new FleetSaid.Usage(), "cars");
        refused(new FleetSaid.Usage(), "--to", "tables");
        refused(new FleetSaid.Usage(), "cars", "more", "--to", "tables");
        refused(new FleetSaid.Usage(), "cars", "--to", "tables", "--to", "others");
        refused(new FleetSaid.Usage(), "cars", "--make", "5", "--to", "tables");
        refused(new FleetSaid.Usage(), "--make", "-5", "--to", "tables");
        refused(new FleetSaid.Usage(), "cars", "--to");
        refused(new FleetSaid.Usage(), "cars", "--to", "tables", "--keep-learned");
        refused(new FleetSaid.Usage(), "--make", "5", "--to", "cars", "--since", "last");
        refused(new FleetSaid.Usage(), "cars", "--to", "tables", "--calibrate", "10001");
        refused(new FleetSaid.Usage(), "--make", "5", "--to", "cars", "--sign-with", "key");
        refused(
                new FleetSaid.Usage(),
                "cars",
                "--to",
                "tables",
                "--since",
                "last",
                "--keep-learned",
                "--sign-with",
                "key");
        refused(new FleetSaid.NoDay("30.11.2026"), "cars", "--to", "tables", "--day", "30.11.2026");
    }

    private static void refused(FleetSaid why, String... words) {
        assertThatThrownBy(() -> Arguments.parse(TODAY, words))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isEqualTo(why));
    }
}
