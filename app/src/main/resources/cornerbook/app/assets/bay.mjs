// The bay on a tablet: the list of visits, or the sheet of one; who works; whether there is a link.
import { openAside, showAside } from "./bay-aside.mjs";
import { ask } from "./bay-ask.mjs";
import { byId, h, note } from "./bay-dom.mjs";
import { Outbox } from "./bay-outbox.mjs";
import { openPanel } from "./bay-panel.mjs";
import { chosen, isKnown, people, person, sync, workAs } from "./bay-person.mjs";
import { scanButton } from "./bay-scan.mjs";
import { SheetView } from "./bay-sheet.mjs";
import * as store from "./bay-store.mjs";
import { plateOf, sheetOf, Visit } from "./bay-visit.mjs";
import { listed, say } from "./bay-words.mjs";

const assets = document.documentElement.dataset.assets;
const RECONNECT_MS = 2_000;
const DRAWING_MS = 100;

/** @type {string[]} */
let onCar = [];

/** @param {Outbox} outbox */
function showLink(outbox) {
  const writing = outbox.waiting.filter((entry) => entry.seq === undefined).length;
  const here = outbox.waiting.length - writing;
  const asked = outbox.waiting.filter((entry) => entry.refused || entry.held || !isKnown(entry.person)).length;
  const words = [
    outbox.linked ? "" : say("no-link"),
    here > 0 ? say("only-here", { n: here }) : writing > 0 ? "" : say("all-in-book"),
    writing > 0 ? say("keeping") : "",
    asked > 0 ? say("needs-you", { n: asked }) : "",
  ];
  byId("link").textContent = listed(words);
  showAside(byId("aside"), outbox);
  byId("link").className = here > 0 ? "here" : outbox.linked ? "book" : "nolink";
}

/**
 * @param {Visit} visit
 * @param {Outbox} outbox
 */
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
  /** @param {number} afterMs */
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
    outbox.setLinked(visit.gone);
    again(RECONNECT_MS);
  };
}

/**
 * Asks once on each tablet; every entry bears the name. A paired tablet knows it.
 *
 * @param {string[]} names
 * @returns {Promise<void>}
 */
function askPerson(names) {
  return new Promise((resolve) => {
    /** @param {string} name */
    const take = (name) => {
      if (name.trim()) {
        workAs(name.trim());
        resolve();
      }
    };
    /** @type {HTMLInputElement} */
    const input = h("input", { id: "person", type: "text", maxLength: 60, autocomplete: "off", onkeydown: (event) => event.key === "Enter" && take(input.value) });
    byId("main").replaceChildren(
      h("h2", {}, say("who-works")),
      h("div", { className: "row" }, ...names.map((name) => h("button", { type: "button", className: "quiet", onclick: () => take(name) }, name))),
      h("label", { htmlFor: "person" }, say("name")),
      input,
      h("button", { type: "button", className: "main", onclick: () => take(input.value) }, say("begin")),
    );
    if (names.length === 0) {
      input.focus();
    }
  });
}

/** What stands round every step, whoever the page was made for. */
function showFrame() {
  document.documentElement.lang = chosen().language;
  document.documentElement.dataset.look = chosen().look;
  byId("skip").textContent = say("skip");
  byId("home").textContent = say("bay");
  byId("steps").ariaLabel = say("steps");
  showPerson();
}

/** Who works here. */
function showPerson() {
  const others = onCar.filter((name) => name !== person());
  const unknown = !isKnown(person());
  byId("who").replaceChildren(person() || say("settings"), others.length > 0 ? h("small", {}, say("and-others", { others: listed(others) })) : "", unknown ? h("small", {}, say("pin-asked")) : "");
  byId("who").ariaLabel = say("settings-button", { people: listed([person(), ...others, unknown ? say("pin-wanted") : ""]) || undefined });
}

/** @param {Visit} visit */
function showGone(visit) {
  if (visit.gone) {
    byId("steps").before(note("wrong", say("visit-gone")));
  }
}

/**
 * The plate beside the car's name; nothing where the car goes by its plate.
 *
 * @param {bay.Sheet} sheet
 */
const plate = (sheet) => (plateOf(sheet) ? [h("span", { className: "plate" }, plateOf(sheet))] : []);

/**
 * Shows what the tablet has; without that, what the server sends.
 *
 * @param {Visit} visit
 * @param {Promise<boolean>} reached
 * @param {Outbox} outbox
 */
async function showVisit(visit, reached, outbox) {
  if (visit.sheets) {
    reached.then((linked) => {
      if (!linked) {
        outbox.setLinked(visit.gone);
        showGone(visit);
      }
    });
  } else if (!(await reached)) {
    byId("main").replaceChildren(note("wrong", say(visit.gone ? "no-visit" : "not-on-tablet")));
    return;
  }
  document.title = say("title", { car: visit.sheet.car });
  byId("car").replaceChildren(visit.sheet.car, " ", ...plate(visit.sheet));
  if (!person()) {
    await askPerson(visit.sheet.people);
  }
  const view = new SheetView(visit);
  view.show();
  const [, scanned] = decodeURIComponent(location.hash.slice(1)).split("/");
  if (scanned) {
    view.openSet(scanned);
  }
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

/**
 * Keeps the visits of today, so that each can be opened when the network is gone.
 *
 * @param {Outbox} outbox
 */
async function keepToday(outbox) {
  const response = await ask("/bay/today.json");
  for (const id of /** @type {string[]} */ (await response.json())) {
    if (!sheetOf((await store.get("sheets", id))?.sheets)) {
      await new Visit(id, outbox).fetch();
    }
  }
}

async function showList() {
  const kept = (await store.all("sheets")).sort((one, other) => other.keptAt - one.keptAt).flatMap(({ visit, sheets }) => {
    const sheet = sheetOf(sheets);
    return sheet ? { visit, sheet } : [];
  });
  /**
   * The wheel of a visit that this tablet has is shown there, with the tread of its set to be read; any other on its own page.
   *
   * @param {string} tag
   */
  const openWheel = (tag) => {
    const visit = kept.find(({ sheet }) => tag in sheet.wheels)?.visit;
    location.assign(visit ? `/bay/visits/${encodeURIComponent(visit)}#ON/${encodeURIComponent(tag)}` : `/wheels/${encodeURIComponent(tag)}`);
  };
  const tag = h("input", { id: "tag", name: "tag", required: true, maxLength: 60, autocomplete: "off" });
  // A scanner types wherever the focus stands.
  document.onkeydown = (event) => {
    if (event.key.length === 1 && !(event.target instanceof HTMLInputElement) && !event.ctrlKey && !event.metaKey && !event.altKey) {
      tag.focus();
    }
  };
  /** @param {SubmitEvent} event */
  const submit = (event) => {
    event.preventDefault();
    openWheel(tag.value.trim());
  };
  byId("car").textContent = say("bay-sheet");
  byId("main").replaceChildren(
    h("h2", {}, say("visits-here")),
    ...(kept.length === 0 ? [note("asks", say("no-visits"))] : []),
    h("ul", { className: "visits" }, ...kept.map(({ visit, sheet }) => h("li", {}, h("a", { className: "button quiet", href: `/bay/visits/${encodeURIComponent(visit)}` }, h("span", {}, sheet.car), ...plate(sheet), h("small", {}, sheet.day))))),
    h("h2", {}, h("label", { htmlFor: "tag" }, say("wheel-tag"))),
    h("form", { action: "/wheels", className: "row tag", onsubmit: submit }, tag, h("button", { type: "submit", className: "quiet" }, say("open-wheel")), scanButton(say("scan"), openWheel)),
  );
}

/** So that it opens without a link; after the first step is shown, as it asks for each module once more. */
function keepPage() {
  // No module: browsers ask for the module of a worker without the cookie by which a paired tablet is known.
  navigator.serviceWorker?.register(`/bay/worker.mjs?assets=${assets}`, { scope: "/bay/" }).catch(() => {});
  navigator.storage?.persist?.();
}

async function start() {
  showFrame();
  byId("who").onclick = () => openPanel([], [], () => {});
  const outbox = new Outbox(store);
  const id = location.pathname.match(/^\/bay\/visits\/([^/]+)$/)?.[1];
  const visit = id ? new Visit(decodeURIComponent(id), outbox) : undefined;
  const reached = visit ? visit.fetch().then(() => true, () => false) : Promise.resolve(false);
  await Promise.all([outbox.load(), visit?.load()]);
  addEventListener("online", () => outbox.send());
  document.addEventListener("visibilitychange", () => document.hidden || outbox.send());
  people.addEventListener("change", () => {
    showFrame();
    showLink(outbox);
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
    let shownIn = chosen().language;
    people.addEventListener("change", () => {
      if (shownIn !== chosen().language) {
        shownIn = chosen().language;
        showList();
      }
    });
  }
  if (!isNew) {
    learn();
  }
  outbox.send();
  keepPage();
}

start();
