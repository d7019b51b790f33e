// Readings by voice: one field for what the tablet's keyboard dictates, what was understood of it as cells at their corners, and
// one tap that enters them as if they were typed.
import { h, note } from "./bay-dom.mjs";
import { withItsUnit } from "./bay-field.mjs";
import { UNITS, lexiconOf } from "./bay-lexicon.mjs";
import { chosen, walk } from "./bay-person.mjs";
import { understand } from "./bay-spoken.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { asHere, cornerName, listed, number, say } from "./bay-words.mjs";
import { bareNumber, inWords, isBare, isSame, isWithin } from "./bay-written.mjs";

const LONGEST = 2_000;

/**
 * What was understood for one field.
 *
 * @typedef {{ field: bay.Field, text: string }} Cell
 */

export class Dictation {
  #text = "";

  /** Where it was spoken. */
  #step = "";

  /** What was entered of it already. */
  #entered = new Set();

  /** @param {bay.View} view */
  constructor(view) {
    this.view = view;
  }

  /** Opens it from wherever the hands are. */
  get button() {
    return h("button", { type: "button", id: "spoken", className: "quiet", onclick: () => this.open() }, say("spoken"));
  }

  open() {
    const { visit } = this.view;
    if (this.#text.trim() === "") {
      this.#begin();
    }
    const lexicon = lexiconOf(say, this.view.steps.flatMap(fieldsOf));
    const place = h("textarea", { id: "spoken-text", rows: 3, maxLength: LONGEST, autocapitalize: "off", spellcheck: false, "aria-describedby": "spoken-hint", lang: chosen().language, value: this.#text });
    const status = h("p", { className: "count", role: "status" });
    const understood = h("div", {});
    const store = h("button", { type: "button", id: "spoken-store", className: "main" });
    /** @type {HTMLDialogElement} */
    const dialog = h("dialog", { className: "panel spoken" });
    dialog.setAttribute("aria-labelledby", "spoken-title");
    /** @type {Cell[]} */
    let open = [];
    let isAll = false;
    let shown = "";
    const show = () => {
      shown = this.#text;
      // A newer sheet may have come from the server meanwhile.
      const step = this.#spokenAt();
      const heard = understand(this.#text, lexicon, this.view.steps, step, (field) => visit.applies(field));
      const cells = heard.flatMap(({ fields, text }) => (text === undefined ? [] : fields.map((field) => ({ field, text }))));
      const marks = heard.flatMap(({ said, why, fields }) => (why ? { said, why, field: fields[0] } : []));
      open = cells.filter((cell) => !this.#isEntered(cell));
      isAll = marks.length === 0;
      status.textContent = say("spoken-count", { n: cells.length, marked: marks.length });
      understood.replaceChildren(...(isAll ? [] : [h("section", { className: "marks" }, h("h3", {}, say("spoken-not-taken")), ...marks.map(({ said, why, field }) => note("wrong", h("span", {}, say("spoken-mark", { said, why: whyNot(why), place: field && placeOf(field) })))))]), ...this.#cells(cells, step));
      store.textContent = say("spoken-store", { n: open.length });
      store.disabled = open.length === 0;
    };
    const hear = () => {
      // A gauge that typed here got its value taken out again.
      this.#text = place.value;
      if (this.#text !== shown) {
        show();
      }
    };
    const enter = () => {
      hear();
      for (const cell of open) {
        this.#entered.add(keyOf(cell));
        this.view.put(cell.field, cell.text);
      }
      if (isAll) {
        this.#begin();
        dialog.close();
      } else {
        show();
        place.focus();
      }
    };
    const startOver = () => {
      this.#begin();
      place.value = "";
      show();
      place.focus();
    };
    place.addEventListener("input", hear);
    place.addEventListener("keyup", hear);
    store.addEventListener("click", enter);
    dialog.addEventListener("close", () => {
      dialog.remove();
      this.view.focus();
    });
    dialog.append(
      h("div", { className: "head" }, h("h2", { id: "spoken-title" }, say("spoken-title", { step: this.#spokenAt().title })), h("button", { type: "button", className: "quiet", onclick: () => dialog.close() }, say("close"))),
      h("label", { htmlFor: "spoken-text" }, say("spoken-text")),
      place,
      h("p", { id: "spoken-hint", className: "ghost" }, say("spoken-hint")),
      status,
      understood,
      h("div", { className: "row foot" }, store, h("button", { type: "button", className: "quiet", onclick: startOver }, say("spoken-clear"))),
    );
    document.body.append(dialog);
    show();
    dialog.showModal();
    place.focus();
  }

  #spokenAt() {
    return this.view.steps.find(({ id }) => id === this.#step) ?? this.view.step;
  }

  #begin() {
    this.#text = "";
    this.#step = this.view.step.id;
    this.#entered.clear();
  }

  /** @param {Cell} cell */
  #isEntered(cell) {
    return this.#entered.has(keyOf(cell)) || isSame(cell.text, this.view.visit.look(cell.field).written);
  }

  /**
   * At their corners; before them what is read of the whole car.
   *
   * @param {Cell[]} cells
   * @param {bay.Step} step
   */
  #cells(cells, step) {
    const corners = walk().filter((corner) => cells.some(({ field }) => field.corner === corner));
    const ofCar = cells.filter(({ field }) => !field.corner);
    return [
      ...(ofCar.length > 0 ? [h("div", { className: "understood" }, ...ofCar.map((cell) => this.#cell(cell, step)))] : []),
      ...(corners.length > 0 ? [h("div", { className: "car" }, ...corners.map((corner) => h("section", { className: `corner ${corner}` }, h("h3", {}, cornerName(corner)), ...cells.filter(({ field }) => field.corner === corner).map((cell) => this.#cell(cell, step)))))] : []),
    ];
  }

  /**
   * With what is told at once of a value that is typed.
   *
   * @param {Cell} cell
   * @param {bay.Step} step
   */
  #cell(cell, step) {
    const { visit } = this.view;
    const { field, text } = cell;
    const isEntered = this.#isEntered(cell);
    const { written } = visit.look(field);
    const broken = visit.brokenBy(field, text);
    const expected = visit.expectedOf(field);
    const asks = expected && !isWithin(bareNumber(text), expected) ? expected.asks : "";
    const elsewhere = fieldsOf(step).includes(field) ? undefined : this.view.steps.find((each) => fieldsOf(each).includes(field));
    return h("div", { className: `cell${isEntered ? " entered" : ""}` },
      h("span", {}, elsewhere && !elsewhere.corner ? say("spoken-at", { label: field.label, step: elsewhere.title }) : field.label),
      h("strong", {}, field.words.length > 0 ? inWords(field, text) : isBare(text) ? withItsUnit(asHere(text), field) : asHere(text)),
      isEntered ? h("small", {}, say("spoken-stored")) : null,
      broken ? note(broken.unsafe ? "unsafe" : "outside", broken.sentence) : null,
      asks ? note("asks", asks) : null,
      !isEntered && written !== "" ? note("here", say("spoken-replaces", { value: asHere(inWords(field, written)) })) : null);
  }
}

/** @param {Cell} cell */
const keyOf = ({ field, text }) => [field.measure, field.corner, field.spot, field.goesOn, text].join();

/** @param {bay.Field} field */
const placeOf = ({ corner, label }) => [corner ? cornerName(corner) : "", label].join(" ").trim();

/**
 * Why something was not taken, with what was expected.
 *
 * @param {bay.Facts & { key: string }} why
 */
function whyNot(why) {
  const { key } = why;
  if (key === "cannot-be") {
    const unit = UNITS[String(why.unit)]?.name ?? String(why.of);
    return say("cannot-be", { value: withItsUnit(asHere(String(why.value)), { unit }), low: number(Number(why.low)), high: withItsUnit(number(Number(why.high)), { unit }) });
  }
  if (key === "spoken-ways") {
    const [one = "", other = ""] = /** @type {string[][]} */ (why.ways).map((way) => listed(way.map(asHere)));
    return say(key, { ways: say("spoken-way", { one, other }) });
  }
  if (key === "spoken-which") {
    return say(key, { choices: listed(/** @type {string[]} */ (why.choices)) });
  }
  return say(key, { corners: listed(walk().map(cornerName)) });
}
