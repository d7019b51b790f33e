// A gauge types wherever the focus stands: what it types beside a field goes to the next one, or is said aloud, and never
// presses a button or chooses a word.
const OF_A_VALUE = /^[0-9.,+\u2212-]$/;

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
    if (this.#typed !== "" && key !== "Shift") {
      // The Enter or Tab of the gauge.
      this.forget();
      return "ends";
    }
    return "passes";
  }

  forget() {
    this.#typed = "";
  }
}

/**
 * Looks after the keys of the page. `next` gives the field that a value typed at an element goes to, or nothing; `say` is called
 * with a value that has no place.
 *
 * @param {(at: Element) => HTMLInputElement | undefined} next
 * @param {(value: string) => void} say
 */
export function catchStrayValues(next, say) {
  const stray = new StrayValue();
  document.addEventListener("keydown", (event) => {
    const at = event.target;
    if (!(at instanceof Element) || event.ctrlKey || event.altKey || event.metaKey || event.isComposing || at.matches("input, textarea") || at.closest("dialog")) {
      stray.forget();
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
        say(stray.typed);
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
