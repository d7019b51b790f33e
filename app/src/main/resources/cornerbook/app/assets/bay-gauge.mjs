// A gauge types wherever the focus stands: what it types beside a field goes to the next one, or is kept aside, and never presses
// a button or chooses a word.
const BEGINS_A_VALUE = /^[0-9.,+\u2212-]$/;
const VALUE = /^[+\u2212-]?\d{0,6}(?:[.,]\d{0,4})?$/;

/** The longest that a gauge takes from one key to the next; no finger is as fast for a whole value. */
const LONGEST_BETWEEN_KEYS_MS = 45;
const A_VALUE_HAS = 2;

/** A gauge that ends its values with nothing. */
const SILENCE_MS = 1_000;

/** Tells a gauge from a hand by the time from key to key. */
export class TypingPace {
  #last = Number.NEGATIVE_INFINITY;
  #fastKeys = 0;

  /** @param {number} atMs */
  key(atMs) {
    this.#fastKeys = atMs - this.#last <= LONGEST_BETWEEN_KEYS_MS ? this.#fastKeys + 1 : 0;
    this.#last = atMs;
  }

  /** Whether the last key came as fast as a gauge types. */
  get isFast() {
    return this.#fastKeys > 0;
  }

  /**
   * Whether a gauge typed a value that was just ended.
   *
   * @param {string} value
   */
  isOfGauge(value) {
    return this.#fastKeys >= Math.min(A_VALUE_HAS, value.length);
  }
}

/**
 * Where a key arrives: a place for text with what it has and which values it takes, or anything else, with whether a field waits
 * for a value that is typed there.
 *
 * @typedef {{ text: string, takes: (value: string) => boolean } | { waits: () => boolean }} KeyPlace
 */

/**
 * What becomes of a key. The page does with it what it always does; or it begins a value in the field that waits; or it is kept
 * from pressing what has the focus, for it is part or end of a value without a place, or came from a gauge; or it ends such a
 * value in a place for other text, which gets its text back.
 *
 * @typedef {{ does: "passes" | "goes to the field" | "presses nothing", kept?: string, text?: string }} KeyBecomes
 */

/** Finds the values among the keys of a page, wherever the focus stands; each ends at a field or is kept. */
export class GaugeKeys {
  #stray = "";

  /** What came as fast as a gauge types, and what stood at its place before. */
  #burst = "";
  #before = "";

  /** @param {TypingPace} pace that hears each key from here */
  constructor(pace) {
    this.pace = pace;
  }

  /** The value without a place as far as it was typed. */
  get typed() {
    return this.#stray;
  }

  /** The same, when nothing more comes of it. */
  end() {
    const typed = this.#stray;
    this.#stray = "";
    return typed || undefined;
  }

  /**
   * @param {string} key
   * @param {number} atMs
   * @param {KeyPlace} at
   * @returns {KeyBecomes}
   */
  press(key, atMs, at) {
    this.pace.key(atMs);
    if (!this.pace.isFast) {
      this.#burst = "";
    }
    return "text" in at ? this.#inText(key, at) : this.#elsewhere(key, at);
  }

  /**
   * @param {string} key
   * @param {{ text: string, takes: (value: string) => boolean }} at
   * @returns {KeyBecomes}
   */
  #inText(key, { text, takes }) {
    const kept = this.end();
    if (this.#burst === "") {
      this.#before = text;
    }
    if (key !== "Enter" && key !== "Tab") {
      this.#burst += key.length === 1 ? key : "";
      return { does: "passes", kept };
    }
    const value = this.#burst;
    this.#burst = "";
    return value !== "" && VALUE.test(value) && !takes(value) && this.pace.isOfGauge(value) ? { does: "presses nothing", kept: value, text: this.#before } : { does: "passes", kept };
  }

  /**
   * @param {string} key
   * @param {{ waits: () => boolean }} at
   * @returns {KeyBecomes}
   */
  #elsewhere(key, { waits }) {
    // A unit may follow.
    if (BEGINS_A_VALUE.test(key) || (this.#stray !== "" && key.length === 1)) {
      if (this.#stray === "" && waits()) {
        return { does: "goes to the field" };
      }
      this.#stray += key;
      return { does: "presses nothing" };
    }
    if (this.#stray !== "" && key !== "Shift") {
      return { does: "presses nothing", kept: this.end() };
    }
    const typed = this.#burst;
    this.#burst += key.length === 1 ? key : "";
    return { does: (key === "Enter" || key === " ") && typed.length >= A_VALUE_HAS ? "presses nothing" : "passes" };
  }
}

/** Finds the tag of a wheel among the keys of a page: a scanner types it and Enter, as fast as a gauge. */
export class TagKeys {
  #typed = "";
  #before = "";

  /**
   * @param {TypingPace} pace that has heard each key
   * @param {(typed: string) => boolean} isTag
   */
  constructor(pace, isTag) {
    this.pace = pace;
    this.isTag = isTag;
  }

  /**
   * The tag that ends with this key, and what stood at its place before; nothing while none does.
   *
   * @param {string} key
   * @param {string} text what stands where the key arrives
   * @returns {{ tag: string, before: string } | undefined}
   */
  press(key, text) {
    if (!this.pace.isFast) {
      this.#typed = "";
      this.#before = text;
    }
    if (key !== "Enter") {
      this.#typed += key.length === 1 ? key : "";
      return undefined;
    }
    const tag = this.#typed;
    this.#typed = "";
    return tag !== "" && this.isTag(tag) ? { tag, before: this.#before } : undefined;
  }
}

/**
 * Looks after the keys of the page. `next` gives the field that a value typed at an element goes to, or nothing; the tray hears a
 * value that has no place key by key, and keeps it. A tag that a scanner typed anywhere but in a place for tags goes to `scanned`.
 *
 * @param {TypingPace} pace
 * @param {(at: Element) => HTMLInputElement | undefined} next
 * @param {() => bay.Tray} tray
 * @param {{ isTag: (typed: string) => boolean, scanned: (tag: string) => void }} tags
 */
export function catchStrayValues(pace, next, tray, { isTag, scanned }) {
  const keys = new GaugeKeys(pace);
  const tags = new TagKeys(pace, isTag);
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let silence;
  /** @param {string | undefined} value */
  const keep = (value) => value !== undefined && tray().keep(value);
  const end = () => keep(keys.end());
  document.addEventListener("keydown", (event) => {
    const at = event.target;
    if (!(at instanceof HTMLElement) || event.ctrlKey || event.altKey || event.metaKey || event.isComposing) {
      return;
    }
    /** @type {HTMLInputElement | undefined} */
    let field;
    const { does, kept, text } = keys.press(event.key, event.timeStamp, textPlace(at) ?? { waits: () => (field = next(at)) !== undefined });
    clearTimeout(silence);
    const isText = at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement;
    const found = tags.press(event.key, isText ? at.value : "");
    if (found && !at.id.startsWith("tag.")) {
      event.preventDefault();
      event.stopPropagation();
      if (isText) {
        at.value = found.before;
      }
      keys.end();
      tray().hush();
      scanned(found.tag);
      return;
    }
    if (does === "goes to the field") {
      // The key itself then types there.
      field?.focus();
      field?.select();
    } else if (does === "presses nothing") {
      event.preventDefault();
      event.stopPropagation();
      if (text !== undefined) {
        Object.assign(at, { value: text });
      }
    }
    keep(kept);
    if (keys.typed !== "") {
      tray().hear(keys.typed);
      silence = setTimeout(end, SILENCE_MS);
    }
  }, true);
  addEventListener("pagehide", end);
}

/**
 * A place for text says by itself which values it takes; as pattern, so that its whole value is one.
 *
 * @param {HTMLElement} at
 */
function textPlace(at) {
  if (!(at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement)) {
    return undefined;
  }
  const { takes } = at.dataset;
  return { text: at.value, takes: (/** @type {string} */ value) => takes !== undefined && new RegExp(`^(?:${takes})$`).test(value) };
}

/**
 * Whether an element stands after another on the page, or within it.
 *
 * @param {Element} element
 * @param {Element} other
 */
export const follows = (element, other) => Boolean(other.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING);
