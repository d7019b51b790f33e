// Reads a QR code by the camera; where there is none, a scanner types, or a hand.
import { h } from "./bay-dom.mjs";
import { say } from "./bay-words.mjs";

const LOOK_EVERY_MS = 200;
// A tag held at arm's length still has several pixels to a module.
const LONG_SIDE_PX = 1000;

/**
 * A button that scans, or null where the browser gives no camera, as without https.
 *
 * @param {string} label
 * @param {(text: string) => void} found
 */
export function scanButton(label, found) {
  if (!navigator.mediaDevices?.getUserMedia) {
    return null;
  }
  return h("button", { type: "button", className: "quiet", onclick: () => scan(found) }, label);
}

/**
 * What reads a picture of the video: the browser's own reader, or where it has none a library that is loaded when first used.
 *
 * @returns {Promise<(video: HTMLVideoElement) => Promise<string | undefined> | string | undefined>}
 */
async function reader() {
  const { BarcodeDetector: Detector } = globalThis;
  if (Detector && (await Detector.getSupportedFormats()).includes("qr_code")) {
    const detector = new Detector({ formats: ["qr_code"] });
    return async (video) => (await detector.detect(video))[0]?.rawValue;
  }
  // It is no module: it leaves its one function with the page.
  await import("./jsqr.js");
  const canvas = h("canvas");
  const context = canvas.getContext("2d", { willReadFrequently: true });
  return (video) => {
    const { videoWidth, videoHeight } = video;
    const scale = Math.min(1, LONG_SIDE_PX / Math.max(videoWidth, videoHeight));
    const [width, height] = [Math.round(videoWidth * scale), Math.round(videoHeight * scale)];
    Object.assign(canvas, { width, height });
    context?.drawImage(video, 0, 0, width, height);
    const pixels = context?.getImageData(0, 0, width, height).data;
    return pixels && jsQR(pixels, width, height)?.data;
  };
}

/** @param {(text: string) => void} found */
async function scan(found) {
  const video = h("video", { autoplay: true, muted: true, playsInline: true });
  const close = () => h("button", { type: "button", onclick: () => dialog.close() }, say("close"));
  /** @type {HTMLDialogElement} */
  const dialog = h("dialog", { "aria-label": say("hold-tag") }, h("p", {}, say("hold-tag")), video, close());
  /** @type {MediaStream | undefined} */
  let stream;
  const stop = () => stream?.getTracks().forEach((track) => track.stop());
  dialog.addEventListener("close", () => {
    stop();
    dialog.remove();
  });
  document.body.append(dialog);
  dialog.showModal();
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
    video.srcObject = stream;
    const read = await reader();
    while (dialog.open) {
      const text = video.readyState >= HTMLMediaElement.HAVE_CURRENT_DATA ? await read(video) : undefined;
      if (text && dialog.open) {
        dialog.close();
        found(text.trim());
      }
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
    // It may have been closed before the camera came.
    stop();
  } catch {
    stop();
    dialog.replaceChildren(h("p", {}, say("no-camera")), close());
  }
}
