package cornerbook.core.tread;

/**
 * What a book's readings say about wear.
 *
 * @param standardErrors how sure, allowing for readings of one car being alike
 * @param cars how many cars it comes from
 * @param readings how many readings of a groove
 */
public record LearnedWear(WearParameters parameters, WearUncertainty standardErrors, int cars, int readings) {}
