// Who works on this tablet and how that person wants the sheet. Kept here, and in the book as soon as there is a link.
// Before anybody chose, the page comes in the language that the browser asks for.
const USUAL = { units: "metric", look: "device", walk: "LF-RF-LR-RR", language: globalThis.document?.documentElement.lang || "en" };
const NOBODY = { workers: [], people: [], chosen: USUAL, chosenBy: {} };

const kept = (name, otherwise) => JSON.parse(localStorage.getItem(name) ?? "null") ?? otherwise;
const keep = (name, value) => localStorage.setItem(name, JSON.stringify(value));

/** Tells of another person, and of other choices. */
export const people = new EventTarget();

// Asked for with each field that is drawn, so it is not read anew each time.
let choice;

function changed() {
  choice = undefined;
  people.dispatchEvent(new Event("change"));
}

// Another page of this tablet; what it keeps besides is nothing of a person.
globalThis.addEventListener?.("storage", ({ key }) => [null, "person", "me", "unsent"].includes(key) && changed());

export const person = () => localStorage.getItem("person") ?? "";

const me = () => kept("me", NOBODY);
export const isPaired = () => Boolean(me().person);

/** Those who may take over with their PIN. */
export const others = () => me().people.filter((name) => name !== person());

/** Whether entries of a person may go to the book: on a paired tablet not before the PIN was typed. */
export const isKnown = (name) => !isPaired() || me().workers.includes(name);

// What was chosen here and is not in the book yet: by person on a paired tablet, else of this browser.
const mine = () => (isPaired() ? person() : "");

export function chosen() {
  if (!choice) {
    const { chosen: ofBrowser, chosenBy } = me();
    choice = { ...USUAL, ...(isPaired() ? chosenBy[person()] : ofBrowser), ...kept("unsent", {})[mine()] };
  }
  return choice;
}

/** The corners in the order in which this person walks round the car. */
export const walk = () => chosen().walk.split("-");

export function choose(values) {
  const unsent = kept("unsent", {});
  keep("unsent", { ...unsent, [mine()]: { ...unsent[mine()], ...values } });
  changed();
  return sync();
}

/** Sends what was chosen here, and learns what was chosen elsewhere; without a link that waits. */
export async function sync() {
  const unsent = kept("unsent", {});
  const sent = unsent[mine()];
  if (sent && isKnown(person())) {
    const answer = await post("/preferences", { ...sent, person: person() });
    if (answer.ok) {
      delete unsent[mine()];
      keep("unsent", unsent);
    }
  }
  const answer = await fetch("/bay/me.json", { signal: AbortSignal.timeout(10_000) });
  if (!answer.ok) {
    throw new Error(`The server answered ${answer.status}`);
  }
  const before = JSON.stringify([me(), person()]);
  keep("me", await answer.json());
  if (!person() && me().person) {
    localStorage.setItem("person", me().person);
  }
  if (before !== JSON.stringify([me(), person()])) {
    changed();
  }
}

/** From now on this person works here; where nobody asks for a PIN, and where nobody can be asked. */
export function workAs(name) {
  localStorage.setItem("person", name);
  changed();
}

/** The same with the PIN; says what to tell when that is not possible, and nothing when it is done. */
export async function takeOver(name, pin) {
  let answer;
  try {
    answer = await post("/person", { person: name, pin });
  } catch {
    workAs(name);
    return isKnown(name) ? "" : { key: "pin-later", name };
  }
  if (!answer.ok) {
    return answer.status === 422 ? answer.text() : { key: "server-answered", status: answer.status };
  }
  workAs(name);
  await sync();
  return "";
}

function post(address, values) {
  return fetch(address, { method: "POST", body: new URLSearchParams(values), signal: AbortSignal.timeout(10_000) });
}
