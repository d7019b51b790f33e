// Serves the page of the bay and its modules when the network is gone. Data is none of its business: sheets and entries are
// kept by the page itself.
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (globalThis));
const assets = new URL(worker.location.href).searchParams.get("assets");
const CACHE = `bay${assets}`;
const FILES = [
  "bay.css", "bay.mjs", "bay-aside.mjs", "bay-ask.mjs", "bay-catalogue.mjs", "bay-clock.mjs", "bay-dom.mjs", "bay-gauge.mjs", "bay-store.mjs", "bay-outbox.mjs", "bay-visit.mjs", "bay-field.mjs", "bay-sheet.mjs", "bay-photo.mjs", "bay-remark.mjs", "bay-scan.mjs",
  "bay-wheels.mjs", "bay-shelf.mjs", "bay-person.mjs", "bay-panel.mjs", "bay-tools.mjs", "bay-torque.mjs", "bay-tray.mjs", "bay-typed.mjs", "bay-depart.mjs", "bay-message.mjs", "bay-steps.mjs", "bay-words.mjs", "bay-written.mjs", "jsqr.js", "b612-400.woff2", "b612-700.woff2",
];

worker.addEventListener("install", (event) => {
  event.waitUntil(
    caches
      .open(CACHE)
      .then((cache) => cache.addAll(["/bay/shell", ...FILES.map((name) => `${assets}/${name}`)]))
      .then(() => worker.skipWaiting()),
  );
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(
    caches
      .keys()
      .then((names) => Promise.all(names.filter((name) => name.startsWith("bay") && name !== CACHE).map((name) => caches.delete(name))))
      .then(() => worker.clients.claim()),
  );
});

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== "GET" || origin !== worker.location.origin) {
    return;
  }
  if (request.mode === "navigate" && /^\/bay\/visits(\/[^/]+)?$/.test(pathname)) {
    event.respondWith(caches.match("/bay/shell").then((kept) => kept ?? fetch(request)));
  } else if (pathname.startsWith("/assets/")) {
    event.respondWith(caches.match(request).then((kept) => kept ?? fetch(request)));
  }
});
