package cornerbook.app.book.people;

import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.days.Skill;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** What people have learned that some of the work needs. What was said of it stays; the last word counts. */
public final class SkillLedger {
    private static final String STANDS =
            " place_in_list = (select max(place_in_list) from person_skill as later where later.person = said.person and later.skill = said.skill)";

    private final Transactions store;

    public SkillLedger(Transactions store) {
        this.store = store;
    }

    /**
     * What the shop goes by.
     *
     * @param of what each who works here has learned; who has nothing is left out
     * @param asked which skills were ever said of anybody: of the others the shop has said nothing, so nobody is held to them
     */
    public record Skills(Map<String, Set<Skill>> of, Set<Skill> asked) {
        public Skills {
            of = Map.copyOf(of);
            asked = Set.copyOf(asked);
        }

        /** What of it this shop asks for. */
        public Set<Skill> asked(Set<Skill> needs) {
            return needs.stream().filter(asked::contains).collect(Collectors.toUnmodifiableSet());
        }

        /** What of it somebody has not learned. */
        public Set<Skill> lacking(String person, Set<Skill> needs) {
            return asked(needs).stream()
                    .filter(skill -> !of.getOrDefault(person, Set.of()).contains(skill))
                    .collect(Collectors.toUnmodifiableSet());
        }
    }

    public Skills list() {
        return store.read(handle -> new Skills(
                handle.select("select said.person, said.skill from person_skill as said"
                                + " join person on person.name = said.person where person.removed_at is null and has = 1 and"
                                + STANDS)
                        .map((row, context) ->
                                Map.entry(row.getString("person"), Skill.valueOf(row.getString("skill"))))
                        .collect(Collectors.groupingBy(
                                Map.Entry::getKey,
                                TreeMap::new,
                                Collectors.mapping(Map.Entry::getValue, Collectors.toSet()))),
                handle.select("select distinct skill from person_skill")
                        .map((row, context) -> Skill.valueOf(row.getString("skill")))
                        .set()));
    }

    /**
     * What somebody has learned, in the place of all that was said before; what is the same adds nothing.
     *
     * @param by who says so; null where nobody is named
     */
    public void put(String person, Set<Skill> skills, @Nullable String by, Instant at) {
        store.write(handle -> {
            var before = handle.select(
                            "select skill from person_skill as said where has = 1 and person = ? and" + STANDS, person)
                    .map((row, context) -> Skill.valueOf(row.getString("skill")))
                    .set();
            Arrays.stream(Skill.values())
                    .filter(skill -> skills.contains(skill) != before.contains(skill))
                    .forEach(skill -> add(handle, person, skill, skills.contains(skill), by, at));
            return person;
        });
    }

    private static void add(Handle handle, String person, Skill skill, boolean has, @Nullable String by, Instant at) {
        new TableRow("person_skill")
                .set("id", UUID.randomUUID())
                .set("person", person)
                .set("skill", skill)
                .set(
                        "place_in_list",
                        TableRow.count(handle, "person_skill where person = ? and skill = ?", person, skill.name()))
                .set("has", has)
                .set("said_by", by)
                .set("made_at", at)
                .insert(handle);
    }
}
