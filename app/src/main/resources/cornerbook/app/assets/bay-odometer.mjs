// The odometer, read again as the car comes in: what the car can hardly have is asked about at once, also without a link.
import { h, note } from "./bay-dom.mjs";
import { likelyOdometers } from "./bay-likely.mjs";
import { asHere, number, say } from "./bay-words.mjs";
import { bareNumber, isSame, isWithin } from "./bay-written.mjs";

/** Why a value changes, as the server knows it. */
const REASONS = ["MISREAD", "TYPED_WRONG", "MEASURED_AGAIN"];

/** What a gauge may type here: no tread, pad or pressure. */
const LEAST_OF_A_CAR = "\\d{4,}";

/** @param {bay.View} view */
export function odometer(view) {
  const { visit } = view;
  // A sheet that an older server made has words there.
  const { label, unit, low, high, expected } = visit.sheet.odometer;
  if (!unit) {
    return null;
  }
  const mark = h("span", { className: "mark", role: "img" });
  const below = h("div", { className: "below", id: "odometer.said", ariaLive: "polite" });
  const input = h("input", {
    id: "odometer", type: "text", autocomplete: "off", inputMode: "decimal", enterKeyHint: "next", maxLength: 24, "data-takes": LEAST_OF_A_CAR, "aria-describedby": below.id,
    onchange: () => commit(),
    onfocus: () => (fresh = true),
    oninput: () => (fresh = false),
    onclick: () => {
      // A tap selects what is there, so that what is typed replaces it; a second tap sets the cursor.
      if (fresh) {
        input.select();
      }
      fresh = false;
    },
    onkeydown: (event) => {
      if (event.key === "Enter" && !event.isComposing) {
        event.preventDefault();
        if (commit()) {
          view.focus();
        } else {
          input.select();
        }
      }
    },
  });
  /** @param {number} value */
  const withUnit = (value) => `${asHere(number(value))}\u00a0${unit}`;
  let fresh = false;
  let wrong = "";
  let shown = "";
  let shape = "";

  /** Keeps what was typed; false when it cannot be, or is asked about. */
  function commit() {
    const text = input.value.trim();
    const { written } = visit.odometer();
    const value = bareNumber(text);
    wrong = text !== "" && !isWithin(value, { low, high }) ? say("cannot-be", { value: text, low: number(low), high: withUnit(high) }) : "";
    if (!wrong && text !== "" && !isSame(text, written)) {
      visit.readOdometer(text);
    }
    update();
    return wrong === "" && !visit.odometer().entry?.held;
  }

  /** @param {[string, () => void][]} answers */
  const buttons = (answers) => h("div", { className: "row" }, ...answers.map(([words, onclick]) => h("button", { type: "button", className: "quiet", onclick }, words)));

  /** @param {bay.EntryOf<"put right">} entry */
  function questions(entry) {
    const value = bareNumber(visit.odometer().written);
    /** @type {[string, () => void]} */
    const keep = [say("keep-old"), () => visit.outbox.drop(entry)];
    if (value !== undefined && expected && !entry.sure && !visit.wasOdometerReplaced() && !isWithin(value, expected)) {
      const likely = likelyOdometers(value, expected).map(({ value: meant, slip }) => /** @type {[string, () => void]} */ ([say("likely", { value: withUnit(meant), slip }), () => visit.readOdometer(String(meant))]));
      return [
        note("asks", expected.asks),
        buttons([...likely, [say("it-is-so", { value: withUnit(value) }), () => visit.outbox.amend(entry, { sure: true })], keep]),
        ...(value < expected.low ? [h("p", { className: "soft" }, say("odometer-replaced"))] : []),
      ];
    }
    return entry.held ? [note("asks", say("why-changed")), buttons([...REASONS.map((reason) => /** @type {[string, () => void]} */ ([say("reason", { reason }), () => visit.outbox.amend(entry, { reason, held: false })])), keep])] : [];
  }

  function update() {
    const { written, entry, where } = visit.odometer();
    mark.className = `mark ${where}`;
    mark.ariaLabel = say("where", { where: where || undefined });
    // What somebody is typing is left alone.
    if (!wrong && (input.value === shown || document.activeElement !== input)) {
      input.value = asHere(written);
    }
    shown = asHere(written);
    input.ariaInvalid = String(wrong !== "");
    const now = [wrong, entry?.id, entry?.held, entry?.sure, visit.wasOdometerReplaced()].join("|");
    if (now !== shape) {
      shape = now;
      below.replaceChildren(...(wrong ? [note("wrong", wrong)] : entry ? questions(entry) : []));
    }
  }

  view.onUpdate(update);
  return h("div", { className: "field odometer" }, h("label", { htmlFor: input.id }, label), h("span", { className: "box" }, input, h("span", { className: "unit" }, unit), mark), below);
}
