// Nothing leaves with an open caution unless a named person says why.
import { h } from "./bay-dom.mjs";
import { person } from "./bay-person.mjs";
import { note } from "./bay-visit.mjs";

const NAMED = 4;

export function departStep(view) {
  const { visit } = view;
  const onCar = h("p", {});
  const missing = h("ul", { className: "missing" });
  const open = h("div", { className: "opens" });
  const said = h("div", { ariaLive: "polite" });
  const links = h("div", { className: "row" });
  const reasons = new Map();
  const leave = h("button", { type: "button", className: "main", onclick: () => visit.record("departure", { reasons: Object.fromEntries([...reasons].map(([key, input]) => [key, input.value.trim()]).filter(([, words]) => words)) }) }, "The car leaves");
  view.onUpdate(() => {
    const unfinished = view.steps.map((step) => ({ step, missing: visit.progress(step).missing })).filter(({ missing }) => missing.length > 0);
    missing.replaceChildren(
      ...unfinished.map(({ step, missing: words }) => h("li", {}, h("a", { href: `#${step.id}` }, h("strong", {}, step.title, h("small", {}, `${words.length} missing`)), h("span", {}, words.slice(0, NAMED).join(", ") + (words.length > NAMED ? " …" : ""))))),
      ...(unfinished.length === 0 ? [h("li", {}, note("book", "Nothing is missing."))] : []),
    );
    const here = visit.state.onCar.filter((name) => name !== person());
    onCar.textContent = here.length > 0 ? `On this car now: ${person()} here, and ${here.join(", ")}.` : `On this car now: ${person()} alone.`;
    const cautions = visit.openCautions();
    if (cautions.map(({ key }) => key).join() !== [...reasons.keys()].join()) {
      const typed = new Map([...reasons].map(([key, input]) => [key, input.value]));
      reasons.clear();
      open.replaceChildren(
        ...cautions.map((caution) => {
          const { key, sentence } = caution;
          const step = visit.stepThatCloses(caution);
          const input = h("input", { id: `why.${key}`, type: "text", maxLength: 200, value: typed.get(key) ?? "" });
          reasons.set(key, input);
          return h("div", { className: "open" }, note("wrong", sentence), step ? h("a", { className: "button quiet", href: `#${step.id}` }, `Go to: ${step.title}`) : null, h("label", { htmlFor: input.id }, "Close it there, or say why the car leaves all the same"), input);
        }),
      );
    }
    leave.textContent = cautions.length > 0 ? `The car leaves with ${cautions.length} open, on the word of ${person()}` : "The car leaves";
    const entry = visit.pending.findLast((each) => each.kind === "departure");
    const { departed } = visit.state;
    said.replaceChildren(
      entry?.refused ? note("wrong", entry.refused)
      : entry ? note("here", "Handed over, only on this tablet.")
      : departed ? note("book", `Handed over by ${departed.person}.`, ...departed.reasons.map((reason) => ` ${reason}`))
      : "",
    );
    const path = `/visits/${encodeURIComponent(visit.id)}`;
    links.replaceChildren(
      ...(visit.outbox.linked && visit.pending.length === 0
        ? [h("a", { className: "button quiet", href: `${path}/findings` }, "Findings"), h("a", { className: "button quiet", href: `${path}/handover.pdf` }, "Hand-over sheet")]
        : [note("asks", "Findings and the hand-over sheet are made by the server from what is in the book. They show here as soon as the link is back and everything is there.")]),
    );
  });
  return [onCar, open, h("h3", {}, "Still missing"), missing, said, leave, links];
}
