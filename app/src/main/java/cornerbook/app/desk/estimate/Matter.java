package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * What a customer answers at once: a line, or a choice of several of which one is taken.
 *
 * @param options in their order
 */
public record Matter(List<Option> options) {
    /** One line by its place in the estimate. */
    public record Option(int place, EstimateLine line) {}

    public Matter {
        options = List.copyOf(options);
    }

    static List<Matter> of(Estimate estimate) {
        var matters = new LinkedHashMap<String, List<Option>>();
        for (int place = 0; place < estimate.lines().size(); place++) {
            var line = estimate.lines().get(place);
            matters.computeIfAbsent(line.matter(), matter -> new ArrayList<>()).add(new Option(place, line));
        }
        return matters.values().stream().map(Matter::new).toList();
    }

    public boolean isChoice() {
        return options.size() > 1;
    }

    public EstimateLine first() {
        return options.getFirst().line();
    }

    /** Whether anything of it can be taken yet. */
    public boolean hasPrice() {
        return options.stream().anyMatch(option -> option.line().amount() != null);
    }
}
