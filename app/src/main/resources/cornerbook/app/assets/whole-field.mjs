// A field whose text is longer than its place takes more of its row; a list that is longer than the row is told whole below it.
// Without this module such a text is cut.
const spans = ["span 4", "span 6", "span 9", "1 / -1"];
const texts = "select, input:not([type]), input[type=text], input[type=email]";
/** What the arrow of a list of choices takes. */
const ARROW_PX = 20;
const pen = document.createElement("canvas").getContext("2d");

/** @param {Element} control */
function isCut(control) {
  // What is folded away has no width yet.
  if (!pen || control.clientWidth === 0 || !(control instanceof HTMLSelectElement)) {
    return control.scrollWidth > control.clientWidth + 1;
  }
  const style = getComputedStyle(control);
  pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
  const room = control.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight) - ARROW_PX;
  return pen.measureText(control.selectedOptions[0]?.text ?? "").width > room;
}

/** @param {HTMLElement[]} fields all of them in rounds: one measures the page anew for all, and not for each field */
function fit(fields) {
  /** @param {HTMLElement} field */
  const controlsOf = (field) => [...field.querySelectorAll(texts)];
  // As if for the first time: letters that were made smaller would be found to fit.
  fields.forEach((field) => (field.style.gridColumn = ""));
  fields.flatMap(controlsOf).forEach((control) => control.parentElement?.classList.remove("cut"));
  let left = fields;
  for (const span of spans) {
    left = left.filter((field) => controlsOf(field).some(isCut));
    left.forEach((field) => (field.style.gridColumn = span));
  }
  const cut = new Set(left.flatMap(controlsOf).filter(isCut));
  fields.flatMap(controlsOf).forEach((control) => control.parentElement?.classList.toggle("cut", cut.has(control)));
}

const fitAll = () => fit([.../** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll(".fields > .field"))]);

document.addEventListener("change", (event) => {
  const field = event.target instanceof HTMLSelectElement && event.target.closest(".fields > .field");
  if (field instanceof HTMLElement) {
    fit([field]);
  }
});
// What stands below is what was stored: no longer what is being typed.
document.addEventListener("input", ({ target }) => {
  if (target instanceof HTMLInputElement) {
    target.parentElement?.classList.remove("cut");
  }
});
document.addEventListener("toggle", fitAll, true);
addEventListener("resize", fitAll);
// Letters of another font are of another width.
document.fonts.addEventListener("loadingdone", fitAll);
addEventListener("load", fitAll);
fitAll();
