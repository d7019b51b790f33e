// Sends each photo that is taken or chosen to where its place says, and shows it among the others; what is typed on the page meanwhile
// stays. What is refused is told beside it.
// Without this module the place stays hidden.
for (const place of document.querySelectorAll("[data-photo-to]")) {
  const chosen = place.querySelector("input[type=file]");
  const told = place.querySelector("[role=alert]");
  if (chosen instanceof HTMLInputElement && told instanceof HTMLElement) {
    place.removeAttribute("hidden");
    chosen.addEventListener("change", async () => {
      chosen.disabled = true;
      const unreached = place.getAttribute("data-unreached") ?? "";
      const refusal = await refusalOf(place.getAttribute("data-photo-to") ?? "", [...(chosen.files ?? [])], unreached);
      told.textContent = refusal || ((await showAnew(place.getAttribute("data-shown-on") ?? "")) ? "" : unreached);
      told.hidden = told.textContent === "";
      chosen.disabled = false;
      chosen.value = "";
    });
    addEventListener("pageshow", () => (chosen.disabled = false));
  }
}

/**
 * The photos as the page has them now, in the place of those that stand here.
 * @param {string} address of the page
 */
async function showAnew(address) {
  const answer = await fetch(address).catch(() => null);
  const photos = answer?.ok && new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("photos");
  if (photos) {
    document.getElementById("photos")?.replaceWith(photos);
  }
  return Boolean(photos);
}

/**
 * Sends one after another; what came before a refusal stays.
 * @param {string} address
 * @param {File[]} photos
 * @param {string} unreached what is told when nobody answers
 */
async function refusalOf(address, photos, unreached) {
  for (const photo of photos) {
    const person = encodeURIComponent(localStorage.getItem("person") ?? "");
    const answer = await fetch(`${address}&person=${person}`, { method: "POST", body: photo }).catch(() => null);
    if (!answer?.ok) {
      return answer ? answer.text() : unreached;
    }
  }
  return "";
}
