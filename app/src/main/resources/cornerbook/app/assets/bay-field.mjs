// One place for a reading: typed, or chosen; where its value is; last visit's value beside it; what is asked about it.
import { h, note } from "./bay-dom.mjs";
import { TypingPace } from "./bay-gauge.mjs";
import { asHere, number, say, told } from "./bay-words.mjs";
import { bareNumber, hasOtherUnit, inWords, isSame, isWithin } from "./bay-written.mjs";

/** Why a value changes, as the server knows it. */
const REASONS = ["MISREAD", "TYPED_WRONG", "MEASURED_AGAIN"];
const READ_AGAIN = "READ_AGAIN";

/**
 * A value of a field with its unit, as it is read aloud.
 *
 * @param {string} text
 * @param {bay.Field} field
 */
const withItsUnit = (text, { unit }) => (unit.startsWith("/") ? `${text}${unit}` : `${text}\u00a0${unit}`);

export class FieldView {
  /** Whether it was focused and nothing typed since. */
  #fresh = false;

  /** What is wrong with what was typed, and that text. */
  #wrong = "";
  #wrongText = "";

  /** What is asked about the value that was kept. */
  #asked = "";

  /** What the field showed last, and what was said below it. */
  #shown = "";
  #shape = "";

  #pace = new TypingPace();

  /**
   * @param {bay.Visit} visit
   * @param {bay.Tray} tray
   * @param {bay.Field} field
   * @param {(from: FieldView, toWords: boolean) => void} moveOn
   * @param {boolean} apart leaves what is said about the field to be placed elsewhere, so that its neighbours stay where they are
   */
  constructor(visit, tray, field, moveOn, apart) {
    this.visit = visit;
    this.tray = tray;
    this.apart = apart;
    this.field = field;
    this.moveOn = moveOn;
    this.mark = h("span", { className: "mark", role: "img" });
    const id = `f.${field.measure}.${field.corner ?? ""}.${field.spot ?? ""}${field.goesOn ? ".on" : ""}`;
    this.below = h("div", { className: "below", id: `${id}.said`, ariaLive: "polite" });
    this.input = field.words.length > 0 ? undefined : this.#typed(id);
    this.place = this.input ?? this.#choice(id);
    const last = visit.lastOf(field);
    this.element = h(
      "div",
      { className: `field${field.words.length > 0 ? " words" : ""}${field.points ? " points" : ""}` },
      field.words.length > 0 ? null : h("label", { htmlFor: id }, this.#label()),
      h("span", { className: "box" }, this.place, field.unit && field.words.length === 0 ? h("span", { className: "unit" }, field.unit) : null, this.mark),
      h("span", { className: "ghost" }, last ? h("span", { className: "word" }, `${say("last")} `) : "", last ? asHere(last.written) : "\u00a0"),
      apart ? null : this.below,
    );
    this.update();
  }

  #label() {
    return this.field.shortLabel ?? this.field.label;
  }

  /**
   * Where a value is typed.
   *
   * @param {string} id
   */
  #typed(id) {
    /** @type {HTMLInputElement} */
    const input = h("input", {
      id, type: "text", autocomplete: "off", enterKeyHint: "next", maxLength: 200,
      inputMode: this.field.points ? "text" : "decimal",
      "aria-describedby": `${id}.said`,
      onkeydown: (event) => this.#key(event, input),
      onchange: () => this.commit(input),
      onfocus: () => (this.#fresh = true),
      oninput: () => (this.#fresh = false),
      onclick: () => this.#tapped(input),
    });
    return input;
  }

  /**
   * Where a word is chosen.
   *
   * @param {string} id
   */
  #choice(id) {
    const group = h("fieldset", { className: "choice", id }, h("legend", {}, this.field.label));
    for (const word of this.field.words) {
      group.append(h("button", { type: "button", ariaPressed: "false", value: word.written, onclick: () => this.#choose(word.written) }, word.label));
    }
    return group;
  }

  /**
   * A gauge or caliper types digits, then Enter or Tab: the reading is kept, and the next field waits. What cannot be a reading
   * stays, selected, so that the next value takes its place; Tab a second time goes on all the same (WCAG 2.2, 2.1.2).
   *
   * @param {KeyboardEvent} event
   * @param {HTMLInputElement} input
   */
  #key(event, input) {
    const tab = event.key === "Tab" && !event.shiftKey;
    this.#pace.key(event.timeStamp);
    if (event.isComposing || (event.key !== "Enter" && !tab)) {
      return;
    }
    const text = input.value.trim();
    if (tab && (isSame(text, this.visit.look(this.field).written) || (this.#wrong && text === this.#wrongText))) {
      return;
    }
    event.preventDefault();
    if (this.commit(input)) {
      this.moveOn(this, tab);
    } else if (this.#pace.ofGauge && text !== "") {
      // The hands may not look: the next value takes its place, and this one is not lost.
      this.tray.keep(text);
    }
    if (document.activeElement === input) {
      input.select();
    }
  }

  /**
   * A tap into a field puts down the value that is in hand, or selects what is there, so that a gauge replaces it; a second tap
   * sets the cursor.
   *
   * @param {HTMLInputElement} input
   */
  #tapped(input) {
    const given = this.tray.give();
    if (given !== undefined) {
      input.value = given;
      if (!this.commit(input)) {
        this.tray.keep(given);
      }
    }
    if (this.#fresh || given !== undefined) {
      input.select();
    }
    this.#fresh = false;
  }

  /** @param {string} word */
  #choose(word) {
    if (this.visit.look(this.field).written !== word) {
      this.visit.enter(this.field, word);
    }
    // At once: a gauge may type already.
    this.moveOn(this, true);
  }

  /**
   * Keeps what was typed; false when it cannot be a reading.
   *
   * @param {HTMLInputElement} input
   */
  commit(input) {
    const text = input.value.trim();
    const { written, stored } = this.visit.look(this.field);
    if (isSame(text, written)) {
      this.#wrong = "";
      this.update();
      return true;
    }
    const value = bareNumber(text);
    const { low, high } = this.field;
    this.#wrong =
      text === "" ? (stored ? say("never-deleted") : "")
      : !isWithin(value, this.field) ? say("cannot-be", { value: withItsUnit(text, this.field), low: number(low), high: withItsUnit(number(high), this.field) })
      : "";
    this.#wrongText = text;
    if (this.#wrong || text === "") {
      this.update();
      return !this.#wrong;
    }
    const asked = this.#asked;
    this.#asked = this.#question(value);
    this.visit.enter(this.field, text, asked ? READ_AGAIN : undefined);
    input.value = asHere(this.visit.look(this.field).written);
    return true;
  }

  /** @param {number | undefined} value */
  #question(value) {
    const expected = this.visit.expectedOf(this.field);
    return expected && !isWithin(value, expected) ? expected.asks : "";
  }

  update() {
    const look = this.visit.look(this.field);
    this.mark.className = `mark ${look.where}`;
    this.mark.ariaLabel = say("where", { where: look.where || undefined });
    if (this.input) {
      // What somebody is typing is left alone.
      const focused = document.activeElement === this.input;
      if (this.input.value === this.#shown || !focused) {
        this.input.value = this.#wrong ? this.input.value : asHere(look.written);
        if (focused && this.#fresh) {
          // A value that came from elsewhere took the selection away; what is typed next would be appended to it.
          this.input.select();
        }
      }
      this.#shown = asHere(look.written);
      this.input.ariaInvalid = String(this.#wrong !== "" || look.where === "refused");
    } else {
      for (const button of this.place.querySelectorAll("button")) {
        button.ariaPressed = String(button.value === look.written);
      }
    }
    this.#showBelow(look);
  }

  /** @param {bay.Look} look */
  #showBelow(look) {
    // Typed in another unit than the field's; a narrow field would hide it.
    const { entry, rival } = look;
    const other = entry && this.input && hasOtherUnit(look.written) ? look.written : "";
    const broken = this.visit.brokenBy(this.field);
    const shape = [this.#wrong, look.where, entry?.refused, this.#asked, rival?.id, other, broken?.sentence].join("|");
    if (shape === this.#shape) {
      return;
    }
    this.#shape = shape;
    const parts = [];
    if (this.#wrong) {
      parts.push(note("wrong", this.#wrong));
    }
    if (broken) {
      parts.push(note(broken.unsafe ? "unsafe" : "outside", broken.sentence));
    }
    this.element.classList.toggle("unsafe", broken?.unsafe === true);
    this.element.classList.toggle("outside", broken?.unsafe === false);
    if (other) {
      parts.push(note("here", say("typed-as", { written: asHere(other) })));
    }
    if (entry?.refused) {
      parts.push(note("wrong", say("value-refused", { value: this.#aloud(entry.written), why: told(entry.refused) })));
    }
    if (entry && look.where === "held") {
      parts.push(note("asks", say("why-changed")), this.#buttons(REASONS.map((reason) => [say("reason", { reason }), () => this.visit.outbox.amend(entry, { reason, held: false })])));
      parts.push(this.#buttons([[say("keep-old"), () => this.visit.outbox.drop(entry)]]));
    }
    if (this.#asked) {
      parts.push(note("asks", this.#asked), this.#buttons([[say("it-stands"), () => { this.#asked = ""; this.update(); }]]));
    }
    if (rival) {
      const read = this.#aloud(rival.written);
      const standing = rival.standing ? this.#aloud(rival.standing) : "\u2013";
      /** @param {boolean} take */
      const answer = (take) => () => this.visit.record("answer", { rival: rival.id, take });
      parts.push(note("asks", say("which-counts", { person: rival.person, read, standing })), this.#buttons([[read, answer(true)], [standing, answer(false)]]));
    }
    this.below.replaceChildren(...(this.apart && parts.length > 0 ? [h("strong", {}, this.#label())] : []), ...parts);
    this.element.classList.toggle("speaks", !this.apart && parts.length > 0);
  }

  /**
   * What was read, as it is said.
   *
   * @param {string} written
   */
  #aloud(written) {
    return asHere(inWords(this.field, written));
  }

  /**
   * Each with its words and what it does.
   *
   * @param {[string, () => void][]} buttons
   */
  #buttons(buttons) {
    return h("div", { className: "row" }, ...buttons.map(([words, onclick]) => h("button", { type: "button", className: "quiet", onclick }, words)));
  }
}
