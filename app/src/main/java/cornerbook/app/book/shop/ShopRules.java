package cornerbook.app.book.shop;

import cornerbook.app.book.store.Transactions;

/** What the shop asks for beyond what everybody does. */
public final class ShopRules {
    private static final String SECOND_CHECK = "SECOND_CHECK";

    private final Transactions store;

    public ShopRules(Transactions store) {
        this.store = store;
    }

    /** Whether another person than the one who tightened has to check the torque before a car leaves. */
    public boolean asksSecondCheck() {
        return holds(SECOND_CHECK);
    }

    public void askSecondCheck(boolean asked) {
        set(SECOND_CHECK, asked);
    }

    private boolean holds(String rule) {
        return store.read(handle -> handle.select("select rule from shop_rule where rule = ?", rule)
                .mapTo(String.class)
                .findFirst()
                .isPresent());
    }

    private void set(String rule, boolean holds) {
        store.write(handle -> handle.execute(
                holds
                        ? "insert into shop_rule (rule) values (?) on conflict (rule) do nothing"
                        : "delete from shop_rule where rule = ?",
                rule));
    }
}
