// A gauge types wherever the focus stands: what it types beside a field goes to the next one, or is kept aside, and never presses
// a button or chooses a word.
const OF_A_VALUE = /^[0-9.,+\u2212-]$/;

/** The longest that a gauge takes from one key to the next; no finger is as fast for a whole value. */
const LONGEST_BETWEEN_KEYS_MS = 45;
const A_VALUE_HAS = 2;

/** Tells a gauge from a hand by the time from key to key. */
export class TypingPace {
  #last = Number.NEGATIVE_INFINITY;
  #fastKeys = 0;

  /** @param {number} atMs */
  key(atMs) {
    this.#fastKeys = atMs - this.#last <= LONGEST_BETWEEN_KEYS_MS ? this.#fastKeys + 1 : 0;
    this.#last = atMs;
  }

  /** Whether a gauge typed the last value. */
  get ofGauge() {
    return this.#fastKeys >= A_VALUE_HAS;
  }
}

/** A value that is typed where no field is, key by key. */
export class StrayValue {
  #typed = "";

  /** The value as far as it was typed. */
  get typed() {
    return this.#typed;
  }

  /**
   * What becomes of a key: it begins a value in a field that waits, it strays, it ends what strayed, or it is none of this.
   *
   * @param {string} key
   * @param {() => boolean} fieldWaits
   */
  take(key, fieldWaits) {
    if (OF_A_VALUE.test(key)) {
      if (this.#typed === "" && fieldWaits()) {
        return "goes to the field";
      }
      this.#typed += key;
      return "strays";
    }
    return this.#typed !== "" && key !== "Shift" ? "ends" : "passes";
  }

  /** The value as far as it was typed; a new one begins. */
  end() {
    const typed = this.#typed;
    this.#typed = "";
    return typed;
  }
}

/**
 * Looks after the keys of the page. `next` gives the field that a value typed at an element goes to, or nothing; the tray hears a
 * value that has no place key by key, and keeps it.
 *
 * @param {(at: Element) => HTMLInputElement | undefined} next
 * @param {() => bay.Tray} tray
 */
export function catchStrayValues(next, tray) {
  const stray = new StrayValue();
  const keep = () => {
    const value = stray.end();
    if (value !== "") {
      tray().keep(value);
    }
  };
  document.addEventListener("keydown", (event) => {
    const at = event.target;
    if (!(at instanceof Element) || event.ctrlKey || event.altKey || event.metaKey || event.isComposing || at.matches("input, textarea") || at.closest("dialog")) {
      keep();
      return;
    }
    const field = next(at);
    const becomes = stray.take(event.key, () => field !== undefined);
    if (becomes === "goes to the field") {
      // The key itself then types there.
      field?.focus();
      field?.select();
    } else if (becomes !== "passes") {
      event.preventDefault();
      if (becomes === "strays") {
        tray().hear(stray.typed);
      } else {
        // The Enter or Tab of the gauge.
        keep();
      }
    }
  }, true);
}

/**
 * Whether an element stands after another on the page, or within it.
 *
 * @param {Element} element
 * @param {Element} other
 */
export const follows = (element, other) => Boolean(other.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING);
