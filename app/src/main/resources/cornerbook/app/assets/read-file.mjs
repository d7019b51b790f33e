// Puts the text of a chosen file into the field that stands below, where it can be seen before anything is sent.
// Without this module the text is pasted.
for (const file of document.querySelectorAll("input[type=file][data-into]")) {
  if (file instanceof HTMLInputElement) {
    file.hidden = false;
    file.addEventListener("change", async () => {
      const field = document.getElementById(file.dataset.into ?? "");
      const chosen = file.files?.[0];
      if (field instanceof HTMLTextAreaElement && chosen) {
        field.value = decoded(await chosen.arrayBuffer());
        field.focus();
      }
    });
  }
}

/**
 * A spreadsheet saves in UTF-8 or, on older machines, in the code page of its country; what is no UTF-8 is taken for that of
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
