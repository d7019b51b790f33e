// A tablet without a browser: what it keeps lies in memory, and the server answers as a test says.
import { webcrypto } from "node:crypto";

// Node.js has it by itself since version 19.
globalThis.crypto ??= webcrypto;

export function newTablet() {
  const kept = new Map();
  globalThis.localStorage = {
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, value) => kept.set(name, value),
  };
  return { kept, store: newStore() };
}

/** Keeps a copy of each value, as the disk does. */
function newStore() {
  const stores = { outbox: new Map(), sheets: new Map() };
  let last = 0;
  return {
    all: async (name) => [...stores[name].values()].map((value) => structuredClone(value)),
    get: async (name, key) => structuredClone(stores[name].get(key)),
    put: async (name, value) => {
      const key = name === "sheets" ? value.visit : (value.seq ?? ++last);
      stores[name].set(key, structuredClone(name === "sheets" ? value : { ...value, seq: key }));
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
    const body = request?.body && JSON.parse(request.body);
    asked.push({ address, body });
    const [status, said] = answer(body, address);
    return new Response(JSON.stringify(said), { status });
  };
  return asked;
}
