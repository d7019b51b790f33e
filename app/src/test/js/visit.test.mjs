import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { field, newTablet, sheet, step, wheel } from "./tablet.mjs";

const DONE = [{ written: "not done", label: "not done", undone: true }, { written: "done", label: "done", undone: false }];
const CLOSED = field({ measure: "CALIPER_CLOSED", corner: "LF", words: DONE });
const CLEANED = { ...CLOSED, measure: "BRACKET_CLEANED" };
const TREAD = field({ measure: "TREAD_DEPTH", corner: "LF", spot: "OUTER", ofWheel: true, suffix: " mm" });
const PUT_ON = { ...TREAD, goesOn: true, onlyNew: true };
const ROCKED = { key: "ROCKED", label: "" };
const [BRAKE, ON, LIFT] = [step({ id: "BRAKE.LF" }, CLEANED, CLOSED), step({ id: "ON", kind: "WHEELS" }, PUT_ON), step({ id: "LIFT", groups: [], ticks: [ROCKED] })];
const SHEET = sheet({
  arrived: { LF: "S1" },
  wheels: { S1: wheel("S"), W1: wheel("W") },
  fasteners: { count: 2, order: [1, 2], torque: "", unit: "", thread: "", retorque: "" },
  cautions: [{ key: "CALIPER.LF", sentence: "", openedBy: ["BRACKET_CLEANED.LF", "NOT.CALIPER_CLOSED.LF"], closedBy: "CALIPER_CLOSED.LF" }, { key: "SECOND_CHECK", sentence: "", openedBy: ["WHEELS_ON"], closedBy: "SECOND_CHECK" }],
  steps: [BRAKE, ON, LIFT],
});

let visit;
let outbox;

beforeEach(async () => {
  const { kept, store } = newTablet();
  kept.set("person", "Ada");
  const { Outbox } = await import("../../main/resources/cornerbook/app/assets/bay-outbox.mjs");
  const { Visit } = await import("../../main/resources/cornerbook/app/assets/bay-visit.mjs");
  globalThis.fetch = async () => {
    throw new TypeError("no link");
  };
  outbox = new Outbox(store);
  // Nothing goes out here.
  outbox.send = async () => {};
  visit = new Visit("v", outbox);
  visit.sheets = { en: { metric: SHEET } };
});

test("what is entered here is shown before what the book has", async () => {
  visit.state.readings["TREAD_DEPTH.LF.OUTER.S1"] = { id: "1", written: "5.0 mm", shown: { metric: "5.0" } };
  assert.equal(visit.look(TREAD).where, "book");
  await visit.enter(TREAD, "5.1");
  const { written, where, entry } = visit.look(TREAD);
  assert.deepEqual([written, where, entry.shown, entry.written], ["5.1", "held", "1", "5.1 mm"]);
});

test("a caution opens by what was done, and closes by what was done and by nothing else", async () => {
  const open = () => visit.openPoints().map(({ key }) => key);
  assert.deepEqual(open(), []);
  await visit.enter(CLEANED, "done");
  assert.deepEqual(open(), ["CALIPER.LF"]);
  await visit.enter(CLOSED, "not done");
  assert.deepEqual(open(), ["CALIPER.LF"]);
  await visit.enter(CLOSED, "done");
  assert.deepEqual(open(), []);
});

test("an answer that it is not done opens its point by itself", async () => {
  const open = () => visit.openPoints().map(({ key }) => key);
  await visit.enter(CLOSED, "not done");
  assert.deepEqual(open(), ["CALIPER.LF"]);
});

test("what the book found unsafe is open, and no entry closes it here", () => {
  visit.state.unsafe = [{ key: "UNSAFE.PAD.LF", sentence: { en: { metric: "Pads too thin." } } }];
  assert.deepEqual(visit.openPoints(), [{ key: "UNSAFE.PAD.LF", sentence: "Pads too thin.", unsafe: true }]);
  assert.equal(visit.stepThatCloses(visit.openPoints()[0]), undefined);
});

test("a step tells what is missing as facts", async () => {
  assert.deepEqual(visit.progress(LIFT), { missing: [{ tick: ROCKED }], done: 0, of: 1 });
  assert.deepEqual(visit.progress(ON).missing, [{ wheels: "which-wheels" }]);
  await visit.record("leaving", { wheels: { LF: "W1" } });
  assert.deepEqual(visit.progress(ON).missing, [{ field: PUT_ON }]);
});

test("a wheel that stays on is not read twice", async () => {
  await visit.record("leaving", { wheels: { LF: "S1" } });
  assert.equal(visit.applies(PUT_ON), false);
});

test("a check is made by another person, of every tightening before the eyes", async () => {
  await visit.record("leaving", { wheels: { LF: "W1" } });
  await visit.tick("FASTENER.LF.1", true);
  await visit.tick("SECOND_CHECK", true);
  assert.equal(visit.secondChecked(), false);
  await visit.tick("SECOND_CHECK", true, "Bo");
  assert.equal(visit.secondChecked(), true);
  await visit.tick("FASTENER.LF.2", true);
  assert.equal(visit.secondChecked(), false);
});

test("sheets of an older server are none", async () => {
  const { sheetOf } = await import("../../main/resources/cornerbook/app/assets/bay-visit.mjs");
  assert.equal(sheetOf(/** @type {any} */ ({ metric: SHEET, us: SHEET })), undefined);
});
