// Takes the text of a file into the field that it is for, where it is seen before anything is sent.
for (const place of document.querySelectorAll("[data-file-into]")) {
  const into = document.getElementById(place.getAttribute("data-file-into") ?? "");
  const chosen = place.querySelector("input");
  if (into instanceof HTMLTextAreaElement && chosen) {
    place.removeAttribute("hidden");
    chosen.addEventListener("change", async () => {
      const file = chosen.files?.[0];
      if (file) {
        into.value = await file.text();
        into.focus();
      }
    });
  }
}
