package cornerbook.core.visit;

import java.util.List;

/** Turns a car with its visits into findings. Stateless: the same history, limits and visit give the same findings. */
public final class Assessor {
    private final List<Limit> limits;

    /** @param limits the rows of the limits file; a row with jurisdiction "*" must stand for each kind that is judged */
    public Assessor(List<Limit> limits) {
        this.limits = List.copyOf(limits);
    }

    /**
     * Assesses one visit with what was known on its day.
     *
     * @throws java.util.NoSuchElementException when the history has no such visit
     */
    public Assessment assess(CarHistory history, String visitId) {
        var visit = history.getVisit(visitId);
        return new Assessment(
                history,
                visit,
                visit.date().plusMonths(6),
                List.of(),
                List.of(),
                null,
                null,
                List.of(limits.toString()));
    }
}
