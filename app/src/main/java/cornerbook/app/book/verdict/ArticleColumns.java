package cornerbook.app.book.verdict;

import cornerbook.app.book.store.TableRow;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import java.sql.ResultSet;
import java.sql.SQLException;

/** The columns by which tables name an article: what cars may need is kept with their verdicts, what was ordered beside them. */
public final class ArticleColumns {
    private ArticleColumns() {}

    public static TableRow set(TableRow row, Article article) {
        var kind = article.kind();
        return row.set("part", article.part())
                .set("kind", kind == null ? "" : kind)
                .set("article", article.text());
    }

    public static Article of(ResultSet row) throws SQLException {
        var kind = row.getString("kind");
        return new Article(
                OrderPart.valueOf(row.getString("part")), kind.isEmpty() ? null : kind, row.getString("article"));
    }
}
