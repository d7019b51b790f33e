package cornerbook.core.order.judge;

import cornerbook.core.order.Article;
import cornerbook.core.order.Need;
import java.time.LocalDate;

/**
 * What a car needs of one article.
 *
 * @param due day of its coming visit, until when it is to be at hand
 */
public record CarNeed(Article article, Need need, LocalDate due) {}
