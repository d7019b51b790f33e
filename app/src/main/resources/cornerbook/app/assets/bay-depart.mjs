// Nothing leaves with an open point unless a named person says why; nor with one that is unsafe unless the customer knows.
import { h, note } from "./bay-dom.mjs";
import { namedWords, reasonWords, together } from "./bay-leave.mjs";
import { person } from "./bay-person.mjs";
import { cornerName, listed, say, told } from "./bay-words.mjs";

/**
 * What was left open; a caution that the sheet has no longer, as the book kept it.
 *
 * @param {bay.Visit} visit
 * @param {bay.Reason} open
 */
const leftOpen = (visit, { caution, sentence, reason }) => ` ${visit.sheet.cautions.find(({ key }) => key === caution)?.sentence ?? sentence} ${reason}`;

/**
 * A line for each work that was advised: one tap says that the customer does not want it, another takes that back.
 *
 * @param {bay.Visit} visit
 */
function whatIsDeclined(visit) {
  const saidBy = h("input", { id: "declined-by", type: "text", maxLength: 200 });
  const lines = h("div", { className: "declines" });
  const section = h("section", {}, h("h3", {}, say("customer-declines")), lines, h("label", { htmlFor: saidBy.id }, say("declined-by")), saidBy);
  let shown = "";
  const show = () => {
    const advised = visit.advised();
    section.hidden = advised.length === 0;
    // The line under a finger is made anew only when it says something else.
    if (shown !== JSON.stringify(advised)) {
      shown = JSON.stringify(advised);
      lines.replaceChildren(
        ...advised.map(({ key, sentence, declined, saidBy: who }) => h(
          "button",
          { type: "button", className: "quiet", ariaPressed: String(declined), onclick: () => visit.record("declined", { advice: key, declined: !declined, saidBy: saidBy.value.trim() || undefined }) },
          h("strong", {}, declined ? say("is-declined", { who }) : say("is-wanted")), ` ${sentence}`,
        )),
      );
    }
  };
  return { section, show };
}

/** @param {bay.View} view */
export function departStep(view) {
  const { visit } = view;
  const onCar = h("p", {});
  const missing = h("ul", { className: "missing" });
  const open = h("div", { className: "opens" });
  const said = h("div", { ariaLive: "polite" });
  const links = h("div", { className: "row" });
  /** @type {Map<string, HTMLInputElement>} */
  const reasons = new Map();
  const customer = h("input", { id: "acknowledged-by", type: "text", maxLength: 200 });
  const knows = h("div", { className: "knows", hidden: true }, h("label", { htmlFor: customer.id }, say("customer-knows")), customer);
  const leave = h("button", { type: "button", className: "main", onclick: () => visit.record("departure", { reasons: Object.fromEntries([...reasons].map(([key, input]) => [key, input.value.trim()]).filter(([, words]) => words)), acknowledgedBy: customer.value.trim() || undefined }) }, say("car-leaves", { n: 0 }));
  const { section: declines, show: showDeclines } = whatIsDeclined(visit);
  view.onUpdate(() => {
    showDeclines();
    const unfinished = view.steps.map((step) => ({ step, missing: visit.progress(step).missing })).filter(({ missing }) => missing.length > 0);
    missing.replaceChildren(
      ...unfinished.map(({ step, missing: words }) => h("li", {}, h("a", { href: `#${step.id}` }, h("strong", {}, step.title, h("small", {}, say("missing", { n: words.length }))), h("span", {}, namedWords(words))))),
      ...unfinished.flatMap(({ step }) => together(visit.leftOpen(step)).map(({ words }) => h("li", {}, note("asks", words)))),
      ...(unfinished.length === 0 ? [h("li", {}, note("book", say("nothing-missing")))] : []),
    );
    const here = visit.state.onCar.filter((name) => name !== person());
    onCar.textContent = say("on-car-with-me", { person: person(), others: here.length > 0 ? listed(here) : undefined });
    const points = visit.openPoints();
    if (points.map(({ key }) => key).join() !== [...reasons.keys()].join()) {
      const typed = new Map([...reasons].map(([key, input]) => [key, input.value]));
      reasons.clear();
      open.replaceChildren(
        ...points.map((point) => {
          const { key, sentence, corner } = point;
          const step = visit.stepThatCloses(point);
          const input = h("input", { id: `why.${key}`, type: "text", maxLength: 200, value: typed.get(key) ?? visit.whyLeftOpen(point, reasonWords) });
          reasons.set(key, input);
          return h("div", { className: "open" }, note("wrong", corner ? `${cornerName(corner)}: ${sentence}` : sentence), step ? h("a", { className: "button quiet", href: `#${step.id}` }, say("go-to", { step: step.title })) : null, h("label", { htmlFor: input.id }, say("close-or-say")), input);
        }),
      );
    }
    knows.hidden = !points.some(({ unsafe }) => unsafe);
    leave.textContent = say("car-leaves", { n: points.length, person: person() });
    const entry = visit.here("departure").at(-1);
    const { departed } = visit.state;
    said.replaceChildren(
      entry?.refused ? note("wrong", told(entry.refused))
      : entry ? note("here", say("handed-over-here"))
      : departed ? note("book", say("handed-over", { person: departed.person }), ...departed.reasons.map((reason) => leftOpen(visit, reason)))
      : "",
    );
    const path = `/visits/${encodeURIComponent(visit.id)}`;
    links.replaceChildren(
      ...(visit.outbox.linked && visit.pending.length === 0
        ? [h("a", { className: "button quiet", href: `${path}/findings` }, say("findings")), h("a", { className: "button quiet", href: `${path}/handover.pdf` }, say("hand-over-sheet"))]
        : [note("asks", say("made-by-server"))]),
    );
  });
  return [onCar, open, knows, declines, h("h3", {}, say("still-missing")), missing, said, leave, links];
}
