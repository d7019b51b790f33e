package cornerbook.app.desk.tools;

import cornerbook.app.desk.Form;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.util.List;

/**
 * The tools of the shop, and a form for one of them.
 *
 * @param typed what stands in the form
 * @param error one sentence, empty when nothing was refused
 */
public record ToolsPage(List<ShopTool> tools, LocalDate today, Form typed, String error) {
    public ToolsPage {
        tools = List.copyOf(tools);
    }

    public String at(String field) {
        return typed.get(field);
    }
}
