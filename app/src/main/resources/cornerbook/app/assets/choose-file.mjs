// Takes the text of a file into the field that it is for, where it is seen before anything is sent. Without this module it is
// pasted.
for (const place of document.querySelectorAll("[data-file-into]")) {
  const into = document.getElementById(place.getAttribute("data-file-into") ?? "");
  const chosen = place.querySelector("input");
  if (into instanceof HTMLTextAreaElement && chosen) {
    place.removeAttribute("hidden");
    chosen.addEventListener("change", async () => {
      const file = chosen.files?.[0];
      if (file) {
        into.value = decoded(await file.arrayBuffer());
        into.focus();
      }
    });
  }
}

/**
 * A file is in UTF-8 or, on older machines, in the code page of its country; what is no UTF-8 is taken for that of
 * western Europe (WHATWG Encoding Standard, section 9.1).
 * @param {ArrayBuffer} bytes
 */
function decoded(bytes) {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
