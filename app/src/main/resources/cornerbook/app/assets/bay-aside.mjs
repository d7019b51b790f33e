// What the book did not take, of whichever visit: with its reason, and what can be done with it. Nothing typed goes by itself.
import { h, note } from "./bay-dom.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { sheetOf, Visit } from "./bay-visit.mjs";
import { cornerName, moment, say, told } from "./bay-words.mjs";
import { inWords, isBare, withUnit } from "./bay-written.mjs";

const ANSWER_MS = 3_000;
const MOVABLE = ["reading", "tick", "photo"];

/** The button of the bar; it is there as long as something is. */
export function showAside(button, outbox) {
  const { refused, notes } = outbox;
  button.hidden = refused.length + notes.length === 0;
  button.textContent = say("not-taken", { n: refused.length });
}

export async function openAside(outbox) {
  const kept = new Map((await outbox.store.all("sheets")).filter((each) => sheetOf(each.sheets)).map((each) => [each.visit, sheetOf(each.sheets)]));
  const today = await fetch("/bay/today.json", { signal: AbortSignal.timeout(ANSWER_MS) }).then((answer) => answer.json()).catch(() => [...kept.keys()]);
  const targets = [...kept].filter(([visit]) => today.includes(visit));
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
      ...refused.map((entry) => refusal(outbox, entry, kept, targets, show)),
      ...(notes.length > 0 ? [h("h3", {}, say("notes")), ...notes.map((entry) => noted(outbox, entry, kept.get(entry.visit), show))] : []),
    );
  };
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  show();
  dialog.showModal();
}

function refusal(outbox, entry, kept, targets, done) {
  const said = h("div", { ariaLive: "polite" });
  const act = (work) => async () => {
    const problem = await work();
    said.replaceChildren(problem ? note("wrong", problem) : "");
    if (!problem) {
      done();
    }
  };
  const button = (words, work) => h("button", { type: "button", className: "quiet", onclick: act(work) }, words);
  const id = entry.id;
  const others = MOVABLE.includes(entry.kind) ? targets.filter(([visit]) => visit !== entry.visit) : [];
  return h("section", { className: "aside" },
    h("h3", {}, named(entry, kept.get(entry.visit)), h("small", {}, ofVisit(entry, kept.get(entry.visit)))),
    note("wrong", told(entry.refused)),
    entry.kind === "reading" ? h("label", { htmlFor: `value.${id}` }, say("another-value")) : null,
    entry.kind === "reading" ? retype(outbox, entry, kept.get(entry.visit), button) : null,
    others.length > 0 ? h("label", { htmlFor: `visit.${id}` }, say("another-visit")) : null,
    others.length > 0 ? move(outbox, entry, others, button) : null,
    h("div", { className: "row" },
      button(say("try-again"), () => outbox.retry(entry)),
      button(say("keep-note"), () => outbox.amend(entry, { note: true }))),
    said);
}

function retype(outbox, entry, sheet, button) {
  const input = h("input", { id: `value.${entry.id}`, type: "text", autocomplete: "off", maxLength: 200, value: entry.written });
  const send = async () => {
    const field = sheet?.steps.flatMap(fieldsOf).find((each) => isAt(each, entry));
    const text = input.value.trim();
    if (text === "" || (!field && isBare(text))) {
      return say("with-unit");
    }
    const { visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason } = entry;
    await outbox.add({ visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason, written: field ? withUnit(field, text) : text }, entry);
  };
  return h("div", { className: "row" }, input, button(say("send"), send));
}

function move(outbox, entry, targets, button) {
  const select = h("select", { id: `visit.${entry.id}` }, ...targets.map(([visit, sheet]) => h("option", { value: visit }, `${sheet.car} ${sheet.plate}, ${sheet.day}`)));
  const go = async () => {
    const visit = new Visit(select.value, outbox);
    await visit.load();
    const field = entry.kind === "reading" ? visit.sheet.steps.flatMap(fieldsOf).find((each) => isAt(each, entry) && visit.applies(each)) : undefined;
    if (entry.kind === "reading" && !field) {
      return say("no-such-place");
    }
    if (field) {
      await visit.enter(field, entry.written, undefined, entry.person);
    } else if (entry.kind === "tick") {
      await visit.tick(entry.tick, entry.done, entry.person);
    } else {
      await outbox.add({ visit: visit.id, kind: "photo", corner: entry.corner, blob: entry.blob, person: entry.person });
    }
    await outbox.drop(entry);
  };
  return h("div", { className: "row" }, select, button(say("move"), go));
}

function noted(outbox, entry, sheet, done) {
  const remove = async () => {
    await outbox.drop(entry);
    done();
  };
  return h("section", { className: "aside" },
    h("textarea", { readOnly: true, rows: 2, "aria-label": say("note"), value: noteOf(entry, sheet) }),
    h("div", { className: "row" },
      entry.blob ? h("a", { className: "button quiet", href: URL.createObjectURL(entry.blob), download: `${entry.id}.jpeg` }, say("save-photo")) : null,
      h("button", { type: "button", className: "quiet", onclick: remove }, say("delete"))));
}

const isAt = (field, entry) => ["measure", "corner", "spot"].every((part) => (field[part] ?? "") === (entry[part] ?? "")) && Boolean(field.goesOn) === Boolean(entry.goesOn);

const ofVisit = (entry, sheet) => (sheet ? `${sheet.car} ${sheet.plate}, ${sheet.day}` : say("visit", { visit: entry.visit }));

/** As a person reads it; one that an older page kept is words already. */
const noteOf = (entry, sheet) => (typeof entry.note === "string" ? entry.note : `${named(entry, sheet)}, ${ofVisit(entry, sheet)}, ${entry.person}, ${moment(entry.at)}`);

function named(entry, sheet) {
  const corner = entry.corner && cornerName(entry.corner);
  if (entry.kind === "reading") {
    const field = sheet?.steps.flatMap(fieldsOf).find((each) => isAt(each, entry));
    const label = field?.label ?? [entry.measure, entry.spot].filter(Boolean).join(" ").toLowerCase().replaceAll("_", " ");
    return say("reading", { place: [corner, label].filter(Boolean).join(" "), value: inWords(field, entry.written) });
  }
  if (entry.kind === "tick") {
    const [, at, fastener] = entry.tick.split(".");
    const label = sheet?.steps.flatMap((step) => step.ticks).find((tick) => tick.key === entry.tick)?.label;
    const step = label ?? (at ? say("fastener-of", { corner: cornerName(at), number: fastener }) : entry.tick.toLowerCase().replaceAll("_", " "));
    return say("ticked", { step, done: entry.done });
  }
  return [corner, say("entry", { kind: entry.kind.replace(" ", "_") })].filter(Boolean).join(" ");
}
