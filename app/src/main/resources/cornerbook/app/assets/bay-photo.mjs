// Photos of a corner, or of the car: made smaller here, kept here until they are in the book.
import { h } from "./bay-dom.mjs";
import { say, told } from "./bay-words.mjs";

const LONG_SIDE_PX = 1600;
const QUALITY = 0.85;

/**
 * @param {File} file
 * @returns {Promise<Blob>}
 */
async function smaller(file) {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONG_SIDE_PX / Math.max(picture.width, picture.height));
  const canvas = h("canvas", { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("The photo cannot be made smaller"))), "image/jpeg", QUALITY));
}

/**
 * What was chosen here and is not in the book yet counts before what the book has, and that before what it had when the photo was opened.
 *
 * @param {bay.Visit} visit
 * @param {bay.Photo} photo
 * @returns {{ part?: string, onSheet: boolean }}
 */
const chosen = (visit, photo) =>
  visit.here("photo choice").findLast((entry) => entry.photo === photo.id) ?? visit.state.photos.find(({ id }) => id === photo.id) ?? photo;

/**
 * The photo as large as the tablet, with what it belongs to and whether the customer gets it.
 *
 * @param {bay.Visit} visit
 * @param {bay.Photo} photo
 */
function look(visit, photo) {
  /** @param {{ part?: string, onSheet?: boolean }} values */
  const choose = (values) => {
    const { part, onSheet } = chosen(visit, photo);
    visit.record("photo choice", { photo: photo.id, part, onSheet, ...values });
  };
  const now = chosen(visit, photo);
  /** @type {HTMLButtonElement} */
  const sheet = h("button", { type: "button", className: "tick", ariaPressed: String(now.onSheet), onclick: () => {
    sheet.ariaPressed = String(sheet.ariaPressed !== "true");
    choose({ onSheet: sheet.ariaPressed === "true" });
  } }, say("on-sheet"));
  const seen = visit.sheet.partsSeen[photo.corner ? "CORNER" : "CAR"];
  /** @type {HTMLSelectElement} */
  const part = h("select", { id: "part", onchange: () => choose({ part: part.value || undefined }) },
    h("option", { value: "" }, say("no-finding")),
    ...Object.entries(seen).map(([key, label]) => h("option", { value: key, selected: key === now.part }, label)));
  const close = h("button", { type: "button", onclick: () => dialog.close() }, say("close"));
  /** @type {HTMLDialogElement} */
  const dialog = h("dialog", { className: "photo", "aria-label": say("photo-by", { person: photo.person }), onclose: () => dialog.remove() },
    h("img", { src: `/bay/photos/${photo.id}`, alt: say("photo-by", { person: photo.person }) }),
    h("div", { className: "row" }, sheet, h("label", { htmlFor: "part" }, say("belongs")), part, close));
  document.body.append(dialog);
  dialog.showModal();
}

/**
 * @param {bay.View} view
 * @param {bay.Corner} [corner]
 */
export function photos(view, corner) {
  const { visit } = view;
  const said = h("span", { role: "status" });
  const input = h("input", { type: "file", id: `photo.${corner ?? "car"}`, accept: "image/*", hidden: true, capture: "environment" });
  input.addEventListener("change", async () => {
    for (const file of input.files ?? []) {
      try {
        await visit.record("photo", { corner, blob: await smaller(file) });
      } catch {
        said.textContent = say("no-photo");
      }
    }
    input.value = "";
  });
  const shown = h("div", { className: "photos" });
  view.onUpdate(() => {
    const stored = visit.state.photos.filter((photo) => (photo.corner ?? "") === (corner ?? ""));
    const here = visit.here("photo").filter((entry) => (entry.corner ?? "") === (corner ?? ""));
    const [refused] = here.flatMap((entry) => entry.refused ?? []);
    said.textContent = refused ? told(refused) : here.length > 0 ? say("only-here", { n: here.length }) : "";
    const ids = stored.map((photo) => [photo.id, photo.part, photo.onSheet]).join();
    if (shown.dataset.ids !== ids) {
      shown.dataset.ids = ids;
      shown.replaceChildren(...stored.map((photo) => h("button", { type: "button", className: "picture", onclick: () => look(visit, photo) }, h("img", { src: `/bay/photos/${photo.id}`, alt: say("photo-by", { person: photo.person }), loading: "lazy" }))));
    }
  });
  return h("div", { className: "row" }, h("button", { type: "button", className: "quiet", onclick: () => input.click() }, say("photo")), input, said, shown);
}
