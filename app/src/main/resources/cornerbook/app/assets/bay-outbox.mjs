// Entries on their way to the book. Each has an id that is born here, so that sending twice stores once; an entry goes from
// the tablet only when the server has said that it is in the book.
import { isKnown } from "./bay-person.mjs";
import { all, put, remove } from "./bay-store.mjs";

const MOST_AT_ONCE = 50;
const SHORTEST_WAIT_MS = 500;
const LONGEST_WAIT_MS = 15_000;
const ANSWER_MS = 10_000;

/** A random UUID (RFC 9562, version 4); crypto.randomUUID is missing where the page came without TLS over a network. */
export function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

export class Outbox extends EventTarget {
  entries = [];
  linked = true;
  #keeping = new WeakMap();
  #sending;
  #again = false;
  #waitMs = SHORTEST_WAIT_MS;
  #timer = 0;

  async load() {
    this.entries = await all("outbox");
    addEventListener("online", () => this.send());
    document.addEventListener("visibilitychange", () => document.hidden || this.send());
  }

  of(visit) {
    return this.entries.filter((entry) => entry.visit === visit);
  }

  /** Keeps an entry on this tablet, then sends it. One that was never sent is replaced by its successor. */
  async add(entry, replaces) {
    const kept = { ...entry, id: newId(), at: new Date().toISOString() };
    // Seen at once; sent when it is on the disk.
    this.entries = [...this.entries.filter((other) => other !== replaces), kept];
    this.#changed();
    const keeping = put("outbox", kept);
    this.#keeping.set(kept, keeping);
    kept.seq = await keeping;
    if (replaces) {
      // It may still be on its way to the disk.
      await remove("outbox", await this.#keeping.get(replaces) ?? replaces.seq);
    }
    this.#changed();
    this.send();
    return kept;
  }

  /** Changes an entry that is still here, as by the reason that it waited for. */
  async amend(entry, values) {
    Object.assign(entry, values);
    await put("outbox", entry);
    this.#changed();
    this.send();
  }

  async drop(entry) {
    await remove("outbox", entry.seq);
    this.entries = this.entries.filter((other) => other !== entry);
    this.#changed();
  }

  async retry() {
    for (const entry of this.entries.filter((each) => each.refused)) {
      await this.amend(entry, { refused: undefined });
    }
  }

  /** Sends what is ready; resolves when that is done, or the link is gone and a later try is planned. */
  send() {
    this.#again = true;
    this.#sending ??= this.#run().finally(() => (this.#sending = undefined));
    return this.#sending;
  }

  async #run() {
    clearTimeout(this.#timer);
    try {
      while (this.#again) {
        this.#again = false;
        await this.#sendAll();
      }
      this.#waitMs = SHORTEST_WAIT_MS;
    } catch {
      this.setLinked(false);
      this.#timer = setTimeout(() => this.send(), this.#waitMs);
      this.#waitMs = Math.min(LONGEST_WAIT_MS, this.#waitMs * 2);
    }
  }

  setLinked(linked) {
    if (this.linked !== linked) {
      this.linked = linked;
      this.#changed();
    }
  }

  async #sendAll() {
    for (;;) {
      const ready = this.entries.filter((entry) => entry.seq !== undefined && !entry.refused && !entry.held && isKnown(entry.person));
      if (ready.length === 0) {
        return;
      }
      const readings = ready.filter((entry) => entry.kind !== "photo");
      if (readings.length === 0) {
        await this.#sendPhoto(ready[0]);
        continue;
      }
      const batch = readings.filter((entry) => entry.visit === readings[0].visit).slice(0, MOST_AT_ONCE);
      const first = batch.filter((entry) => !entry.tried);
      first.forEach((entry) => (entry.tried = true));
      await Promise.all(first.map((entry) => put("outbox", entry)));
      const response = await fetch(`/bay/visits/${encodeURIComponent(batch[0].visit)}/entries`, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body: JSON.stringify({ entries: batch }),
        signal: AbortSignal.timeout(ANSWER_MS),
      });
      if (!response.ok) {
        throw new Error(`The server answered ${response.status}`);
      }
      const { answers, state } = await response.json();
      this.linked = true;
      // What the book has comes before its entries go, or for a moment a place would have neither.
      this.dispatchEvent(new CustomEvent("state", { detail: { visit: batch[0].visit, state } }));
      await this.#settle(batch, answers);
      this.#changed();
    }
  }

  // Readings are small and go first; a photo goes alone.
  async #sendPhoto(entry) {
    const about = new URLSearchParams({ corner: entry.corner ?? "", person: entry.person, at: entry.at });
    const response = await fetch(`/bay/visits/${encodeURIComponent(entry.visit)}/photos/${entry.id}?${about}`, {
      method: "PUT",
      body: entry.blob,
      signal: AbortSignal.timeout(6 * ANSWER_MS),
    });
    if (!response.ok && response.status !== 422) {
      throw new Error(`The server answered ${response.status}`);
    }
    await this.#settle([entry], [await response.json()]);
    this.linked = true;
    this.#changed();
  }

  // The book has what is stored, there already, or a rival; only what is refused stays here.
  async #settle(batch, answers) {
    for (const [index, answer] of answers.entries()) {
      const entry = batch[index];
      if (answer.status === "refused" || (answer.status === "conflict" && entry.kind === "leaving")) {
        entry.refused = answer.sentence || "Other wheels were recorded meanwhile; look at them and record again.";
        await put("outbox", entry);
      } else {
        await remove("outbox", entry.seq);
        this.entries = this.entries.filter((other) => other !== entry);
      }
    }
  }

  #changed() {
    this.dispatchEvent(new Event("change"));
  }
}
