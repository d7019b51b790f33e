package cornerbook.app.bench;

import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A calculator.
 *
 * @param name its verb on the command line and its page: "torque"
 * @param description one sentence
 * @param common asked once, used by all groups
 * @param nothingAsked the sentence for someone who gives too little
 * @param example a command line
 */
public record Question(
        String name,
        Said title,
        Said description,
        List<Ask> common,
        List<Group> groups,
        Said nothingAsked,
        String example) {
    private static final List<String> FROM_CLIMATE = Stream.concat(
                    PressureSeasonGroup.FROM_CLIMATE.stream(), ChangeOverQuestion.FROM_CLIMATE.stream())
            .toList();

    public Question {
        common = List.copyOf(common);
        groups = List.copyOf(groups);
    }

    /** All questions in the order of the page. */
    public List<Ask> asks() {
        return Stream.concat(common.stream(), groups.stream().flatMap(group -> group.asks().stream()))
                .toList();
    }

    /** Whether the climate of the place answers some of it. */
    public boolean byClimate() {
        return !fromClimate().isEmpty();
    }

    /** Names of the questions that the climate of the place answers, better than an example does. */
    public List<String> fromClimate() {
        return asks().stream().map(Ask::name).filter(FROM_CLIMATE::contains).toList();
    }

    /** Labels of what a group still needs before it can answer. */
    public List<Said> lacking(Group group, Given given) {
        return asks().stream()
                .filter(ask -> group.needs().contains(ask.name()) && !given.any(ask.name()))
                .filter(ask -> given.climate() == null || !FROM_CLIMATE.contains(ask.name()))
                .map(Ask::label)
                .toList();
    }

    /**
     * All answers.
     *
     * @throws AskException when something cannot be read, cannot be or is missing
     * @throws IllegalArgumentException when core refuses what belongs to no single question, or nothing was asked
     */
    public List<Part> answer(Given given) {
        var parts = new ArrayList<Part>();
        asks().forEach(given::requireReadable);
        groups.forEach(group -> parts.addAll(given.answer(group)));
        if (parts.isEmpty()) {
            throw new Refused(nothingAsked);
        }
        return parts;
    }
}
