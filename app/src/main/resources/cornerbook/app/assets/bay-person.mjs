// Who works on this tablet and how that person wants the sheet. Kept here, and in the book as soon as there is a link.
import { ask } from "./bay-ask.mjs";

/**
 * Before anybody chose, the page comes in the language that the browser asks for.
 *
 * @type {bay.Chosen}
 */
const USUAL = { units: "metric", look: "device", walk: "LF-RF-LR-RR", language: globalThis.document?.documentElement.lang || "en" };
/** @type {bay.Me} */
const NOBODY = { workers: [], people: [], chosen: USUAL, chosenBy: {} };

/**
 * @template T
 * @param {string} name
 * @param {T} otherwise
 * @returns {T}
 */
const kept = (name, otherwise) => JSON.parse(localStorage.getItem(name) ?? "null") ?? otherwise;
/**
 * @param {string} name
 * @param {unknown} value
 */
const keep = (name, value) => localStorage.setItem(name, JSON.stringify(value));

/** Tells of another person, and of other choices. */
export const people = new EventTarget();

/**
 * Asked for with each field that is drawn, so it is not read anew each time.
 *
 * @type {bay.Chosen | undefined}
 */
let choice;

function changed() {
  choice = undefined;
  people.dispatchEvent(new Event("change"));
}

// Another page of this tablet; what it keeps besides is nothing of a person.
globalThis.addEventListener?.("storage", ({ key }) => (key === null || ["person", "me", "unsent"].includes(key)) && changed());

export const person = () => localStorage.getItem("person") ?? "";

const me = () => kept("me", NOBODY);
export const isPaired = () => Boolean(me().person);

/** Those who may take over with their PIN. */
export const others = () => me().people.filter((name) => name !== person());

/**
 * Whether entries of a person may go to the book: on a paired tablet not before the PIN was typed.
 *
 * @param {string} name
 */
export const isKnown = (name) => !isPaired() || me().workers.includes(name);

/**
 * What was chosen here and is not in the book yet: by person on a paired tablet, else of this browser.
 *
 * @returns {Record<string, Partial<bay.Chosen>>}
 */
const notSent = () => kept("unsent", {});
const mine = () => (isPaired() ? person() : "");

export function chosen() {
  if (!choice) {
    const { chosen: ofBrowser, chosenBy } = me();
    choice = { ...USUAL, ...(isPaired() ? chosenBy[person()] : ofBrowser), ...notSent()[mine()] };
  }
  return choice;
}

/** The corners in the order in which this person walks round the car. */
export const walk = () => cornersOf(chosen().walk);

/**
 * The corners of a way round the car.
 *
 * @param {string} way
 */
export const cornersOf = (way) => /** @type {bay.Corner[]} */ (way.split("-"));

/** @param {Partial<bay.Chosen>} values */
export function choose(values) {
  const unsent = notSent();
  keep("unsent", { ...unsent, [mine()]: { ...unsent[mine()], ...values } });
  changed();
  return sync();
}

/** Sends what was chosen here, and learns what was chosen elsewhere; without a link that waits. */
export async function sync() {
  const unsent = notSent();
  const sent = unsent[mine()];
  if (sent && isKnown(person())) {
    const answer = await post("/preferences", { ...sent, person: person() });
    if (answer.ok) {
      delete unsent[mine()];
      keep("unsent", unsent);
    }
  }
  const answer = await ask("/bay/me.json");
  if (!answer.ok) {
    throw new Error(`The server answered ${answer.status}`);
  }
  const before = JSON.stringify([me(), person()]);
  keep("me", await answer.json());
  const { person: worker } = me();
  if (!person() && worker) {
    localStorage.setItem("person", worker);
  }
  if (before !== JSON.stringify([me(), person()])) {
    changed();
  }
}

/**
 * From now on this person works here; where nobody asks for a PIN, and where nobody can be asked.
 *
 * @param {string} name
 */
export function workAs(name) {
  localStorage.setItem("person", name);
  changed();
}

/**
 * The same with the PIN; says what to tell when that is not possible, and nothing when it is done.
 *
 * @param {string} name
 * @param {string} pin
 * @returns {Promise<bay.Sentence>}
 */
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

/**
 * @param {string} address
 * @param {Record<string, string>} values
 */
const post = (address, values) => ask(address, { method: "POST", body: new URLSearchParams(values) });
