package cornerbook.core.changeover;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.Climate;
import cornerbook.core.season.Climate.MonthNormal;
import cornerbook.core.season.SetSeasons;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** When a car is due by the climate of its place. Climates are invented, chances by the library Hipparchus. */
class ChangeOverOfPlaceTest {
    private static final Climate COLD = climate(-10, -8.5, -2.5, 5.5, 13, 18, 21, 20, 15.5, 8.5, 2, -6);
    private static final Climate WARM = climate(18, 18, 19, 20, 22, 24, 26, 26, 24, 22, 20, 18);
    private static final Optional<WinterLaw> NO_LAW = Optional.empty();

    @Test
    void wheelsAreDueOnTheDayOfLeastCostOfEachYear() {
        var place = new ChangeOverOfPlace(COLD).under(NO_LAW);
        var off = place.after(LocalDate.of(2028, 10, 25), SeasonKind.WINTER);
        assertThat(off.getYear()).isEqualTo(2029);
        assertThat(chanceOfCold(off))
                .as("one cold day on summer tyres weighs three warm ones on winter tyres")
                .isBetween(0.23, 0.26);
        var days = Objects.requireNonNull(place.turn(SeasonKind.WINTER).days());
        assertThat(MonthDay.from(off)).isBetween(days.from(), days.until());
        assertThat(chanceOfCold(place.after(off, SeasonKind.SUMMER))).isBetween(0.24, 0.27);
        assertThat(place.after(off, SeasonKind.ALL_SEASON)).isEqualTo(off.plusMonths(6));
    }

    /** Law outranks climate: on the day that is named it lets the wheels be changed. */
    @Test
    void noDayIsNamedOnWhichTheLawAsksForWinterTyres() {
        var law = new WinterLaw(MonthDay.of(10, 1), MonthDay.of(6, 15));
        var place = new ChangeOverOfPlace(COLD).under(Optional.of(law));
        assertThat(place.spring().due()).isGreaterThanOrEqualTo(law.until());
        assertThat(place.autumn().due()).isLessThan(law.from());
        assertThat(Objects.requireNonNull(place.autumn().days()).byLaw()).isTrue();
    }

    @Test
    void whereNoDayIsColdTheUsualDaysStand() {
        assertThat(new ChangeOverOfPlace(WARM).under(NO_LAW)).isEqualTo(ChangeOver.USUAL);
    }

    /** A set's seasons follow the same days: what it wears until it comes off is reckoned to the day that is named. */
    @Test
    void theSeasonsOfASetEndOnTheSameDays() {
        var place = new ChangeOverOfPlace(COLD).under(NO_LAW);
        var fitted = LocalDate.of(2026, 10, 25);
        assertThat(new SetSeasons(SeasonKind.WINTER, fitted, 40, place).first(3))
                .extracting(season -> MonthDay.from(season.until()))
                .containsOnly(place.spring().due());
    }

    private static double chanceOfCold(LocalDate day) {
        return new NormalDistribution(DailyNormals.of(COLD).meanC(day), ChangeOverDays.USUAL_SPREAD_C)
                .cumulativeProbability(ChangeOverDays.COLD_C);
    }

    private static Climate climate(double... meansC) {
        return new Climate(
                "Invented Place",
                "invented normals",
                -40,
                DoubleStream.of(meansC)
                        .mapToObj(mean -> new MonthNormal(mean - 5, mean + 5))
                        .toList());
    }
}
