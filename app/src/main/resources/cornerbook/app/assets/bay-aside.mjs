// What the book did not take, of whichever visit: with its reason, and what can be done with it. Nothing typed goes by itself.
import { ask } from "./bay-ask.mjs";
import { h, note } from "./bay-dom.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { sheetOf, titleOf, Visit } from "./bay-visit.mjs";
import { asHere, cornerName, moment, say, told } from "./bay-words.mjs";
import { inWords, isBare, withUnit } from "./bay-written.mjs";

/**
 * A visit of today.
 *
 * @typedef {[string, bay.Sheet]} Target
 */

/**
 * What a button does; gives what is wrong, or nothing.
 *
 * @typedef {() => Promise<string | void>} Work
 */

/** @typedef {(words: string, work: Work) => HTMLButtonElement} Button */

const ANSWER_MS = 3_000;

/**
 * The button of the bar; it is there as long as something is.
 *
 * @param {HTMLElement} button
 * @param {bay.Outbox} outbox
 */
export function showAside(button, outbox) {
  const { refused, notes } = outbox;
  button.hidden = refused.length + notes.length === 0;
  button.textContent = say("not-taken", { n: refused.length });
}

/** @param {bay.Outbox} outbox */
export async function openAside(outbox) {
  /** @type {Map<string, bay.Sheet>} */
  const kept = new Map();
  for (const { visit, sheets } of await outbox.store.all("sheets")) {
    const sheet = sheetOf(sheets);
    if (sheet) {
      kept.set(visit, sheet);
    }
  }
  /** @type {string[]} */
  const today = await ask("/bay/today.json", {}, ANSWER_MS).then((answer) => answer.json()).catch(() => [...kept.keys()]);
  const targets = [...kept].filter(([visit]) => today.includes(visit));
  /** @type {HTMLDialogElement} */
  const dialog = h("dialog", { className: "panel" });
  dialog.setAttribute("aria-labelledby", "aside-title");
  const show = () => {
    const { refused, notes } = outbox;
    if (refused.length + notes.length === 0) {
      dialog.close();
      return;
    }
    dialog.replaceChildren(
      h("div", { className: "head" }, h("h2", { id: "aside-title" }, say("not-in-book")), h("button", { type: "button", id: "aside-close", className: "quiet", onclick: () => dialog.close() }, say("close"))),
      ...refused.flatMap((entry) => (entry.refused ? refusal(outbox, entry, entry.refused, kept, targets, show) : [])),
      ...(notes.length > 0 ? [h("h3", {}, say("notes")), ...notes.map((entry) => noted(outbox, entry, kept.get(entry.visit), show))] : []),
    );
  };
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  show();
  dialog.showModal();
}

/**
 * @param {bay.Outbox} outbox
 * @param {bay.Entry} entry
 * @param {bay.Sentence} why
 * @param {Map<string, bay.Sheet>} kept
 * @param {Target[]} targets
 * @param {() => void} done
 */
function refusal(outbox, entry, why, kept, targets, done) {
  const said = h("div", { ariaLive: "polite" });
  /** @param {Work} work */
  const act = (work) => async () => {
    const problem = await work();
    said.replaceChildren(problem ? note("wrong", problem) : "");
    if (!problem) {
      done();
    }
  };
  /** @type {Button} */
  const button = (words, work) => h("button", { type: "button", className: "quiet", onclick: act(work) }, words);
  const id = entry.id;
  const sheet = kept.get(entry.visit);
  const movable = entry.kind === "reading" || entry.kind === "tick" || entry.kind === "photo" ? entry : undefined;
  const others = targets.filter(([visit]) => visit !== entry.visit);
  return h("section", { className: "aside" },
    h("h3", {}, named(entry, sheet), h("small", {}, ofVisit(entry, sheet))),
    note("wrong", told(why)),
    entry.kind === "reading" ? h("label", { htmlFor: `value.${id}` }, say("another-value")) : null,
    entry.kind === "reading" ? retype(outbox, entry, sheet, button) : null,
    movable && others.length > 0 ? h("label", { htmlFor: `visit.${id}` }, say("another-visit")) : null,
    movable && others.length > 0 ? move(outbox, movable, others, button) : null,
    h("div", { className: "row" },
      button(say("try-again"), () => outbox.retry(entry)),
      button(say("keep-note"), () => outbox.amend(entry, { note: true }))),
    said);
}

/**
 * @param {bay.Outbox} outbox
 * @param {bay.EntryOf<"reading">} entry
 * @param {bay.Sheet | undefined} sheet
 * @param {Button} button
 */
function retype(outbox, entry, sheet, button) {
  const input = h("input", { "data-takes": ".*", id: `value.${entry.id}`, type: "text", autocomplete: "off", maxLength: 200, value: entry.written });
  const send = async () => {
    const field = fieldOf(sheet, entry);
    const text = input.value.trim();
    if (text === "" || (!field && isBare(text))) {
      return say("with-unit");
    }
    const { visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason } = entry;
    await outbox.add({ visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason, written: field ? withUnit(field, text) : text }, entry);
    return "";
  };
  return h("div", { className: "row" }, input, button(say("send"), send));
}

/**
 * @param {bay.Outbox} outbox
 * @param {bay.EntryOf<"reading" | "tick" | "photo">} entry
 * @param {Target[]} targets
 * @param {Button} button
 */
function move(outbox, entry, targets, button) {
  const select = h("select", { id: `visit.${entry.id}` }, ...targets.map(([visit, sheet]) => h("option", { value: visit }, titleOf(sheet))));
  const go = async () => {
    const visit = new Visit(select.value, outbox);
    await visit.load();
    if (entry.kind === "reading") {
      const field = fieldOf(visit.sheet, entry);
      if (!field || !visit.applies(field)) {
        return say("no-such-place");
      }
      await visit.enter(field, entry.written, undefined, entry.person);
    } else if (entry.kind === "tick") {
      await visit.tick(entry.tick, entry.done, entry.person, entry.reason);
    } else {
      await outbox.add({ visit: visit.id, kind: "photo", corner: entry.corner, blob: entry.blob, person: entry.person });
    }
    await outbox.drop(entry);
    return "";
  };
  return h("div", { className: "row" }, select, button(say("move"), go));
}

/**
 * @param {bay.Outbox} outbox
 * @param {bay.Entry} entry
 * @param {bay.Sheet | undefined} sheet
 * @param {() => void} done
 */
function noted(outbox, entry, sheet, done) {
  const remove = async () => {
    await outbox.drop(entry);
    done();
  };
  return h("section", { className: "aside" },
    h("textarea", { readOnly: true, rows: 2, "aria-label": say("note"), value: noteOf(entry, sheet) }),
    h("div", { className: "row" },
      entry.kind === "photo" ? h("a", { className: "button quiet", href: URL.createObjectURL(entry.blob), download: `${entry.id}.jpeg` }, say("save-photo")) : null,
      h("button", { type: "button", className: "quiet", onclick: remove }, say("delete"))));
}

/**
 * The field in which a reading was typed.
 *
 * @param {bay.Sheet | undefined} sheet
 * @param {bay.Reading} entry
 */
const fieldOf = (sheet, { measure, corner, spot, goesOn }) =>
  sheet?.steps.flatMap(fieldsOf).find((each) => each.measure === measure && each.corner === corner && each.spot === spot && each.goesOn === Boolean(goesOn));

/**
 * @param {bay.Entry} entry
 * @param {bay.Sheet | undefined} sheet
 */
const ofVisit = (entry, sheet) => (sheet ? titleOf(sheet) : say("visit", { visit: entry.visit }));

/**
 * As a person reads it; one that an older page kept is words already.
 *
 * @param {bay.Entry} entry
 * @param {bay.Sheet | undefined} sheet
 */
const noteOf = (entry, sheet) => (typeof entry.note === "string" ? entry.note : `${named(entry, sheet)}, ${ofVisit(entry, sheet)}, ${entry.person}, ${moment(entry.at)}`);

/**
 * @param {bay.Entry} entry
 * @param {bay.Sheet | undefined} sheet
 */
function named(entry, sheet) {
  const corner = "corner" in entry && entry.corner && cornerName(entry.corner);
  if (entry.kind === "reading") {
    const field = fieldOf(sheet, entry);
    const label = field?.label ?? [entry.measure, entry.spot].filter(Boolean).join(" ").toLowerCase().replaceAll("_", " ");
    return say("reading", { place: [corner, label].filter(Boolean).join(" "), value: asHere(inWords(field, entry.written)) });
  }
  if (entry.kind === "stray") {
    return entry.written;
  }
  if (entry.kind === "tick") {
    const [measure, at, spot] = entry.tick.split(".");
    const place = sheet?.steps.flatMap(fieldsOf).find((each) => each.measure === measure && (each.corner ?? "") === at && (each.spot ?? "") === spot);
    const label = sheet?.steps.flatMap((step) => step.ticks).find((tick) => tick.key === entry.tick)?.label ?? (place && [place.corner && cornerName(place.corner), place.label].filter(Boolean).join(" "));
    const step = label ?? (at && measure === "FASTENER" ? say("fastener-of", { corner: cornerName(/** @type {bay.Corner} */ (at)), number: spot }) : entry.tick.toLowerCase().replaceAll("_", " "));
    return say("ticked", { step, done: entry.done });
  }
  return [corner, say("entry", { kind: entry.kind.replace(" ", "_") })].filter(Boolean).join(" ");
}
