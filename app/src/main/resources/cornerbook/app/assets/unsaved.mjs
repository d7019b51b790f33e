// Says beside the button how many fields were typed and not stored yet, and asks before the page with them is left.
const form = document.getElementById("readings");
const place = document.getElementById("unsaved");

if (form && place) {
  // A page that came back with what was typed shows it as if it were stored.
  const cameBack = form.dataset.typed === "true";
  let leaves = false;

  const changed = () =>
    [...form.querySelectorAll("input:not([type=hidden]), select")].filter((field) =>
      field instanceof HTMLSelectElement
        ? [...field.options].some((option) => option.selected !== option.defaultSelected)
        : field instanceof HTMLInputElement && field.value !== field.defaultValue,
    ).length;

  form.addEventListener("input", () => {
    const count = changed();
    place.textContent = count === 0 ? place.dataset.none ?? "" : `${place.dataset.some} ${count}`;
  });
  form.addEventListener("submit", () => {
    leaves = true;
  });
  window.addEventListener("beforeunload", (event) => {
    if (!leaves && (cameBack || changed() > 0)) {
      event.preventDefault();
    }
  });
}
