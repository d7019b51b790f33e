// A gauge types in any order, wherever the hands are: each value ends in a field or lies in the tray, whole, and presses nothing.
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { GaugeKeys, TypingPace } from "../../main/resources/cornerbook/app/assets/bay-gauge.mjs";
import { nextPlace } from "../../main/resources/cornerbook/app/assets/bay-steps.mjs";
import { field, newTablet, sheet, step } from "./tablet.mjs";

const ORDERS = 1_000;
const VALUES = 15;
const GAUGE_MS = 8;
const PAUSE_MS = 900;

/** @type {bay.Corner[]} */
const CORNERS = ["LF", "RF", "LR", "RR"];
const FIELDS = CORNERS.flatMap((corner) => [
  field({ measure: "PAD_THICKNESS", corner, spot: "OUTER", suffix: " mm", high: 30 }),
  field({ measure: "PAD_THICKNESS", corner, spot: "INNER", suffix: " mm", high: 30 }),
  field({ measure: "PAD_MOVEMENT", corner, words: [{ written: "free", label: "free", undone: false }] }),
  field({ measure: "DISC_THICKNESS_VARIATION", corner, suffix: " mm", high: 2 }),
]);
const SHEET = sheet({ steps: [step({ id: "BRAKES" }, ...FIELDS)] });

let Outbox;
let Visit;
let TypedReading;

beforeEach(async () => {
  const { kept } = newTablet();
  kept.set("person", "Ada");
  ({ Outbox } = await import("../../main/resources/cornerbook/app/assets/bay-outbox.mjs"));
  ({ Visit } = await import("../../main/resources/cornerbook/app/assets/bay-visit.mjs"));
  ({ TypedReading } = await import("../../main/resources/cornerbook/app/assets/bay-typed.mjs"));
});

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
function chance(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A step on a tablet with what a browser does with keys: fields, words to choose, text, buttons; a dialog that may be open. */
class Page {
  pressed = 0;
  dialogIsOpen = false;
  #nowMs = 0;

  constructor(visit) {
    this.visit = visit;
    this.tray = { keep: (written) => visit.outbox.add({ visit: visit.id, kind: "stray", person: "Ada", written }) };
    const pace = new TypingPace();
    this.keys = new GaugeKeys(pace);
    const fields = FIELDS.map((each) => ({
      reading: each.words.length === 0 ? new TypedReading(visit, this.tray, each, pace) : undefined,
      text: each.words.length === 0 ? "" : undefined, takes: ".*", selected: false, isShown: true, isTyped: each.words.length === 0,
      get isFilled() {
        return visit.look(each).written !== "";
      },
    }));
    const other = (parts) => ({ text: undefined, isShown: true, isTyped: false, isFilled: false, selected: false, ...parts });
    this.places = [other({}), other({ text: "", takes: "\\d{4,}" }), ...fields, other({ text: "noisy", takes: "" }), other({})];
    this.inDialog = [other({}), other({ text: "", takes: "\\d{4,}" })];
    this.at = this.places[0];
  }

  /** A hand is laid on a place that has no value, or opens or closes a dialog. */
  layHands(random) {
    this.leave();
    this.dialogIsOpen = random() < 0.2;
    const places = this.dialogIsOpen ? this.inDialog : this.places.filter((place) => !place.isFilled);
    this.at = places[Math.floor(random() * places.length)];
    this.at.selected = true;
    this.#nowMs += PAUSE_MS;
  }

  /** What a browser tells a field that is left. */
  leave() {
    this.at.reading?.commit(this.at.text);
  }

  #goTo(place) {
    this.at = place ?? this.places.at(-1);
    this.at.selected = true;
  }

  #empty() {
    return this.places.slice(this.places.indexOf(this.at) + 1).find((place) => place.isTyped && place.text === "");
  }

  press(key) {
    this.#nowMs += GAUGE_MS;
    const { at } = this;
    const where = at.text === undefined ? { waits: () => !this.dialogIsOpen && this.#empty() !== undefined } : { text: at.text, takes: (value) => new RegExp(`^(?:${at.takes})$`).test(value) };
    const { does, kept, text } = this.keys.press(key, this.#nowMs, where);
    if (kept !== undefined) {
      this.tray.keep(kept);
    }
    if (does === "goes to the field") {
      this.#goTo(this.#empty());
      this.#type(key);
    } else if (does === "presses nothing") {
      at.text = text ?? at.text;
    } else if (at.reading) {
      this.#atReading(key);
    } else if (at.text !== undefined && key.length === 1) {
      this.#type(key);
    } else if (key === "Enter" && at.text === undefined) {
      this.pressed += 1;
    }
  }

  #atReading(key) {
    const { at } = this;
    const becomes = at.reading.key(key, at.text);
    if (becomes === "types") {
      if (key.length === 1) {
        this.#type(key);
      }
      return;
    }
    at.selected = true;
    if (becomes !== "stays") {
      this.#goTo(nextPlace(this.places.filter((place) => place.takes === ".*"), at, key === "Tab", becomes === "goes on filling"));
    }
  }

  #type(key) {
    const { at } = this;
    at.text = (at.selected ? "" : at.text) + key;
    at.selected = false;
  }
}

test(`no value is lost in ${ORDERS} orders of typing`, async () => {
  for (let seed = 1; seed <= ORDERS; seed++) {
    const random = chance(seed);
    const { store } = newTablet();
    const outbox = new Outbox(store);
    // Nothing goes out here.
    outbox.send = async () => {};
    const visit = new Visit("v", outbox);
    visit.sheets = { en: { metric: SHEET } };
    const page = new Page(visit);
    /** @type {string[]} */
    const typed = [];
    for (let i = 0; i < VALUES; i++) {
      if (random() < 0.6) {
        page.layHands(random);
      }
      const value = `${Math.floor(random() * 10)}.${String(i + 10)}`;
      typed.push(value);
      for (const key of [...value, random() < 0.5 ? "Enter" : "Tab"]) {
        page.press(key);
      }
    }
    page.leave();
    const kept = outbox.entries.map((entry) => entry.written.split(" ")[0]);
    assert.deepEqual(kept.sort(), typed.sort(), `seed ${seed}`);
    assert.equal(page.pressed, 0, `seed ${seed}`);
  }
});
