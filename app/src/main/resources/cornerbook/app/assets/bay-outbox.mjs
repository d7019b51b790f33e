// Entries on their way to the book. Each has an id that is born here, so that sending twice stores once; an entry goes from
// the tablet only when the server has said that it is in the book.
import { ask } from "./bay-ask.mjs";
import { byServer, learn } from "./bay-clock.mjs";
import { isKnown } from "./bay-person.mjs";

const MOST_AT_ONCE = 50;
const SHORTEST_WAIT_MS = 500;
const LONGEST_WAIT_MS = 15_000;
const PHOTO_ANSWER_MS = 60_000;
const MOST_FAILURES = 3;

// Not about what was sent: a proxy without its server, a book that cannot be used now, a tablet that may not enter, too much at once.
const LINK_LOST = [401, 403, 408, 429, 502, 503, 504];
const GONE = 404;
const SERVER_FAILS = 500;

/** @type {Partial<Record<bay.Made["kind"], bay.Sentence>>} */
const CONFLICTS = { leaving: { key: "other-wheels" }, tick: { key: "taken-back" } };

/**
 * Whether it stays here until a person takes it up.
 *
 * @param {bay.Entry} entry
 */
const stays = (entry) => Boolean(entry.note) || entry.kind === "stray";

/** A random UUID (RFC 9562, version 4); crypto.randomUUID is missing where the page came without TLS over a network. */
export function newId() {
  const bytes = [...crypto.getRandomValues(new Uint8Array(16))].map((byte, at) => (at === 6 ? (byte & 0x0f) | 0x40 : at === 8 ? (byte & 0x3f) | 0x80 : byte));
  const hex = bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

export class Outbox extends EventTarget {
  /** @type {bay.Entry[]} */
  entries = [];
  linked = true;
  /** @type {WeakMap<bay.Entry, Promise<void>>} */
  #keeping = new WeakMap();
  /** @type {Promise<void> | undefined} */
  #sending;
  #again = false;
  #waitMs = SHORTEST_WAIT_MS;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;

  /** @param {bay.Store} store */
  constructor(store) {
    super();
    this.store = store;
  }

  async load() {
    this.entries = await this.store.all("outbox");
    // The server may have been mended since.
    this.entries.filter((entry) => entry.fault).forEach((entry) => Object.assign(entry, { refused: undefined, fault: undefined, failed: undefined }));
  }

  /** @param {string} visit */
  of(visit) {
    return this.waiting.filter((entry) => entry.visit === visit);
  }

  /** What waits to go to the book. */
  get waiting() {
    return this.entries.filter((entry) => !stays(entry));
  }

  /**
   * Values that were typed where none belongs.
   *
   * @param {string} visit
   */
  strays(visit) {
    return this.entries.flatMap((entry) => (entry.kind === "stray" && entry.visit === visit ? entry : []));
  }

  /** What the book or the server did not take; it keeps nothing else back. */
  get refused() {
    return this.waiting.filter((entry) => entry.refused);
  }

  /** What a person keeps here, and sends no more. */
  get notes() {
    return this.entries.filter(stays);
  }

  /**
   * Keeps an entry on this tablet, then sends it. One that was never sent is replaced by its successor.
   *
   * @param {bay.Made} entry
   * @param {bay.Entry} [replaces]
   */
  async add(entry, replaces) {
    /** @type {bay.Entry} */
    const kept = { ...entry, id: newId(), at: new Date().toISOString() };
    // Seen at once; sent when it is on the disk.
    this.entries = [...this.entries.filter((other) => other !== replaces), kept];
    this.#changed();
    const keeping = this.store.put("outbox", kept).then((seq) => {
      kept.seq = Number(seq);
    });
    this.#keeping.set(kept, keeping);
    await keeping;
    if (replaces) {
      await this.#remove(replaces);
    }
    this.#changed();
    this.send();
    return kept;
  }

  /**
   * Changes an entry that is still here, as by the reason that it waited for.
   *
   * @param {bay.Entry} entry
   * @param {Partial<bay.Waiting> & { reason?: string, sure?: boolean }} values
   */
  async amend(entry, values) {
    Object.assign(entry, values);
    await this.#keeping.get(entry);
    await this.store.put("outbox", entry);
    this.#changed();
    this.send();
  }

  /** @param {bay.Entry} entry */
  async drop(entry) {
    await this.#remove(entry);
    this.entries = this.entries.filter((other) => other !== entry);
    this.#changed();
  }

  /**
   * From the disk, to which it may still be on its way.
   *
   * @param {bay.Entry} entry
   */
  async #remove(entry) {
    await this.#keeping.get(entry);
    if (entry.seq !== undefined) {
      await this.store.remove("outbox", entry.seq);
    }
  }

  /**
   * What was refused or failed is tried once more.
   *
   * @param {bay.Entry} entry
   */
  retry(entry) {
    return this.amend(entry, { refused: undefined, fault: undefined, failed: undefined });
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
      let failed = false;
      while (this.#again) {
        this.#again = false;
        failed = await this.#sendAll();
      }
      if (failed) {
        this.#later();
      } else {
        this.#waitMs = SHORTEST_WAIT_MS;
      }
    } catch {
      this.setLinked(false);
      this.#later();
    }
  }

  #later() {
    this.#timer = setTimeout(() => this.send(), this.#waitMs);
    this.#waitMs = Math.min(LONGEST_WAIT_MS, this.#waitMs * 2);
  }

  /** @param {boolean} linked */
  setLinked(linked) {
    if (this.linked !== linked) {
      this.linked = linked;
      this.#changed();
    }
  }

  /** Gives whether the server failed at something that is to be tried again. */
  async #sendAll() {
    /** @type {Set<bay.Entry>} */
    const failed = new Set();
    for (;;) {
      const ready = this.entries.filter((entry) => entry.seq !== undefined && !entry.refused && !entry.held && !stays(entry) && !failed.has(entry) && isKnown(entry.person));
      const [next] = ready;
      if (!next) {
        return failed.size > 0;
      }
      // Readings are small and go first; a photo goes alone.
      const readings = ready.filter((entry) => entry.kind !== "photo");
      if (next.kind === "photo" && readings.length === 0) {
        await this.#send([next], failed);
      } else {
        const batch = readings.filter((entry) => entry.visit === readings[0]?.visit).slice(0, MOST_AT_ONCE);
        const first = batch.filter((entry) => !entry.tried);
        first.forEach((entry) => (entry.tried = true));
        await Promise.all(first.map((entry) => this.store.put("outbox", entry)));
        await this.#send(batch, failed);
      }
      this.#changed();
    }
  }

  /**
   * An answer about this batch is no lost link: the one that it is about is looked for by halves, and steps aside.
   *
   * @param {bay.Entry[]} batch of one visit, or a photo
   * @param {Set<bay.Entry>} failed
   */
  async #send(batch, failed) {
    const [first] = batch;
    if (!first) {
      return;
    }
    const response = await (first.kind === "photo" ? putPhoto(first) : postEntries(first.visit, batch));
    /** @type {bay.Answered} */
    const said = await response.json().catch(() => ({}));
    // What does not speak as the server does is something on the way to it.
    const foreign = (response.ok && !said.status && said.answers?.length !== batch.length) || (response.status === GONE && !said.sentence);
    if (foreign || LINK_LOST.includes(response.status)) {
      throw new Error(`The server answered ${response.status}`);
    }
    this.linked = true;
    const refused = said.sentence || { key: "server-answered", status: response.status };
    if (said.answers) {
      if (said.state) {
        // What the book has comes before its entries go, or for a moment a place would have neither.
        this.dispatchEvent(new CustomEvent("state", { detail: { visit: first.visit, state: said.state } }));
      }
      await this.#settle(batch, said.answers);
    } else if (said.status) {
      await this.#settle(batch, [{ id: first.id, status: said.status, sentence: said.sentence ?? "", pointer: said.pointer ?? "" }]);
    } else if (response.status === GONE) {
      for (const entry of batch) {
        await this.#setAside(entry, { refused });
      }
    } else if (batch.length > 1) {
      const half = Math.ceil(batch.length / 2);
      await this.#send(batch.slice(0, half), failed);
      await this.#send(batch.slice(half), failed);
    } else if (response.status < SERVER_FAILS) {
      await this.#setAside(first, { refused });
    } else {
      failed.add(first);
      const times = (first.failed ?? 0) + 1;
      await this.#setAside(first, times < MOST_FAILURES ? { failed: times } : { failed: times, fault: true, refused });
    }
  }

  /**
   * The book has what is stored, there already, or a rival; only what is refused stays here.
   *
   * @param {bay.Entry[]} batch
   * @param {bay.Answer[]} answers one for each
   */
  async #settle(batch, answers) {
    for (const [index, entry] of batch.entries()) {
      const answer = answers[index];
      const conflict = answer?.status === "conflict" ? CONFLICTS[entry.kind] : undefined;
      if (answer?.status === "refused" && answer.pointer.endsWith("/at") && !entry.timed) {
        // The clocks went apart since the server last told the time; sent again with what it says now.
        await learnClock(entry.visit);
        await this.#setAside(entry, { timed: true });
      } else if (answer?.status === "refused" || conflict) {
        await this.#setAside(entry, { refused: answer?.sentence || conflict || { key: "refused-silently" } });
      } else {
        await this.#remove(entry);
        this.entries = this.entries.filter((other) => other !== entry);
      }
    }
  }

  /**
   * @param {bay.Entry} entry
   * @param {Partial<bay.Waiting>} values
   */
  #setAside(entry, values) {
    Object.assign(entry, values);
    return this.store.put("outbox", entry);
  }

  #changed() {
    this.dispatchEvent(new Event("change"));
  }
}

/** @param {bay.Entry} entry */
const timed = (entry) => ({ ...entry, at: byServer(entry.at) });

/**
 * @param {string} visit
 * @param {bay.Entry[]} batch
 */
const postEntries = (visit, batch) =>
  ask(`/bay/visits/${encodeURIComponent(visit)}/entries`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ entries: batch.map(timed) }),
  });

/** @param {bay.EntryOf<"photo">} entry */
function putPhoto(entry) {
  const about = new URLSearchParams({ corner: entry.corner ?? "", person: entry.person, at: timed(entry).at });
  return ask(`/bay/visits/${encodeURIComponent(entry.visit)}/photos/${entry.id}?${about}`, { method: "PUT", body: entry.blob }, PHOTO_ANSWER_MS);
}

/** @param {string} visit */
async function learnClock(visit) {
  const response = await ask(`/bay/visits/${encodeURIComponent(visit)}/state.json`);
  if (!response.ok) {
    throw new Error(`The server answered ${response.status}`);
  }
  learn((await response.json()).now);
}
