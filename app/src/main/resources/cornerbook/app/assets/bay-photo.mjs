// Photos of a corner, or of the car: made smaller here, kept here until they are in the book.
import { h } from "./bay-dom.mjs";

const LONG_SIDE_PX = 1600;

async function smaller(file) {
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, LONG_SIDE_PX / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(Math.round(picture.width * scale), Math.round(picture.height * scale));
  canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas.convertToBlob({ type: "image/jpeg", quality: 0.85 });
}

export function photos(view, corner) {
  const { visit } = view;
  const said = h("span", { role: "status" });
  const input = h("input", { type: "file", id: `photo.${corner ?? "car"}`, accept: "image/*", hidden: true, capture: "environment" });
  input.addEventListener("change", async () => {
    for (const file of input.files) {
      try {
        await visit.record("photo", { corner, blob: await smaller(file) });
      } catch {
        said.textContent = "This is no photo that the tablet can read.";
      }
    }
    input.value = "";
  });
  const shown = h("div", { className: "photos" });
  view.onUpdate(() => {
    const stored = (visit.state.photos ?? []).filter((photo) => (photo.corner ?? "") === (corner ?? ""));
    const here = visit.pending.filter((entry) => entry.kind === "photo" && (entry.corner ?? "") === (corner ?? ""));
    const refused = here.find((entry) => entry.refused);
    said.textContent = refused ? refused.refused : here.length > 0 ? `${here.length} only on this tablet` : "";
    if (shown.dataset.ids !== stored.map(({ id }) => id).join()) {
      shown.dataset.ids = stored.map(({ id }) => id).join();
      shown.replaceChildren(...stored.map(({ id, person }) => h("a", { href: `/bay/photos/${id}`, target: "_blank" }, h("img", { src: `/bay/photos/${id}`, alt: `Photo by ${person}`, loading: "lazy" }))));
    }
  });
  return h("div", { className: "row" }, h("button", { type: "button", className: "quiet", onclick: () => input.click() }, "Photo"), input, said, shown);
}
