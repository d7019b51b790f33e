// What hands leave open in a step, and why: one reason for one thing, or for all that is missing here.
import { h, note } from "./bay-dom.mjs";
import { cornerName, listed, say } from "./bay-words.mjs";

/** Why something is left open, as the server knows it; behind them a person's own words. */
const REASONS = ["CUSTOMER_DECLINED", "PART_MISSING", "TOOL_MISSING", "NO_TIME", "NOT_REACHABLE"];
const OTHER = "OTHER";

/** As many things are named in one line. */
const NAMED = 4;

/**
 * A label inside a sentence.
 *
 * @param {string} label
 */
const lower = (label) => label.slice(0, 1).toLowerCase() + label.slice(1);

/** @param {bay.Missing} missing */
export function missingWords(missing) {
  if ("wheels" in missing) {
    return say(missing.wheels);
  }
  if ("tick" in missing) {
    return lower(missing.tick.label);
  }
  const { corner, label } = missing.field;
  return corner ? `${cornerName(corner)} ${lower(label)}` : lower(label);
}

/**
 * A reason as it was said.
 *
 * @param {string} reason
 */
export const reasonWords = (reason) => (REASONS.includes(reason) ? say("open-reason", { reason }) : reason);

/**
 * The first things that are missing, in one line.
 *
 * @param {bay.Missing[]} missing
 */
export const namedWords = (missing) => listed(missing.slice(0, NAMED).map(missingWords)) + (missing.length > NAMED ? " …" : "");

/**
 * What hands left open, together where one person said one reason for it.
 *
 * @param {bay.LeftOpen[]} left
 */
export function together(left) {
  /** @type {{ person: string, reason: string, left: bay.LeftOpen[] }[]} */
  const lines = [];
  for (const each of left) {
    const line = lines.find(({ person, reason }) => person === each.person && reason === each.reason);
    if (line) {
      line.left.push(each);
    } else {
      lines.push({ person: each.person, reason: each.reason, left: [each] });
    }
  }
  return lines.map(({ person, reason, left: same }) => ({
    keys: same.map(({ key }) => key),
    words: say("is-left-open", { what: namedWords(same.map(({ missing }) => missing)), reason: reasonWords(reason), person }),
  }));
}

/**
 * Cells for the reasons, and below them all that is missing; a tap leaves it open.
 *
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function leaving(view, step) {
  const { visit } = view;
  let reason = "";
  const words = h("input", { id: "leave.words", type: "text", maxLength: 200, oninput: () => update() });
  const own = h("div", { className: "field", hidden: true }, h("label", { htmlFor: words.id }, say("open-reason-words")), words);
  const cells = [...REASONS, OTHER].map((each) => h("button", { type: "button", value: each, onclick: () => choose(each) }, say("open-reason", { reason: each })));
  const what = h("div", { className: "row" });
  const count = h("small", {});
  const details = h("details", { className: "leave" }, h("summary", {}, say("leave-open"), count), h("fieldset", { className: "choice reasons" }, h("legend", {}, say("open-why")), ...cells), own, h("p", {}, say("open-what")), what);
  const left = h("div", { className: "left" });
  let shown = "";
  const said = () => (reason === OTHER ? words.value.trim() : reason);
  /** @param {string} each */
  const choose = (each) => {
    reason = each;
    own.hidden = reason !== OTHER;
    update();
    if (reason === OTHER) {
      words.focus();
    }
  };
  /** @param {string[]} keys */
  const leave = (keys) => Promise.all(keys.map((key) => visit.tick(key, false, undefined, said())));
  const update = () => {
    const open = visit.canBeLeft(step);
    const lying = together(visit.leftOpen(step));
    details.hidden = open.length === 0;
    count.textContent = String(open.length);
    cells.forEach((cell) => (cell.ariaPressed = String(cell.value === reason)));
    // The line under a finger is made anew only when it says something else.
    const now = JSON.stringify([open.map(({ key }) => key), lying]);
    if (shown !== now) {
      shown = now;
      what.replaceChildren(
        ...(open.length > 1 ? [h("button", { type: "button", className: "quiet all-of-them", onclick: () => leave(open.map(({ key }) => key)) }, say("leave-all", { n: open.length }))] : []),
        ...open.map(({ key, missing }) => h("button", { type: "button", className: "quiet", onclick: () => leave([key]) }, missingWords(missing))),
      );
      left.replaceChildren(...lying.map((each) => h("div", { className: "open" }, note("asks", each.words), h("button", { type: "button", className: "quiet", onclick: () => Promise.all(each.keys.map((key) => visit.tick(key, false))) }, say("not-left-open")))));
    }
    what.querySelectorAll("button").forEach((button) => (button.disabled = said() === ""));
  };
  view.onUpdate(update);
  return h("section", { className: "leaves" }, left, details);
}
