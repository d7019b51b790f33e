package cornerbook.core.days.plan;

/**
 * What a plan comes to; the less, the better.
 *
 * @param overMinutes by how much stretches and days have too much: 0 in any plan that can be
 * @param points what it costs
 */
public record PlanScore(int overMinutes, long points) {
    public boolean canBe() {
        return overMinutes == 0;
    }
}
