package cornerbook.app.book.rack;

/** Selects the sets that lie in the store with since when, for ledgers that ask of many at once. */
public final class StoredSets {
    /** A set lies for one season, half a year and some weeks; longer than this it has missed its season. Common practice, no source. */
    public static final int MONTHS_OF_A_SEASON = 9;

    private static final String MOVED_ON = "coalesce(kept.moved_on, substr(kept.made_at, 1, 10))";

    private static final String SINCE =
            "case when kept.came_on is null or %1$s > kept.came_on then %1$s else kept.came_on end".formatted(MOVED_ON);

    private StoredSets() {}

    /**
     * A row for each set that is off its car and lies at a place that was written down: vehicle_id; visit_id, the car's latest visit;
     * off_since, since when it lies there or is off the car, null where nobody knows; stored_until, the last day that was agreed for
     * it since then, else null. Sets of cars that never had a visit are left out.
     *
     * @param ofCustomer whether only those of one customer, whose id is asked for
     */
    public static String select(boolean ofCustomer) {
        return """
            select lying.vehicle_id, lying.visit_id, lying.off_since,
                case when lying.off_since is null or lying.stored_until >= lying.off_since then lying.stored_until end as stored_until
            from (
                select kept.vehicle_id, %s as visit_id, %s as off_since,
                    (select term.stored_until from set_term as term where term.vehicle_id = kept.vehicle_id and term.set_id = kept.set_id
                        order by term.place_in_list desc limit 1) as stored_until
                from (%s where wheel_set.store_place is not null%s) as kept
                where kept.on_car is null
            ) as lying
            where lying.visit_id is not null
            """.formatted(
                        StockRows.latestVisit("kept.vehicle_id"),
                        SINCE,
                        StockRows.SELECT,
                        ofCustomer ? " and customer.id = ?" : "");
    }
}
