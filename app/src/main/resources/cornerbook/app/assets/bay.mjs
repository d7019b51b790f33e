// The bay on a tablet: the list of visits, or the sheet of one; who works; whether there is a link.
import { openAside, showAside } from "./bay-aside.mjs";
import { h } from "./bay-dom.mjs";
import { Outbox } from "./bay-outbox.mjs";
import { openPanel } from "./bay-panel.mjs";
import { chosen, isKnown, people, person, sync, workAs } from "./bay-person.mjs";
import { scanButton } from "./bay-scan.mjs";
import { SheetView } from "./bay-sheet.mjs";
import { all, get } from "./bay-store.mjs";
import { note, Visit } from "./bay-visit.mjs";

const byId = (id) => document.getElementById(id);
const assets = document.documentElement.dataset.assets;
const RECONNECT_MS = 2_000;
const DRAWING_MS = 100;

let onCar = [];

function showLink(outbox) {
  const writing = outbox.waiting.filter((entry) => entry.seq === undefined).length;
  const here = outbox.waiting.length - writing;
  const asked = outbox.waiting.filter((entry) => entry.refused || entry.held || !isKnown(entry.person)).length;
  const words = [
    outbox.linked ? "" : "No link",
    here > 0 ? `${here} only on this tablet` : writing > 0 ? "" : "All in the book",
    writing > 0 ? "keeping …" : "",
    asked > 0 ? `${asked} ${asked === 1 ? "needs" : "need"} you` : "",
  ];
  byId("link").textContent = words.filter(Boolean).join(", ");
  showAside(byId("aside"), outbox);
  byId("link").className = here > 0 ? "here" : outbox.linked ? "book" : "nolink";
}

function listen(visit, outbox) {
  const source = new EventSource(`/bay/visits/${encodeURIComponent(visit.id)}/events?person=${encodeURIComponent(person())}`);
  source.addEventListener("state", (event) => {
    if (!outbox.linked) {
      outbox.setLinked(true);
      sync().catch(() => {});
    }
    visit.take(JSON.parse(event.data));
    outbox.send();
  });
  const name = person();
  const again = (afterMs) => {
    source.close();
    people.removeEventListener("change", other);
    if (!visit.gone) {
      setTimeout(() => listen(visit, outbox), afterMs);
    }
  };
  // The others see who is on the car.
  const other = () => person() !== name && again(0);
  people.addEventListener("change", other);
  source.onerror = () => {
    outbox.setLinked(Boolean(visit.gone));
    again(RECONNECT_MS);
  };
}

/** Asks once on each tablet; every entry bears the name. A paired tablet knows it. */
function askPerson(names) {
  return new Promise((resolve) => {
    const take = (name) => {
      if (name.trim()) {
        workAs(name.trim());
        resolve();
      }
    };
    const input = h("input", { id: "person", type: "text", maxLength: 60, autocomplete: "off", onkeydown: (event) => event.key === "Enter" && take(input.value) });
    byId("main").replaceChildren(
      h("h2", {}, "Who works on this tablet?"),
      h("div", { className: "row" }, ...names.map((name) => h("button", { type: "button", className: "quiet", onclick: () => take(name) }, name))),
      h("label", { htmlFor: "person" }, "Name"),
      input,
      h("button", { type: "button", className: "main", onclick: () => take(input.value) }, "Begin"),
    );
  });
}

/** Light or dark, and who works here. */
function showPerson() {
  document.documentElement.dataset.look = chosen().look;
  const others = onCar.filter((name) => name !== person());
  const unknown = !isKnown(person());
  byId("who").replaceChildren(person() || "Settings", others.length > 0 ? h("small", {}, `and ${others.join(", ")}`) : "", unknown ? h("small", {}, "PIN?") : "");
  byId("who").ariaLabel = `${[person(), ...others].filter(Boolean).join(", ")}${unknown ? ", PIN wanted" : ""}: settings`;
}

function showGone(visit) {
  if (visit.gone) {
    byId("steps").before(note("wrong", "The book has this visit no longer; what is entered here stays on this tablet and can be moved to another visit."));
  }
}

/** Shows what the tablet has; without that, what the server sends. */
async function showVisit(visit, reached, outbox) {
  if (visit.sheets) {
    reached.then((linked) => {
      if (!linked) {
        outbox.setLinked(visit.gone);
        showGone(visit);
      }
    });
  } else if (!(await reached)) {
    byId("main").replaceChildren(note("wrong", visit.gone ? "The book has no visit with this address." : "This visit is not on the tablet and the server cannot be reached. Open it once with a link."));
    return;
  }
  document.title = `${visit.sheet.car} · bay sheet`;
  byId("car").replaceChildren(visit.sheet.car, " ", h("span", { className: "plate" }, visit.sheet.plate));
  if (!person()) {
    await askPerson(visit.sheet.people);
  }
  const view = new SheetView(visit);
  view.show();
  byId("who").onclick = () => openPanel(visit.sheet.people, onCar, () => view.focus());
  visit.addEventListener("change", () => {
    onCar = visit.state.onCar;
    showPerson();
  });
  await drawn();
  listen(visit, outbox);
}

/** Hands first: what they do not wait for begins when the step stands on the screen. */
function drawn() {
  return new Promise((resolve) => setTimeout(resolve, DRAWING_MS));
}

/** Keeps the visits of today, so that each can be opened when the network is gone. */
async function keepToday(outbox) {
  const response = await fetch("/bay/today.json");
  for (const id of await response.json()) {
    if (!(await get("sheets", id))?.sheets) {
      await new Visit(id, outbox).fetch();
    }
  }
}

async function showList() {
  const kept = (await all("sheets")).filter((each) => each.sheets);
  kept.sort((one, other) => other.keptAt - one.keptAt);
  byId("main").replaceChildren(
    h("form", { action: "/wheels", className: "row" }, h("label", { htmlFor: "tag" }, "Wheel tag"), h("input", { id: "tag", name: "tag", required: true, maxLength: 60, autocomplete: "off" }), h("button", { type: "submit", className: "quiet" }, "Open the wheel"), scanButton("Scan", (text) => location.assign(`/wheels/${encodeURIComponent(text)}`))),
    h("h2", {}, "Visits on this tablet"),
    ...(kept.length === 0 ? [note("asks", "None yet. Open one with a link to the server, and it stays here.")] : []),
    h("ul", { className: "visits" }, ...kept.map(({ visit, sheets: { [chosen().units]: sheet } }) => h("li", {}, h("a", { className: "button quiet", href: `/bay/visits/${encodeURIComponent(visit)}` }, `${sheet.car} `, h("span", { className: "plate" }, sheet.plate), ` ${sheet.day}`)))),
  );
}

/** So that it opens without a link; after the first step is shown, as it asks for each module once more. */
function keepPage() {
  // No module: browsers ask for the module of a worker without the cookie by which a paired tablet is known.
  navigator.serviceWorker?.register(`/bay/worker.mjs?assets=${assets}`, { scope: "/bay/" }).catch(() => {});
  navigator.storage?.persist?.();
}

async function start() {
  showPerson();
  byId("who").onclick = () => openPanel([], [], () => {});
  const outbox = new Outbox();
  const id = location.pathname.match(/^\/bay\/visits\/([^/]+)$/)?.[1];
  const visit = id ? new Visit(decodeURIComponent(id), outbox) : undefined;
  const reached = visit?.fetch().then(() => true, () => false);
  await Promise.all([outbox.load(), visit?.load()]);
  people.addEventListener("change", () => {
    showPerson();
    outbox.send();
  });
  outbox.addEventListener("change", () => showLink(outbox));
  byId("aside").onclick = () => openAside(outbox);
  showLink(outbox);
  const learn = () => sync().catch(() => outbox.setLinked(false));
  const isNew = !person();
  if (isNew) {
    await learn();
  }
  if (visit) {
    await showVisit(visit, reached, outbox);
    keepToday(outbox).catch(() => outbox.setLinked(false));
  } else {
    await keepToday(outbox).catch(() => outbox.setLinked(false));
    await showList();
  }
  if (!isNew) {
    learn();
  }
  outbox.send();
  keepPage();
}

start();
