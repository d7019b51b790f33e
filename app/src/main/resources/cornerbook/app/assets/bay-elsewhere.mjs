// What was entered at the wrong corner or the wrong car: tapped, and then where it belongs.
import { ask } from "./bay-ask.mjs";
import { h } from "./bay-dom.mjs";
import { walk } from "./bay-person.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { sheetOf, titleOf } from "./bay-visit.mjs";
import { asHere, cornerName, say } from "./bay-words.mjs";
import { inWords } from "./bay-written.mjs";

const ANSWER_MS = 3_000;

/**
 * Something that the book has; all fasteners of a wheel are one.
 *
 * @typedef {{ thing: "READING" | "TICK" | "PHOTO", ids: string[], corner?: bay.Corner, words: string, field?: bay.Field }} Thing
 */

/**
 * What the book has of a step, and nobody here is about to change.
 *
 * @param {bay.Visit} visit
 * @param {bay.Step} step
 * @returns {Thing[]}
 */
function thingsOf(visit, step) {
  const going = visit.here("move").filter(({ refused }) => !refused).map(({ moved }) => moved);
  /** @type {Thing[]} */
  const readings = fieldsOf(step).filter((field) => visit.applies(field)).flatMap((field) => {
    const { entry, stored, written } = visit.look(field);
    const place = [field.corner && cornerName(field.corner), field.label].filter(Boolean).join(" ");
    return stored && !entry ? [{ thing: "READING", ids: [stored.id], corner: field.corner, field, words: say("reading", { place, value: asHere(inWords(field, written)) }) }] : [];
  });
  const ticked = Object.entries(visit.state.ticks).filter(([, tick]) => tick.done);
  /** @type {Thing[]} */
  const ticks = step.ticks.flatMap(({ key, label }) => ticked.filter(([name]) => name === key).map(([, { id }]) => ({ thing: "TICK", ids: [id], words: label })));
  /** @type {Thing[]} */
  const wheels = step.kind !== "TORQUE" ? [] : walk().flatMap((corner) => {
    const ids = ticked.filter(([name]) => name.startsWith(`FASTENER.${corner}.`)).map(([, { id }]) => id);
    return ids.length > 0 ? [{ thing: "TICK", ids, corner, words: say("fasteners-of", { corner: cornerName(corner), n: ids.length }) }] : [];
  });
  const shown = step.corner !== undefined || step.id === "RECEIVE" ? visit.state.photos.filter(({ corner }) => corner === step.corner) : [];
  /** @type {Thing[]} */
  const photos = shown.map(({ id, corner, person }) => ({ thing: "PHOTO", ids: [id], corner, words: say("photo-by", { person }) }));
  return [...readings, ...ticks, ...wheels, ...photos].filter(({ ids }) => !ids.some((id) => going.includes(id)));
}

/**
 * The other visits of today that this tablet has.
 *
 * @param {bay.Visit} visit
 */
async function others(visit) {
  const kept = (await visit.outbox.store.all("sheets")).flatMap(({ visit: id, sheets }) => {
    const sheet = sheetOf(sheets);
    return sheet && id !== visit.id ? [{ id, title: titleOf(sheet) }] : [];
  });
  /** @type {string[]} */
  const today = await ask("/bay/today.json", {}, ANSWER_MS).then((answer) => answer.json()).catch(() => kept.map(({ id }) => id));
  return kept.filter(({ id }) => today.includes(id));
}

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function elsewhere(view, step) {
  const { visit } = view;
  /** @type {Set<string>} */
  const chosen = new Set();
  const what = h("div", { className: "row" });
  const where = h("div", { className: "row", hidden: true });
  const details = h("details", { className: "elsewhere" }, h("summary", {}, say("belongs-elsewhere")), h("p", {}, say("elsewhere-what")), what, where);
  /** @type {{ id: string, title: string }[]} */
  let cars = [];
  let shown = "";
  /**
   * The corner at which something was read already: nothing is written over without a second tap.
   *
   * @type {bay.Corner | undefined}
   */
  let asked;
  const taken = () => thingsOf(visit, step).filter(({ ids }) => ids.every((id) => chosen.has(id)));
  /**
   * What was read at that corner already.
   *
   * @param {bay.Corner} corner
   */
  const readThere = (corner) => taken().flatMap(({ field }) => {
    const there = field && visit.sheet.steps.flatMap(fieldsOf).find((each) => each.corner === corner && each.measure === field.measure && each.spot === field.spot && visit.applies(each));
    const written = there ? visit.look(there).written : "";
    return there && written ? [say("reading", { place: [cornerName(corner), there.label].join(" "), value: asHere(inWords(there, written)) })] : [];
  });
  /** @param {{ to?: string, corner?: bay.Corner, instead?: boolean }} goal */
  const move = async (goal) => {
    const things = taken();
    chosen.clear();
    asked = undefined;
    await Promise.all(things.flatMap(({ thing, ids }) => ids.map((moved) => visit.record("move", { thing, moved, ...goal }))));
  };
  /** @param {bay.Corner} corner */
  const moveTo = (corner) => {
    if (readThere(corner).length === 0) {
      return move({ corner });
    }
    asked = corner;
    return showWhere();
  };
  const showWhere = () => {
    const things = taken();
    if (asked && things.length > 0) {
      const corner = asked;
      where.replaceChildren(
        h("p", { className: "note caution", role: "status" }, say("read-there-already", { there: readThere(corner).join("; ") })),
        h("button", { type: "button", className: "quiet", onclick: () => move({ corner, instead: true }) }, say("move-instead", { place: cornerName(corner) })),
        h("button", { type: "button", className: "quiet", onclick: leave }, say("leave-it")),
      );
      return;
    }
    const corners = things.length > 0 && things.every(({ corner }) => corner) ? walk().filter((corner) => things.every((each) => each.corner !== corner)) : [];
    where.hidden = things.length === 0;
    where.replaceChildren(
      ...corners.map((corner) => h("button", { type: "button", className: "quiet", onclick: () => moveTo(corner) }, say("move-to", { place: cornerName(corner) }))),
      ...cars.map(({ id, title }) => h("button", { type: "button", className: "quiet", onclick: () => move({ to: id }) }, say("move-to", { place: title }))),
    );
  };
  const leave = () => {
    asked = undefined;
    showWhere();
  };
  const update = () => {
    const things = thingsOf(visit, step);
    details.hidden = things.length === 0;
    // The line under a finger is made anew only when it says something else.
    const now = JSON.stringify(things);
    if (shown !== now) {
      shown = now;
      what.replaceChildren(...things.map(({ ids, words }) => {
        /** @type {HTMLButtonElement} */
        const button = h("button", { type: "button", className: "tick", ariaPressed: String(ids.every((id) => chosen.has(id))), onclick: () => {
          const on = button.ariaPressed !== "true";
          ids.forEach((id) => (on ? chosen.add(id) : chosen.delete(id)));
          button.ariaPressed = String(on);
          leave();
        } }, words);
        return button;
      }));
      showWhere();
    }
  };
  details.addEventListener("toggle", async () => {
    if (details.open) {
      cars = await others(visit);
      showWhere();
    }
  });
  view.onUpdate(update);
  return details;
}
