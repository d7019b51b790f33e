// What the book did not take, of whichever visit: with its reason, and what can be done with it. Nothing typed goes by itself.
import { h } from "./bay-dom.mjs";
import { chosen } from "./bay-person.mjs";
import { all } from "./bay-store.mjs";
import { fieldsOf, isBare, note, Visit, withUnit } from "./bay-visit.mjs";

const ANSWER_MS = 3_000;
const MOVABLE = ["reading", "tick", "photo"];
const KINDS = { leaving: "wheels on", departure: "the car leaves", answer: "which of two readings counts", tool: "tool", "photo choice": "what a photo belongs to", photo: "photo" };

/** The button of the bar; it is there as long as something is. */
export function showAside(button, outbox) {
  const { refused, notes } = outbox;
  button.hidden = refused.length + notes.length === 0;
  button.textContent = refused.length > 0 ? `${refused.length} not taken` : "Notes";
}

export async function openAside(outbox) {
  const kept = new Map((await all("sheets")).filter((each) => each.sheets).map((each) => [each.visit, each.sheets[chosen().units]]));
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
      h("div", { className: "head" }, h("h2", { id: "aside-title" }, "Not in the book"), h("button", { type: "button", id: "aside-close", className: "quiet", onclick: () => dialog.close() }, "Close")),
      ...refused.map((entry) => refusal(outbox, entry, kept, targets, show)),
      ...(notes.length > 0 ? [h("h3", {}, "Notes on this tablet"), ...notes.map((entry) => noted(outbox, entry, show))] : []),
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
    h("h3", {}, inWords(entry, kept.get(entry.visit)), h("small", {}, ofVisit(entry, kept.get(entry.visit)))),
    note("wrong", entry.refused),
    entry.kind === "reading" ? h("label", { htmlFor: `value.${id}` }, "Another value") : null,
    entry.kind === "reading" ? retype(outbox, entry, kept.get(entry.visit), button) : null,
    others.length > 0 ? h("label", { htmlFor: `visit.${id}` }, "Belongs to another visit") : null,
    others.length > 0 ? move(outbox, entry, others, button) : null,
    h("div", { className: "row" },
      button("Try again", () => outbox.retry(entry)),
      button("Keep as a note", () => outbox.amend(entry, { note: `${inWords(entry, kept.get(entry.visit))}, ${ofVisit(entry, kept.get(entry.visit))}, ${entry.person}, ${new Date(entry.at).toLocaleString()}` }))),
    said);
}

function retype(outbox, entry, sheet, button) {
  const input = h("input", { id: `value.${entry.id}`, type: "text", autocomplete: "off", maxLength: 200, value: entry.written });
  const send = async () => {
    const field = sheet?.steps.flatMap(fieldsOf).find((each) => isAt(each, entry));
    const text = input.value.trim();
    if (text === "" || (!field && isBare(text))) {
      return "Type the value with its unit.";
    }
    const { visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason } = entry;
    await outbox.add({ visit, kind, key, person, measure, corner, spot, wheel, goesOn, shown, reason, written: field ? withUnit(field, text) : text }, entry);
  };
  return h("div", { className: "row" }, input, button("Send", send));
}

function move(outbox, entry, targets, button) {
  const select = h("select", { id: `visit.${entry.id}` }, ...targets.map(([visit, sheet]) => h("option", { value: visit }, `${sheet.car} ${sheet.plate}, ${sheet.day}`)));
  const go = async () => {
    const visit = new Visit(select.value, outbox);
    await visit.load();
    const field = entry.kind === "reading" ? visit.sheet.steps.flatMap(fieldsOf).find((each) => isAt(each, entry) && visit.applies(each)) : undefined;
    if (entry.kind === "reading" && !field) {
      return "That visit has no such place, or its wheels are not recorded yet.";
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
  return h("div", { className: "row" }, select, button("Move it there", go));
}

function noted(outbox, entry, done) {
  const remove = async () => {
    await outbox.drop(entry);
    done();
  };
  return h("section", { className: "aside" },
    h("textarea", { readOnly: true, rows: 2, "aria-label": "Note" , value: entry.note }),
    h("div", { className: "row" },
      entry.blob ? h("a", { className: "button quiet", href: URL.createObjectURL(entry.blob), download: `${entry.id}.jpeg` }, "Save the photo") : null,
      h("button", { type: "button", className: "quiet", onclick: remove }, "Delete")));
}

const isAt = (field, entry) => ["measure", "corner", "spot"].every((part) => (field[part] ?? "") === (entry[part] ?? "")) && Boolean(field.goesOn) === Boolean(entry.goesOn);

const ofVisit = (entry, sheet) => (sheet ? `${sheet.car} ${sheet.plate}, ${sheet.day}` : `visit ${entry.visit}`);

function inWords(entry, sheet) {
  if (entry.kind === "reading") {
    const label = sheet?.steps.flatMap(fieldsOf).find((field) => isAt(field, entry))?.label ?? [entry.measure, entry.spot].filter(Boolean).join(" ").toLowerCase().replaceAll("_", " ");
    return `${[entry.corner, label].filter(Boolean).join(" ")}: ${entry.written}`;
  }
  if (entry.kind === "tick") {
    const [, corner, number] = entry.tick.split(".");
    const label = sheet?.steps.flatMap((step) => step.ticks).find((tick) => tick.key === entry.tick)?.label;
    return `${label ?? (corner ? `${corner} fastener ${number}` : entry.tick.toLowerCase().replaceAll("_", " "))}: ${entry.done ? "ticked" : "taken back"}`;
  }
  return [entry.corner, KINDS[entry.kind]].filter(Boolean).join(" ");
}
