// Enter goes to the next field, so that a gauge that types its value and Enter fills the form by itself.
// Without this module Enter does nothing in the entry forms: their first button is disabled.
const moves = "input:not([type=hidden]):not([type=search]), select";

/**
 * @param {ParentNode} within
 * @param {string} selector
 */
const elements = (within, selector) => /** @type {HTMLElement[]} */ ([...within.querySelectorAll(selector)]);

document.addEventListener("keydown", (event) => {
  const field = event.target;
  if (event.key !== "Enter" || event.isComposing || !(field instanceof HTMLElement) || !field.matches(moves)) {
    return;
  }
  const form = field.closest("form[method=post]");
  if (!form) {
    return;
  }
  event.preventDefault();
  // What is folded away is passed by.
  const fields = elements(form, moves).filter((each) => each.checkVisibility());
  const next = fields[fields.indexOf(field) + 1] ?? elements(form, "button:not([disabled])").at(-1);
  next?.focus();
  if (next instanceof HTMLInputElement && next.type === "text") {
    next.select();
  }
});

// After a refusal the hands go straight to the first field that was not understood, or is asked about.
elements(document, ".field:is(.wrong, .asked) :is(input, select), .place.wrong select")[0]?.focus();
