// One place for a reading: typed, or chosen; where its value is; last visit's value beside it; what is asked about it.
import { h } from "./bay-dom.mjs";
import { note } from "./bay-visit.mjs";

const WHERE = {
  writing: "being kept", here: "only on this tablet", held: "waits for a reason", book: "in the book",
  refused: "refused, see below", rival: "two readings, see below", "": "nothing yet",
};
const REASONS = ["Misread.", "Typed wrong.", "Measured again."];

/** A bare number in the field's unit; undefined when a unit or points are written, which the server reads. */
const bare = (text) => (/^[+-]?\d*[.,]?\d+$/.test(text) ? Number(text.replace(",", ".")) : undefined);

const round = (value) => Math.round(value * 1000) / 1000;

export class FieldView {
  /** `apart` leaves what is said about the field to be placed elsewhere, so that its neighbours stay where they are. */
  constructor(visit, field, moveOn, apart = false) {
    this.visit = visit;
    this.apart = apart;
    this.field = field;
    this.moveOn = moveOn;
    this.mark = h("span", { className: "mark", role: "img" });
    const id = `f.${field.measure}.${field.corner ?? ""}.${field.spot ?? ""}${field.goesOn ? ".on" : ""}`;
    this.below = h("div", { className: "below", id: `${id}.said`, ariaLive: "polite" });
    this.input = field.words.length > 0 ? this.#choice(id) : this.#typed(id);
    const last = visit.lastOf(field);
    this.element = h(
      "div",
      { className: `field${field.words.length > 0 ? " words" : ""}${field.points ? " points" : ""}` },
      field.words.length > 0 ? null : h("label", { htmlFor: id }, this.#label()),
      h("span", { className: "box" }, this.input, field.unit && field.words.length === 0 ? h("span", { className: "unit" }, field.unit) : null, this.mark),
      h("span", { className: "ghost" }, last ? h("span", { className: "word" }, "last ") : "", last ? last.written : "\u00a0"),
      apart ? null : this.below,
    );
    this.update();
  }

  /** Whether a value is typed here; else a word is chosen. */
  get typed() {
    return this.field.words.length === 0;
  }

  #label() {
    return this.field.measure === "TREAD_DEPTH" ? this.field.spot.toLowerCase() : this.field.label;
  }

  #typed(id) {
    return h("input", {
      id, type: "text", autocomplete: "off", enterKeyHint: "next", maxLength: 200,
      inputMode: this.field.points ? "text" : "decimal",
      "aria-describedby": `${id}.said`,
      onkeydown: (event) => this.#key(event),
      onchange: () => this.commit(),
      onfocus: () => (this.fresh = true),
      oninput: () => (this.fresh = false),
      onclick: () => this.#tapped(),
    });
  }

  #choice(id) {
    const group = h("fieldset", { className: "choice", id }, h("legend", {}, this.field.label));
    for (const word of this.field.words) {
      group.append(h("button", { type: "button", ariaPressed: "false", onclick: () => this.#choose(word) }, word));
    }
    return group;
  }

  // A gauge or caliper types digits, then Enter or Tab: the reading is kept, and the next field waits. What cannot be a reading
  // stays, selected, so that the next value takes its place; Tab a second time goes on all the same (WCAG 2.2, 2.1.2).
  #key(event) {
    const tab = event.key === "Tab" && !event.shiftKey;
    if (event.isComposing || (event.key !== "Enter" && !tab)) {
      return;
    }
    const text = this.input.value.trim();
    if (tab && (text === this.visit.look(this.field).written || (this.wrong && text === this.wrongText))) {
      return;
    }
    event.preventDefault();
    if (this.commit()) {
      this.moveOn(this, tab);
    } else {
      this.input.select();
    }
  }

  /** A tap into a field selects what is there, so that a gauge replaces it; a second tap sets the cursor. */
  #tapped() {
    if (this.fresh) {
      this.input.select();
    }
    this.fresh = false;
  }

  #choose(word) {
    if (this.visit.look(this.field).written !== word) {
      this.visit.enter(this.field, word);
    }
    // At once: a gauge may type already.
    this.moveOn(this, true);
  }

  /** Keeps what was typed; false when it cannot be a reading. */
  commit() {
    const text = this.input.value.trim();
    const { written, stored } = this.visit.look(this.field);
    if (text === written) {
      this.wrong = "";
      this.update();
      return true;
    }
    const value = bare(text);
    const { low, high, suffix } = this.field;
    this.wrong =
      text === "" ? (stored ? "A reading is never deleted; type the right value." : "")
      : value !== undefined && !(value >= low && value <= high) ? `${text}${suffix} cannot be, expected ${round(low)} to ${round(high)}${suffix}.`
      : "";
    this.wrongText = text;
    if (this.wrong || text === "") {
      this.update();
      return !this.wrong;
    }
    const asked = this.asked;
    this.asked = this.#question(value);
    this.visit.enter(this.field, text, asked ? "Read again." : undefined);
    this.input.value = this.visit.look(this.field).written;
    return true;
  }

  #question(value) {
    const expected = this.visit.expectedOf(this.field);
    return expected && value !== undefined && !(value >= expected.low && value <= expected.high) ? expected.asks : "";
  }

  update() {
    const look = this.visit.look(this.field);
    this.mark.className = `mark ${look.where}`;
    this.mark.ariaLabel = WHERE[look.where];
    if (this.field.words.length > 0) {
      for (const button of this.input.querySelectorAll("button")) {
        button.ariaPressed = String(button.textContent === look.written);
      }
    } else {
      // What somebody is typing is left alone.
      if (this.input.value === this.shown || document.activeElement !== this.input) {
        this.input.value = this.wrong ? this.input.value : look.written;
      }
      this.shown = look.written;
      this.input.ariaInvalid = String(Boolean(this.wrong || look.where === "refused"));
    }
    this.#showBelow(look);
  }

  #showBelow(look) {
    // Typed in another unit than the field's; a narrow field would hide it.
    const other = look.entry && this.field.words.length === 0 && /[a-z°]/i.test(look.written) ? look.written : "";
    const shape = [this.wrong, look.where, look.entry?.refused, this.asked, look.rival?.id, other].join("|");
    if (shape === this.shape) {
      return;
    }
    this.shape = shape;
    const parts = [];
    if (this.wrong) {
      parts.push(note("wrong", this.wrong));
    }
    if (other) {
      parts.push(note("here", `Typed as ${other}.`));
    }
    if (look.where === "refused") {
      parts.push(note("wrong", `${look.entry.written}: ${look.entry.refused}`));
    }
    if (look.where === "held") {
      parts.push(note("asks", "Another value is there already. Why does it change?"), this.#buttons(REASONS, (reason) => this.visit.outbox.amend(look.entry, { reason, held: false })));
      parts.push(this.#buttons(["Keep the old value"], () => this.visit.outbox.drop(look.entry)));
    }
    if (this.asked) {
      parts.push(note("asks", this.asked), this.#buttons(["It stands"], () => { this.asked = ""; this.update(); }));
    }
    if (look.rival) {
      const { rival } = look;
      parts.push(note("asks", `${rival.person} read ${rival.written}; the book has ${rival.standing}. Which one counts?`));
      parts.push(this.#buttons([rival.written, rival.standing], (choice) => this.visit.record("answer", { rival: rival.id, take: choice === rival.written })));
    }
    this.below.replaceChildren(...(this.apart && parts.length > 0 ? [h("strong", {}, this.#label())] : []), ...parts);
    this.element.classList.toggle("speaks", !this.apart && parts.length > 0);
  }

  #buttons(words, chosen) {
    return h("div", { className: "row" }, ...words.map((word) => h("button", { type: "button", className: "quiet", onclick: () => chosen(word) }, word)));
  }
}
