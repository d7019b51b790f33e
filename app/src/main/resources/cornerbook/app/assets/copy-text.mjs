// Copies a text by one tap. Where the browser has no clipboard for pages, as without an encrypted line, or gives none, the text is
// marked, so that the machine's own way of copying takes it. Without this module the text is marked by hand.

/** @param {Element} place */
export function copies(place) {
  const button = place.querySelector("button");
  const told = place.querySelector("[role=status]");
  const text = document.getElementById(place.getAttribute("data-copies") ?? "");
  if (!button || !told || !(text instanceof HTMLTextAreaElement)) {
    return;
  }
  place.removeAttribute("hidden");
  button.addEventListener("click", async () => {
    told.textContent = "";
    const copied = await copy(text.value);
    if (!copied) {
      text.focus();
      text.select();
    }
    told.textContent = place.getAttribute(copied ? "data-copied" : "data-marked");
  });
}

/** @param {string} text */
async function copy(text) {
  try {
    // Where the line is not encrypted there is none: https://www.w3.org/TR/clipboard-apis/#navigator-interface
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

document.querySelectorAll("[data-copies]").forEach(copies);
