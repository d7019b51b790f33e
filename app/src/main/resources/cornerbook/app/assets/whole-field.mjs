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

/** @param {HTMLElement} field */
function fit(field) {
  const controls = [...field.querySelectorAll(texts)];
  field.style.gridColumn = "";
  for (const span of spans) {
    if (!controls.some(isCut)) {
      break;
    }
    field.style.gridColumn = span;
  }
  for (const control of controls) {
    control.parentElement?.classList.toggle("cut", isCut(control));
  }
}

const fitAll = () => /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll(".fields > .field")).forEach(fit);

document.addEventListener("change", (event) => {
  const field = event.target instanceof HTMLSelectElement && event.target.closest(".fields > .field");
  if (field instanceof HTMLElement) {
    fit(field);
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
