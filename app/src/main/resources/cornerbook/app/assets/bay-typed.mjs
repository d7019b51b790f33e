// What is typed at one place for a reading: kept, or told why it cannot be; never strung together, and never lost when a gauge typed.
import { bareNumber, isSame, isWithin } from "./bay-written.mjs";

const READ_AGAIN = "READ_AGAIN";

export class TypedReading {
  /**
   * Why what was typed cannot be; nothing when it can.
   *
   * @type {"" | "never-deleted" | "cannot-be"}
   */
  wrong = "";

  /** What was typed that cannot be. */
  wrongText = "";

  /** What is asked about the value that was kept. */
  asked = "";

  /**
   * @param {bay.Visit} visit
   * @param {{ keep: (written: string) => unknown }} tray
   * @param {bay.Field} field
   * @param {bay.TypingPace} pace of the keys of the page
   */
  constructor(visit, tray, field, pace) {
    this.visit = visit;
    this.tray = tray;
    this.field = field;
    this.pace = pace;
  }

  /**
   * A gauge or caliper types digits, then Enter or Tab: the reading is kept, and the next field waits. What cannot be a reading
   * stays, so that the next value takes its place; Tab a second time goes on all the same (WCAG 2.2, 2.1.2).
   *
   * @param {string} key
   * @param {string} typed what the field has before the key
   * @returns {"types" | "stays" | "goes on filling" | "goes on changing"}
   */
  key(key, typed) {
    const text = typed.trim();
    const { written } = this.visit.look(this.field);
    if ((key !== "Enter" && key !== "Tab") || (key === "Tab" && (isSame(text, written) || (this.wrong && text === this.wrongText)))) {
      return "types";
    }
    if (this.commit(text)) {
      return written === "" ? "goes on filling" : "goes on changing";
    }
    if (text !== "" && this.pace.isOfGauge(text)) {
      // The hands may not look: the next value takes its place, and this one is not lost.
      this.tray.keep(text);
    }
    return "stays";
  }

  /**
   * Keeps what was typed; false when it cannot be a reading.
   *
   * @param {string} text
   */
  commit(text) {
    const { written, stored } = this.visit.look(this.field);
    const value = bareNumber(text);
    this.wrongText = text;
    this.wrong = isSame(text, written) ? "" : text === "" ? (stored ? "never-deleted" : "") : isWithin(value, this.field) ? "" : "cannot-be";
    if (this.wrong || text === "" || isSame(text, written)) {
      return !this.wrong;
    }
    const reason = this.asked ? READ_AGAIN : undefined;
    const expected = this.visit.expectedOf(this.field);
    this.asked = expected && !isWithin(value, expected) ? expected.asks : "";
    this.visit.enter(this.field, text, reason);
    return true;
  }
}
