package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SetSeasonsTest {
    private static final LocalDate FITTED = LocalDate.of(2026, 11, 25);

    /** Driven day by day, with the change-over days written out: 15 April off, 20 October on. */
    @Test
    void dayAtADistanceIsTheDayThatTheWheelsHaveRunIt() {
        var seasons = new SetSeasons(SeasonKind.WINTER, FITTED, 10, ChangeOver.USUAL);
        var day = FITTED;
        for (double distanceKm = 0; distanceKm < 6000; distanceKm += 10) {
            assertThat(seasons.dayAt(distanceKm + 5)).isEqualTo(day);
            day = day.plusDays(1);
            if (day.getMonthValue() == 4 && day.getDayOfMonth() == 15) {
                day = LocalDate.of(day.getYear(), 10, 20);
            }
        }
    }

    @Test
    void seasonsFollowEachOtherAndAreAsLongAsTheirDays() {
        assertThat(new SetSeasons(SeasonKind.SUMMER, LocalDate.of(2027, 4, 18), 40, ChangeOver.USUAL).first(2))
                .extracting(SetSeasons.Season::from, SetSeasons.Season::until)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(LocalDate.of(2027, 4, 18), LocalDate.of(2027, 10, 20)),
                        org.assertj.core.groups.Tuple.tuple(LocalDate.of(2028, 4, 15), LocalDate.of(2028, 10, 20)));
        assertThat(new SetSeasons(SeasonKind.ALL_SEASON, FITTED, 40, ChangeOver.USUAL)
                        .first(3)
                        .getLast())
                .satisfies(season -> {
                    assertThat(season.from()).isEqualTo(LocalDate.of(2027, 11, 25));
                    assertThat(season.distanceKm()).isCloseTo(40 * 182, within(1e-9)); // 25 Nov 2027 to 25 May 2028
                });
        assertThatThrownBy(() -> new SetSeasons(SeasonKind.SUMMER, FITTED, 0, ChangeOver.USUAL))
                .hasMessageContaining("expected above 0");
    }
}
