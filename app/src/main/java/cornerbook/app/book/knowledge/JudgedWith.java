package cornerbook.app.book.knowledge;

import cornerbook.core.finding.Knowledge;
import cornerbook.core.season.Climate;
import org.jspecify.annotations.Nullable;

/**
 * What cars are judged by beside their own history.
 *
 * @param climate of the place; null when it is not known
 * @param number rises with each change of it
 */
public record JudgedWith(Knowledge knowledge, @Nullable Climate climate, long number) {}
