package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.corner.Corner;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ObjectNode;

/** What keeps a car from leaving, whatever its tablet knew. */
class BayDepartureTest extends TabletEntries {
    @Test
    void nothingLeavesWithAnOpenCautionWithoutAReason() throws Exception {
        assertThat(statuses(done("PADS_REPLACED", "LF"), done("PEDAL_PUMPED", null), done("CALIPER_CLOSED", "RF")))
                .containsOnly("stored");
        var silent = send(entry("departure", Map.of("reasons", Map.of())));
        assertThat(silent.getFirst().path("sentence").stringValue()).contains("caliper at LF is not closed");
        assertThat(silent.getFirst().path("pointer").stringValue()).isEqualTo("/entries/0/reasons/CALIPER.LF");

        var toTheNextShop = entry(
                "departure",
                Map.of("reasons", Map.of("CALIPER.LF", "Towed to the next shop.", "WHEELS", "On dollies.")));
        assertThat(statuses(toTheNextShop)).containsExactly("stored");
        var departure = shop.book.bay().findDeparture(visitId).orElseThrow();
        assertThat(departure.person()).isEqualTo("Ada");
        assertThat(departure.reasons())
                .extracting(Departure.Reason::reason)
                .containsExactly("Towed to the next shop.", "On dollies.");

        leave();
        var later = entry("departure", Map.of("reasons", wheelsNotTorqued())).put("at", "2026-11-25T09:00:00Z");
        assertThat(statuses(done("CALIPER_CLOSED", "LF"), later)).containsOnly("stored");
        assertThat(shop.book.bay().findDeparture(visitId).orElseThrow().reasons())
                .extracting(Departure.Reason::caution)
                .containsExactlyElementsOf(new TreeSet<>(wheelsNotTorqued().keySet()));
    }

    /** 0.5 mm of lining, and a wheel at 80 % of its torque: the car left without a word. */
    @Test
    void nothingUnsafeLeavesUnlessSomebodySaysWhyAndTheCustomerKnows() throws Exception {
        var wheels = leave();
        var entries = new ArrayList<ObjectNode>();
        for (var corner : Corner.values()) {
            entries.add(reading(
                    "WHEEL_TORQUE",
                    corner.name(),
                    String.valueOf(wheels.get(corner.name())),
                    corner == Corner.LF ? "96" : "120"));
        }
        entries.add(pad("INNER", "0.5"));
        entries.add(pad("OUTER", "4.5"));
        assertThat(statuses(entries)).containsOnly("stored");
        assertThat(state().path("unsafe")
                        .valueStream()
                        .map(each -> each.path("key").stringValue()))
                .containsExactlyInAnyOrder("UNSAFE.PAD.LF", "UNSAFE.WHEEL_TORQUE.LF");
        var silent = send(entry("departure", Map.of("reasons", Map.of())));
        assertThat(silent.getFirst().path("pointer").stringValue()).startsWith("/entries/0/reasons/UNSAFE.");
        var reasons = Map.of("UNSAFE.PAD.LF", "Pads come tomorrow.", "UNSAFE.WHEEL_TORQUE.LF", "Stud turns.");
        var unknowing = send(entry("departure", Map.of("reasons", reasons)));
        assertThat(unknowing.getFirst().path("sentence").stringValue()).contains("The customer has to know");
        assertThat(unknowing.getFirst().path("pointer").stringValue()).isEqualTo("/entries/0/acknowledgedBy");
        var findings = "/visits/" + visitId + "/findings";
        assertThat(shop.page(findings)).contains("Before the car leaves").doesNotContain("The car left with this open");
        var knowing = entry("departure", Map.of("reasons", reasons, "acknowledgedBy", "Mme Ardent"));
        assertThat(statuses(knowing)).containsExactly("stored");
        assertThat(shop.page(findings))
                .as("the desk reads what the bay was told")
                .contains("The car left with this open", "Pads come tomorrow.", "Told to: Mme Ardent.")
                .doesNotContain("Before the car leaves");
        var departure = shop.book.bay().findDeparture(visitId).orElseThrow();
        assertThat(departure.acknowledgedBy()).isEqualTo("Mme Ardent");
        assertThat(departure.reasons())
                .extracting(Departure.Reason::caution)
                .containsExactly("UNSAFE.PAD.LF", "UNSAFE.WHEEL_TORQUE.LF");
    }

    /** A wheel whose fasteners are ticked is tight; a torque is known only where somebody read one. */
    @Test
    void ticksTightenTheWheelsThatAreOnAndClaimNoTorque() throws Exception {
        var wheels = leave();
        var ticks = tightenedBy("Ada", wheels);
        assertThat(statuses(ticks)).containsOnly("stored");
        var left = shop.visit(visitId);
        assertThat(left.tightened()).containsExactlyInAnyOrder(Corner.values());
        assertThat(left.readings()).isEmpty();
        assertThat(shop.book.retorques().listOpen())
                .anyMatch(retorque -> retorque.visitId().equals(visitId));
        var assessment = new Assessor(LimitsFile.load())
                .assess(shop.book.cars().findOfVisit(visitId).orElseThrow(), visitId);
        assertThat(assessment.notJudged().stream().map(Reader.DEFAULT::say))
                .contains("wheel torque: 4 wheels ticked as tightened (LF, RF, LR, RR), no torque value read")
                .noneMatch(sentence -> sentence.contains("no torque is recorded"));
        var loosened = tick("FASTENER.RR.2", false).put("wheel", wheels.get("RR"));
        assertThat(statuses(loosened)).containsExactly("stored");
        var leaves = entry("departure", Map.of("reasons", Map.of()));
        assertThat(send(leaves).getFirst().path("sentence").stringValue()).contains("RR is not torqued");
        assertThat(statuses(
                        with(
                                        tick("FASTENER.RR.2", true),
                                        "shown",
                                        loosened.path("id").stringValue())
                                .put("wheel", wheels.get("RR")),
                        leaves))
                .containsOnly("stored");

        var crossed = new HashMap<>(wheels);
        crossed.put("LF", wheels.get("RF"));
        crossed.put("RF", wheels.get("LF"));
        assertThat(statuses(entry("leaving", Map.of("wheels", crossed, "shown", wheels))))
                .containsExactly("stored");
        assertThat(shop.visit(visitId).tightened()).containsExactlyInAnyOrder(Corner.LR, Corner.RR);
    }

    @Test
    void wheelsThatWentOnMustBeTorqued() throws Exception {
        var wheels = names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("planned"));
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("stored");
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("already");
        assertThat(shop.visit(visitId).leftOn()).hasSize(4);
        var other = new HashMap<>(wheels);
        other.put("LF", wheels.get("RF"));
        other.put("RF", wheels.get("LF"));
        assertThat(statuses(entry("leaving", Map.of("wheels", other, "shown", Map.of()))))
                .as("from a tablet that had not seen them")
                .containsExactly("conflict");
        assertThat(send(entry("departure", Map.of("reasons", Map.of())))
                        .getFirst()
                        .path("sentence")
                        .stringValue())
                .contains("not torqued");
        var torques = new ArrayList<ObjectNode>();
        for (var corner : Corner.values()) {
            torques.add(reading("WHEEL_TORQUE", corner.name(), String.valueOf(wheels.get(corner.name())), "120"));
        }
        torques.add(entry("departure", Map.of("reasons", Map.of())));
        assertThat(statuses(torques)).containsOnly("stored");
    }

    /** Whatever the clocks say: the check has to have seen each tightening, and be of somebody else. */
    @Test
    void torqueIsCheckedByAnotherPersonWhereTheShopAsksForIt() throws Exception {
        shop.book.rules().askSecondCheck(true);
        var wheels = leave();
        var ticks = tightenedBy("Ada", wheels);
        assertThat(statuses(ticks)).containsOnly("stored");
        var seen = new ArrayList<>(
                ticks.stream().map(tick -> tick.path("id").stringValue()).toList());
        var leaves = entry("departure", Map.of("reasons", Map.of()));
        assertThat(statuses(check("Ada", seen))).containsExactly("stored");
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Ada ticked them herself")
                .contains("Nobody but the one who tightened has checked the torque.");

        var torque = reading("WHEEL_TORQUE", "LF", String.valueOf(wheels.get("LF")), "120");
        var ahead = check("Bo", seen).put("at", "2026-11-25T11:59:00Z");
        assertThat(statuses(torque, ahead)).containsOnly("stored");
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Bo had not seen the torque that Ada read")
                .contains("Nobody but the one who tightened");
        seen.add(torque.path("id").stringValue());
        assertThat(statuses(check("Bo", seen), leaves)).containsOnly("stored");
    }

    private static Map<String, String> wheelsNotTorqued() {
        return Arrays.stream(Corner.values())
                .collect(Collectors.toMap(corner -> "TORQUE." + corner, corner -> "The owner torques them."));
    }

    private static ObjectNode check(String person, List<String> seen) {
        var check = with(tick("SECOND_CHECK", true), "person", person);
        seen.forEach(check.putArray("seen")::add);
        return check;
    }

    private List<ObjectNode> tightenedBy(String person, Map<String, String> wheels) {
        var ticks = new ArrayList<ObjectNode>();
        wheels.forEach((corner, wheel) -> {
            for (int number = 1;
                    number <= Objects.requireNonNull(car.vehicle().fastener()).count();
                    number++) {
                ticks.add(with(tick("FASTENER.%s.%d".formatted(corner, number), true), "person", person)
                        .put("wheel", wheel));
            }
        });
        return ticks;
    }
}
