// Values that a gauge typed where none belongs: they lie here until a person says where they go, or that they are no reading.
import { h, note } from "./bay-dom.mjs";
import { chosen, person } from "./bay-person.mjs";
import { say } from "./bay-words.mjs";

export class Tray {
  element = h("div", { className: "tray", role: "group" });
  #coming = h("div", { role: "alert" });
  #said = h("div");
  #values = h("div", { className: "row" });
  #shape = "";
  /** @type {bay.EntryOf<"stray"> | undefined} */
  #inHand;

  /** @param {bay.Visit} visit */
  constructor(visit) {
    this.visit = visit;
    this.element.append(this.#coming, this.#said, this.#values);
    this.update();
  }

  /**
   * Says a value that is being typed, key by key.
   *
   * @param {string} typed
   */
  hear(typed) {
    this.#coming.replaceChildren(note("wrong", say("stray", { value: typed })));
  }

  /** What was being typed was no value. */
  hush() {
    this.#coming.replaceChildren();
  }

  /**
   * Takes in a value that has no place, for good.
   *
   * @param {string} written
   */
  keep(written) {
    this.#coming.replaceChildren();
    return this.visit.outbox.add({ visit: this.visit.id, kind: "stray", person: person(), written });
  }

  /** The value that is in hand, which lies here no more; nothing when none is. */
  give() {
    const entry = this.#inHand;
    if (entry) {
      this.#inHand = undefined;
      this.visit.outbox.drop(entry);
    }
    return entry?.written;
  }

  update() {
    const strays = this.visit.outbox.strays(this.visit.id);
    const shape = [...strays.map(({ id }) => id), this.#inHand?.id, chosen().language].join();
    if (shape === this.#shape) {
      return;
    }
    this.#shape = shape;
    this.element.ariaLabel = say("tray");
    this.#said.replaceChildren(strays.length > 0 ? note("wrong", say("where-belongs", { taken: this.#inHand !== undefined })) : "");
    this.#values.replaceChildren(...strays.map((entry) => this.#value(entry)));
  }

  /** @param {bay.EntryOf<"stray">} entry */
  #value(entry) {
    const taken = entry === this.#inHand;
    const take = () => {
      this.#inHand = taken ? undefined : entry;
      this.update();
    };
    return h("span", { className: "stray" },
      h("button", { type: "button", className: "quiet", ariaPressed: String(taken), onclick: take }, entry.written),
      h("button", { type: "button", className: "quiet", onclick: () => this.visit.outbox.drop(entry) }, say("no-reading")));
  }
}
