import assert from "node:assert/strict";
import { test } from "node:test";
import { StrayValue, TypingPace } from "../../main/resources/cornerbook/app/assets/bay-gauge.mjs";

const take = (stray, keys, waits) => keys.map((key) => stray.take(key, () => waits));

test("the first digit goes to a field that waits", () => {
  assert.deepEqual(take(new StrayValue(), ["5"], true), ["goes to the field"]);
});

test("a value without a place is told, and its Enter presses nothing", () => {
  const stray = new StrayValue();
  assert.deepEqual(take(stray, ["5", "."], false), ["strays", "strays"]);
  assert.equal(stray.typed, "5.");
  assert.deepEqual(take(stray, ["Shift", "Enter"], false), ["passes", "ends"]);
  assert.equal(stray.end(), "5.");
  assert.deepEqual(take(stray, ["Enter"], false), ["passes"]);
});

test("a value that began to stray is not torn in two", () => {
  const stray = new StrayValue();
  take(stray, ["5"], false);
  assert.deepEqual(take(stray, ["2"], true), ["strays"]);
});

test("what is no part of a value passes", () => {
  assert.deepEqual(take(new StrayValue(), ["a", "Tab", " "], true), ["passes", "passes", "passes"]);
});

test("a gauge types faster than a hand", () => {
  const pace = new TypingPace();
  [0, 8, 16, 24].forEach((at) => pace.key(at));
  assert.ok(pace.ofGauge);
  [400, 560, 730].forEach((at) => pace.key(at));
  assert.ok(!pace.ofGauge);
});
