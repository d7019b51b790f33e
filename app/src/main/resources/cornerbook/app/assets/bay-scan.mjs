// Reads a QR code by the camera where the browser can; elsewhere a scanner types, or a hand.
import { h } from "./bay-dom.mjs";

const LOOK_EVERY_MS = 200;

/** A button that scans, or null where the browser cannot. */
export function scanButton(label, found) {
  if (!("BarcodeDetector" in window) || !navigator.mediaDevices) {
    return null;
  }
  return h("button", { type: "button", className: "quiet", onclick: () => scan(found) }, label);
}

async function scan(found) {
  const video = h("video", { autoplay: true, muted: true, playsInline: true });
  const dialog = h("dialog", {}, video, h("button", { type: "button", onclick: () => dialog.close() }, "Close"));
  document.body.append(dialog);
  dialog.showModal();
  let stream;
  dialog.addEventListener("close", () => {
    stream?.getTracks().forEach((track) => track.stop());
    dialog.remove();
  });
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
    video.srcObject = stream;
    const detector = new BarcodeDetector({ formats: ["qr_code"] });
    while (dialog.open) {
      const [code] = video.readyState >= HTMLMediaElement.HAVE_CURRENT_DATA ? await detector.detect(video) : [];
      if (code) {
        dialog.close();
        found(code.rawValue);
      }
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
  } catch {
    dialog.replaceChildren(h("p", {}, "The camera cannot be used here; type the tag."), h("button", { type: "button", onclick: () => dialog.close() }, "Close"));
  }
}
