package cornerbook.app.cli.customer;

import cornerbook.core.say.Said;

/** What is told of cards that were taken. */
sealed interface CustomersSaid extends Said {
    /**
     * All together.
     *
     * @param taken customers who are new, or got something that was missing
     */
    record Taken(int taken, int cards) implements CustomersSaid {}

    /** Who has the name of a customer and nothing else alike. */
    record SameName(int number, String name) implements CustomersSaid {}

    /** A card of which nothing can be taken. */
    record Unfit(int number, Said why) implements CustomersSaid {}
}
