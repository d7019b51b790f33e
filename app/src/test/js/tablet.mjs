// A tablet without a browser: what it keeps lies in memory, and the server answers as a test says.
import { webcrypto } from "node:crypto";

// Node.js has it by itself since version 19.
globalThis.crypto ??= webcrypto;

export function newTablet() {
  const kept = new Map();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (name) => kept.get(name) ?? null,
      setItem: (name, value) => kept.set(name, value),
    },
  });
  return { kept, store: newStore() };
}

/**
 * Keeps a copy of each value, as the disk does.
 *
 * @returns {bay.Store}
 */
function newStore() {
  const stores = { outbox: new Map(), sheets: new Map() };
  let last = 0;
  return {
    all: async (name) => [...stores[name].values()].map((value) => structuredClone(value)),
    get: async (name, key) => structuredClone(stores[name].get(key)),
    put: async (name, value) => {
      const key = "sheets" in value ? value.visit : (value.seq ?? ++last);
      stores[name].set(key, structuredClone("sheets" in value ? value : { ...value, seq: key }));
      return key;
    },
    remove: async (name, key) => {
      stores[name].delete(key);
    },
  };
}

/** Answers each request in turn by what `answer` gives for its entries; "no link" where that throws. */
export function serve(answer) {
  const asked = [];
  globalThis.fetch = async (address, request) => {
    const body = request?.body && JSON.parse(String(request.body));
    asked.push({ address, body });
    const [status, said] = answer(body, address);
    return new Response(JSON.stringify(said), { status });
  };
  return asked;
}

/**
 * A field with these parts.
 *
 * @param {Partial<bay.Field>} parts
 * @returns {bay.Field}
 */
export const field = (parts) => ({ measure: "", ofWheel: false, goesOn: false, onlyNew: false, label: "", unit: "", suffix: "", words: [], points: false, low: 0, high: 25, ...parts });

/**
 * A step with these fields and parts.
 *
 * @param {Partial<bay.Step>} parts
 * @param {...bay.Field} fields
 * @returns {bay.Step}
 */
export const step = (parts, ...fields) => ({ id: "", kind: "FIELDS", title: "", tab: "", cautions: [], groups: [{ title: "", hints: [], fields, folded: false, soundAtOnce: [] }], ticks: [], ...parts });

/**
 * A sheet with these parts.
 *
 * @param {Partial<bay.Sheet>} parts
 * @returns {bay.Sheet}
 */
export const sheet = (parts) => ({
  visit: "v", assets: "", car: "", plate: "", day: "", odometer: { label: "", unit: "km", low: 0, high: 3_000_000 }, steps: [], arrived: {}, planned: {}, plannedHint: "", fills: [], wheels: {},
  fasteners: { count: 0, order: [], torque: "", unit: "", thread: "", retorque: "" }, cautions: [], partsSeen: { CORNER: {}, CAR: {} }, people: [], tools: [], limits: [], matters: [], ...parts,
});

/**
 * A wheel of a set.
 *
 * @param {string} set
 * @returns {bay.WheelCard}
 */
export const wheel = (set) => ({ set, setName: "", season: "", tyre: "", last: {}, expected: {} });
