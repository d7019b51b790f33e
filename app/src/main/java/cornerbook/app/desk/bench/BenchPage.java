package cornerbook.app.desk.bench;

import cornerbook.app.bench.Ask;
import cornerbook.app.bench.Part;
import cornerbook.app.bench.Question;
import cornerbook.app.bench.Questions;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.request.Told;
import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Said;
import cornerbook.words.UnitSystem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One calculator as a page: a part for each thing that its template shows.
 *
 * @param vehicle the car whose data are filled in; null without one
 * @param axle "front" or "rear" where a car's axle counts
 * @param system the units of bare numbers in this address
 * @param foreign whether the person reads in other units than the address was written in
 * @param example whether an invented example was filled in, as nothing was typed
 * @param visits of this day, whose cars may be chosen
 * @param climateLacking whether the climate of the place would answer some of it, and is not known
 * @param tools of the shop, for the one in hand to be chosen
 */
public record BenchPage(
        Question question,
        @Nullable Vehicle vehicle,
        String axle,
        UnitSystem system,
        boolean foreign,
        boolean example,
        List<VisitSummary> visits,
        BenchTools tools,
        boolean climateLacking,
        List<Field> common,
        List<Section> sections) {
    public BenchPage {
        visits = List.copyOf(visits);
        common = List.copyOf(common);
        sections = List.copyOf(sections);
    }

    /** All calculators, for the way from one to the other. */
    public List<Question> questions() {
        return Questions.ALL;
    }

    /** Whether the two axles of a car give different answers. */
    public boolean byAxle() {
        return List.of("pressure", "tyre", "burnish").contains(question.name());
    }

    public boolean errors() {
        return common.stream().anyMatch(field -> !field.error().isEmpty())
                || sections.stream()
                        .anyMatch(section -> !section.error().isEmpty()
                                || section.fields().stream()
                                        .anyMatch(field -> !field.error().isEmpty()));
    }

    /**
     * Questions that are answered together, with their answers.
     *
     * @param note what has to be known before; null where nothing has
     * @param error what core refuses and belongs to no single field, may be empty
     * @param lacking labels of what is still to be typed for an answer
     */
    public record Section(
            String name,
            Said title,
            @Nullable Said note,
            List<Field> fields,
            String error,
            List<Said> lacking,
            List<Answer> answers) {
        public Section {
            lacking = List.copyOf(lacking);
            fields = List.copyOf(fields);
            answers = List.copyOf(answers);
        }

        /** What to mind, each sentence once. */
        public List<String> cautions() {
            return answers.stream()
                    .flatMap(answer -> answer.part().result().cautions().stream())
                    .map(Told::say)
                    .distinct()
                    .toList();
        }
    }

    /** One part of an answer as it is shown. */
    public record Answer(Part part) {
        public List<String> pictures() {
            return BenchPicture.of(part.result(), Told.reader());
        }
    }

    /**
     * One field.
     *
     * @param typed what stands in it; one for each place of a question that may be answered several times
     * @param error one sentence, empty when it is sound
     */
    public record Field(Ask ask, String unit, List<String> typed, String error) {
        public Field {
            typed = List.copyOf(typed);
        }

        public String first() {
            return typed.isEmpty() ? "" : typed.getFirst();
        }

        /** What stands at the place of a question that may be answered several times. */
        public String at(int place) {
            return place < typed.size() ? typed.get(place) : "";
        }

        public String describedBy() {
            return error.isEmpty() ? "help." + ask.name() : "error." + ask.name() + " help." + ask.name();
        }

        public List<Ask.Option> choices() {
            return ask.kind() instanceof Ask.Choice choice ? choice.options() : List.of();
        }

        /** How many places it has. */
        public int places() {
            return ask.kind() instanceof Ask.Several several ? several.most() : 1;
        }

        public boolean tick() {
            return ask.kind() instanceof Ask.Tick;
        }

        public boolean wide() {
            return ask.kind() instanceof Ask.Tick
                    || ask.kind() instanceof Ask.Several
                    || (ask.kind() instanceof Ask.Words words && words.wide());
        }

        /** Kind of keyboard; letters where words or a unit may be needed. */
        public String inputMode() {
            return ask.kind() instanceof Ask.Count ? "decimal" : "text";
        }

        public String type() {
            return ask.kind() instanceof Ask.Day ? "date" : "text";
        }

        public String example() {
            return switch (ask.kind()) {
                case Ask.Words words -> Told.say(words.example());
                case Ask.Several several -> Told.say(several.example());
                default -> "";
            };
        }
    }
}
