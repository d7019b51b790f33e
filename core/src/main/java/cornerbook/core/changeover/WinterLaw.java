package cornerbook.core.changeover;

import java.time.MonthDay;

/**
 * When the law of a place asks for winter tyres on any road.
 *
 * @param from first day
 * @param until last day, of the year after
 */
public record WinterLaw(MonthDay from, MonthDay until) {}
