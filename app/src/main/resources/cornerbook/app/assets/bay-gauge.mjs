// A gauge types wherever the focus stands: what it types beside a field goes to the next one, or is said aloud, and never
// presses a button or chooses a word.
const OF_A_VALUE = /^[0-9.,+\u2212-]$/;

/**
 * Looks after the keys of the page. `next` gives the field that a value typed at an element goes to, or nothing; `say` is called
 * with a value that has no place.
 */
export function catchStrayValues(next, say) {
  let strayed = "";
  document.addEventListener("keydown", (event) => {
    const at = event.target;
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing || at.matches("input, textarea") || at.closest("dialog")) {
      strayed = "";
      return;
    }
    if (OF_A_VALUE.test(event.key)) {
      const field = strayed === "" ? next(at) : undefined;
      if (field) {
        // The key itself then types there.
        field.focus();
        field.select();
        return;
      }
      event.preventDefault();
      strayed += event.key;
      say(strayed);
    } else if (strayed !== "" && event.key !== "Shift") {
      // The Enter or Tab of the gauge.
      strayed = "";
      event.preventDefault();
    }
  }, true);
}

/** Whether an element stands after another on the page, or within it. */
export const follows = (element, other) => Boolean(other.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING);
