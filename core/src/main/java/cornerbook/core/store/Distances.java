package cornerbook.core.store;

/** How far it is from one stop to another, the same in both directions and never negative; 0 is the door. */
@FunctionalInterface
interface Distances {
    double between(int from, int to);
}
