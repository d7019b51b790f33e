// Fills in a set's wheels where they are chosen, so that nothing typed elsewhere is lost.
// Without this module the link asks for the page anew with that set filled in.
document.addEventListener("click", (event) => {
  const link = event.target instanceof Element ? event.target.closest("a[data-hint]") : null;
  if (!(link instanceof HTMLElement) || event.ctrlKey || event.metaKey) {
    return;
  }
  event.preventDefault();
  for (const corner of ["LF", "RF", "LR", "RR"]) {
    const field = document.getElementById(`${link.dataset.form}.${corner}`);
    if (field instanceof HTMLSelectElement) {
      field.value = link.dataset[corner.toLowerCase()] ?? "";
    }
  }
  document.getElementById("filled-in")?.replaceChildren(link.dataset.hint ?? "");
});
