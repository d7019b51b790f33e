import assert from "node:assert/strict";
import { test } from "node:test";
import { GaugeKeys, TagKeys, TypingPace } from "../../main/resources/cornerbook/app/assets/bay-gauge.mjs";

const GAUGE_MS = 8;
const HAND_MS = 150;

/** Keys that a gauge or a hand types, one after the other, at one place; what becomes of each. */
function typed(keys, all, at, betweenMs = GAUGE_MS) {
  return all.map((key, index) => keys.press(key, 1_000 + index * betweenMs, at));
}

const newKeys = () => new GaugeKeys(new TypingPace());
const button = { waits: () => false };

/** @param {string} takes */
const text = (takes, before = "") => ({ text: before, takes: (value) => new RegExp(`^(?:${takes})$`).test(value) });

test("the first digit goes to a field that waits", () => {
  assert.deepEqual(typed(newKeys(), ["5"], { waits: () => true }), [{ does: "goes to the field" }]);
});

test("a value without a place presses nothing, and is kept as it ends", () => {
  const ends = typed(newKeys(), ["5", ".", "Shift", "1", "Enter"], button);
  assert.deepEqual(ends.at(-1), { does: "presses nothing", kept: "5.1" });
  assert.deepEqual(ends.slice(0, -1).map(({ does }) => does), ["presses nothing", "presses nothing", "passes", "presses nothing"]);
});

test("a unit that a gauge types after its value stays with it", () => {
  assert.equal(typed(newKeys(), [..."24.92 mm", "Tab"], button).at(-1).kept, "24.92 mm");
});

test("a value that began to stray is not torn in two", () => {
  const keys = newKeys();
  typed(keys, ["5"], button);
  assert.deepEqual(typed(keys, ["2"], { waits: () => true }), [{ does: "presses nothing" }]);
  assert.equal(keys.end(), "52");
  assert.equal(keys.end(), undefined);
});

test("what is no part of a value passes, and Enter of a hand presses", () => {
  assert.deepEqual(typed(newKeys(), ["a", "Tab", " ", "Enter"], button, HAND_MS).map(({ does }) => does), ["passes", "passes", "passes", "passes"]);
});

test("Enter presses nothing where a scanner typed before it", () => {
  assert.equal(typed(newKeys(), [..."W-08", "Enter"], button).at(-1).does, "presses nothing");
  assert.equal(typed(newKeys(), [..."WHEEL", "Enter"], button, HAND_MS).at(-1).does, "passes");
});

test("a gauge's value in a place for words is taken back and kept, a hand's stays", () => {
  assert.deepEqual(typed(newKeys(), [..."7.9", "Enter"], text("", "noisy")).at(-1), { does: "presses nothing", kept: "7.9", text: "noisy" });
  assert.deepEqual(typed(newKeys(), [..."7.9", "Enter"], text("", "noisy"), HAND_MS).at(-1), { does: "passes", kept: undefined });
});

test("a scanner types a date code where one belongs", () => {
  assert.equal(typed(newKeys(), [..."2324", "Enter"], text("\\d{4}")).at(-1).does, "passes");
  assert.equal(typed(newKeys(), [..."5.04", "Enter"], text("\\d{4}")).at(-1).kept, "5.04");
  assert.equal(typed(newKeys(), [..."W-08", "Enter"], text("\\d{4}")).at(-1).does, "passes");
});

test("values that follow each other without a pause are told apart", () => {
  const all = typed(newKeys(), [..."7.9", "Enter", ..."7.8", "Enter"], text("", "noisy"));
  assert.deepEqual(all.flatMap(({ kept }) => kept ?? []), ["7.9", "7.8"]);
});

test("a gauge types faster than a hand", () => {
  const pace = new TypingPace();
  [0, 8, 16, 24].forEach((at) => pace.key(at));
  assert.ok(pace.isOfGauge("5.1"));
  [400, 560, 730].forEach((at) => pace.key(at));
  assert.ok(!pace.isOfGauge("5.1"));
});

test("a tag that a scanner types anywhere ends with Enter, and what stood there is known", () => {
  const pace = new TypingPace();
  const tags = new TagKeys(pace, (typed) => typed === "08S1");
  /** What the last of these keys finds at a place that had a text. */
  const found = (all, text, betweenMs) => all.map((key, index) => {
    pace.key(1_000_000 * all.length + index * betweenMs);
    return tags.press(key, index === 0 ? text : `${text}…`);
  }).at(-1);
  assert.deepEqual(found([..."08", "Shift", "S", "1", "Enter"], "7.5", GAUGE_MS), { tag: "08S1", before: "7.5" });
  assert.equal(found([..."08S1", "Enter"], "", HAND_MS), undefined, "a hand");
  assert.equal(found([..."08S2", "Enter"], "", GAUGE_MS), undefined, "no wheel of this car");
});
