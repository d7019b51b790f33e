// One place for a reading: typed, or chosen; where its value is; last visit's value beside it; what is asked about it.
import { h, note } from "./bay-dom.mjs";
import { shapeOf, workAsked } from "./bay-held.mjs";
import { TypedReading } from "./bay-typed.mjs";
import { asHere, number, say, told } from "./bay-words.mjs";
import { hasOtherUnit, inWords, pointsOf } from "./bay-written.mjs";

/** Why a value changes, as the server knows it. */
const REASONS = ["MISREAD", "TYPED_WRONG", "MEASURED_AGAIN"];

/**
 * A value of a field with its unit, as it is read aloud.
 *
 * @param {string} text
 * @param {{ unit: string }} field
 */
export const withItsUnit = (text, { unit }) => (unit.startsWith("/") ? `${text}${unit}` : `${text}\u00a0${unit}`);

export class FieldView {
  /** Whether it was focused and nothing typed since. */
  #fresh = false;

  /** What the field showed last, and what was said below it. */
  #shown = "";
  #shape = "";

  /** The text whose points are shown. */
  #pointed = "";

  /** @type {TypedReading} */
  #reading;

  /**
   * @param {bay.Visit} visit
   * @param {bay.Tray} tray
   * @param {bay.Field} field
   * @param {(from: FieldView, toWords: boolean, filling: boolean) => void} moveOn
   * @param {bay.TypingPace} pace
   * @param {boolean} apart leaves what is said about the field to be placed elsewhere, so that its neighbours stay where they are
   */
  constructor(visit, tray, field, moveOn, pace, apart) {
    this.visit = visit;
    this.tray = tray;
    this.apart = apart;
    this.field = field;
    this.moveOn = moveOn;
    this.#reading = new TypedReading(visit, tray, field, pace);
    this.mark = h("span", { className: "mark", role: "img" });
    const id = `f.${field.measure}.${field.corner ?? ""}.${field.spot ?? ""}${field.goesOn ? ".on" : ""}`;
    this.points = h("ol", { className: "read-points", hidden: true, ariaLabel: say("points-read") });
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
      field.points ? this.points : null,
      apart ? null : this.below,
    );
    this.update();
  }

  get isShown() {
    return this.place.checkVisibility();
  }

  get isTyped() {
    return this.input !== undefined;
  }

  get isFilled() {
    return this.visit.look(this.field).written !== "";
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
      id, type: "text", autocomplete: "off", enterKeyHint: "next", maxLength: 200, "data-takes": ".*",
      inputMode: this.field.points ? "text" : "decimal",
      "aria-describedby": `${id}.said`,
      onkeydown: (event) => this.#key(event, input),
      onchange: () => this.commit(input),
      onfocus: () => (this.#fresh = true),
      oninput: () => {
        this.#fresh = false;
        this.#showPoints();
      },
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
   * @param {KeyboardEvent} event
   * @param {HTMLInputElement} input
   */
  #key(event, input) {
    if (event.isComposing || (event.key === "Tab" && event.shiftKey)) {
      return;
    }
    const becomes = this.#reading.key(event.key, input.value);
    if (becomes === "types") {
      return;
    }
    event.preventDefault();
    this.#showKept(input);
    if (becomes !== "stays") {
      this.moveOn(this, event.key === "Tab", becomes === "goes on filling");
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
    // At once: a gauge may type already. What waits for the customer stays before the eyes.
    if (!this.visit.asked(this.field)?.held) {
      this.moveOn(this, true, false);
    }
  }

  /**
   * Keeps what was typed; false when it cannot be a reading.
   *
   * @param {HTMLInputElement} input
   */
  commit(input) {
    const kept = this.#reading.commit(input.value.trim());
    this.#showKept(input);
    return kept;
  }

  /**
   * Keeps a value as if it had been typed, or a word as if it had been tapped.
   *
   * @param {string} text
   */
  put(text) {
    if (this.input) {
      this.input.value = text;
      this.commit(this.input);
    } else if (this.visit.look(this.field).written !== text) {
      this.visit.enter(this.field, text);
    }
  }

  /** @param {HTMLInputElement} input */
  #showKept(input) {
    if (!this.#reading.wrong) {
      input.value = asHere(this.visit.look(this.field).written);
    }
    this.update();
  }

  /** Why what was typed cannot be. */
  #why() {
    const { wrong, wrongText } = this.#reading;
    const { low, high } = this.field;
    return wrong === "cannot-be" ? say("cannot-be", { value: withItsUnit(wrongText, this.field), low: number(low), high: withItsUnit(number(high), this.field) }) : wrong ? say("never-deleted") : "";
  }

  update() {
    const look = this.visit.look(this.field);
    const where = this.visit.asked(this.field)?.held ? "asked" : look.where;
    this.mark.className = `mark ${where}`;
    this.mark.ariaLabel = say("where", { where: where || undefined });
    if (this.input) {
      // What somebody is typing is left alone.
      const focused = document.activeElement === this.input;
      if (this.input.value === this.#shown || !focused) {
        this.input.value = this.#reading.wrong ? this.input.value : asHere(look.written);
        if (focused && this.#fresh) {
          // A value that came from elsewhere took the selection away; what is typed next would be appended to it.
          this.input.select();
        }
      }
      this.#shown = asHere(look.written);
      this.#showPoints();
      this.input.ariaInvalid = String(this.#reading.wrong !== "" || look.where === "refused");
    } else {
      for (const button of this.place.querySelectorAll("button")) {
        button.ariaPressed = String(button.value === look.written);
      }
    }
    this.#showBelow(look);
  }

  /** Each point that was read around a disc, to be tapped and typed anew. */
  #showPoints() {
    const { input } = this;
    const text = input?.value ?? "";
    if (!input || !this.field.points || this.#pointed === text) {
      return;
    }
    this.#pointed = text;
    const points = pointsOf(text);
    this.points.replaceChildren(...points.map(({ start, end }, at) => {
      const choose = () => {
        input.focus();
        // What is typed next takes the place of this point alone, whatever comes from elsewhere meanwhile.
        this.#fresh = false;
        input.setSelectionRange(start, end);
      };
      const button = h("button", { type: "button", className: "quiet", onclick: choose }, h("small", {}, String(at + 1)), text.slice(start, end));
      button.ariaLabel = say("point-read", { n: at + 1, count: points.length, value: text.slice(start, end) });
      return h("li", {}, button);
    }));
    this.points.hidden = points.length === 0;
  }

  /** @param {bay.Look} look */
  #showBelow(look) {
    // Typed in another unit than the field's; a narrow field would hide it.
    const { entry, rival } = look;
    const { asked } = this.#reading;
    const why = this.#why();
    const other = entry && this.input && hasOtherUnit(look.written) ? look.written : "";
    const broken = this.visit.brokenBy(this.field);
    const work = this.visit.asked(this.field);
    const shape = [why, look.where, entry?.refused, asked, rival?.id, other, broken?.sentence, shapeOf(this.visit, work)].join("|");
    if (shape === this.#shape) {
      return;
    }
    this.#shape = shape;
    const parts = [];
    if (why) {
      parts.push(note("wrong", why));
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
    if (asked) {
      parts.push(note("asks", asked), this.#buttons([[say("it-stands"), () => { this.#reading.asked = ""; this.update(); }]]));
    }
    if (rival) {
      const read = this.#aloud(rival.written);
      const standing = rival.standing ? this.#aloud(rival.standing) : "\u2013";
      /** @param {boolean} take */
      const answer = (take) => () => this.visit.record("answer", { rival: rival.id, take });
      parts.push(note("asks", say("which-counts", { person: rival.person, read, standing })), this.#buttons([[read, answer(true)], [standing, answer(false)]]));
    }
    if (work) {
      parts.push(...workAsked(this.visit, this.field, work));
    }
    this.element.classList.toggle("waits", work?.held === true);
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
