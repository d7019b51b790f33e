package cornerbook.core.reread.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.reread.ReadTwice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class UnchangedGroovesTest {
    private static Visit visit(
            String id, LocalDate day, double km, String on, String off, double offMm, double onMm, String who) {
        var readings = new ArrayList<Reading>();
        for (var corner : Corner.values()) {
            for (var spot : Spot.values()) {
                readings.add(tread(id, corner, off, spot, offMm));
                readings.add(tread(id, corner, on, spot, onMm));
            }
        }
        return new Visit(
                id,
                day,
                km,
                Cars.at(off),
                Cars.at(on),
                readings,
                new JobCard(who, List.of(), null, null, List.of()),
                Set.of());
    }

    private static Reading tread(String visit, Corner corner, String set, Spot spot, double mm) {
        return new Reading(
                visit + set + corner + spot,
                Measure.TREAD_DEPTH,
                corner,
                set + corner,
                spot,
                mm,
                mm + " mm",
                null,
                null);
    }

    private static CarHistory car(double summerAgainMm) {
        return Cars.history(
                visit("v1", LocalDate.of(2025, 11, 2), 40_000, "W-", "S-", 6.0, 8.0, "Ida"),
                visit("v2", LocalDate.of(2026, 4, 20), 48_000, "S-", "W-", 6.5, summerAgainMm, "Odo"),
                visit("v3", LocalDate.of(2026, 11, 3), 56_000, "W-", "S-", 4.9, 6.4, "Ida"));
    }

    /** Summer wheels stood in the store from v1 to v2, winter wheels from v2 to v3; what ran between is no reading again. */
    @Test
    void onlyWhatStoodInTheStoreIsReadAgain() {
        var twice = UnchangedGrooves.of(car(6.2), Map.of());
        assertThat(twice)
                .extracting(ReadTwice::first, ReadTwice::second)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Ida", "Odo"),
                        org.assertj.core.groups.Tuple.tuple("Odo", "Ida"));
        assertThat(twice.getFirst().differencesMm())
                .hasSize(12)
                .allSatisfy(mm -> assertThat(mm).isEqualTo(6.2 - 6.0));
        assertThat(twice.getLast().differencesMm())
                .hasSize(12)
                .allSatisfy(mm -> assertThat(mm).isEqualTo(6.4 - 6.5));
    }

    @Test
    void whoReadAtATabletCountsBeforeTheTechnicianOfTheVisit() {
        var twice = UnchangedGrooves.of(car(6.2), Map.of("v2S-" + Corner.LF + Spot.CENTRE, "Una"));
        assertThat(twice)
                .filteredOn(each -> each.second().equals("Una"))
                .singleElement()
                .satisfies(each -> assertThat(each.differencesMm()).hasSize(1));
        assertThat(twice.stream().mapToInt(each -> each.differencesMm().size()).sum())
                .isEqualTo(24);
    }

    /** A tread that is worn to nothing reads 0 whoever reads it. */
    @Test
    void aTreadWornToNothingTellsNothing() {
        assertThat(UnchangedGrooves.of(car(0), Map.of()))
                .singleElement()
                .satisfies(each -> assertThat(each.first()).isEqualTo("Odo"));
    }
}
