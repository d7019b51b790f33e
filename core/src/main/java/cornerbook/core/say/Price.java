package cornerbook.core.say;

import org.joda.money.Money;

/** An amount of money, exact to the smallest coin of its currency. Below zero it is given back. */
public record Price(Money money) implements Said {}
