import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { field, newTablet, sheet, step, wheel } from "./tablet.mjs";

const DONE = [{ written: "not done", label: "not done", undone: true }, { written: "done", label: "done", undone: false }];
const CLOSED = field({ measure: "CALIPER_CLOSED", corner: "LF", words: DONE });
const CLEANED = { ...CLOSED, measure: "BRACKET_CLEANED" };
const TREAD = field({ measure: "TREAD_DEPTH", corner: "LF", spot: "OUTER", ofWheel: true, suffix: " mm" });
const PUT_ON = { ...TREAD, goesOn: true, onlyNew: true };
const PAD = field({ measure: "PAD_THICKNESS", corner: "LF", spot: "INNER", suffix: " mm" });
const REPLACED = { ...CLOSED, measure: "PADS_REPLACED" };
const TORQUE = field({ measure: "WHEEL_TORQUE", corner: "LF", ofWheel: true, goesOn: true, suffix: " N·m" });
const SET = { ...TORQUE, measure: "PRESSURE_SET", suffix: " kPa" };
const ROCKED = { key: "ROCKED", label: "" };
const [BRAKE, ON, LIFT] = [step({ id: "BRAKE.LF" }, CLEANED, CLOSED), step({ id: "ON", kind: "WHEELS" }, PUT_ON), step({ id: "LIFT", groups: [], ticks: [ROCKED] })];
const TIGHTEN = step({ id: "TORQUE", kind: "TORQUE" }, TORQUE);
const SHEET = sheet({
  arrived: { LF: "S1" },
  wheels: { S1: wheel("S"), W1: wheel("W") },
  fasteners: { count: 2, order: [1, 2], torque: "", unit: "", thread: "", retorque: "" },
  cautions: [{ key: "CALIPER.LF", sentence: "", openedBy: ["BRACKET_CLEANED.LF", "NOT.CALIPER_CLOSED.LF"], closedBy: "CALIPER_CLOSED.LF" }, { key: "SECOND_CHECK", sentence: "", openedBy: ["WHEELS_ON"], closedBy: "SECOND_CHECK" }],
  steps: [BRAKE, ON, LIFT, step({ id: "PADS.LF" }, PAD, REPLACED), TIGHTEN],
  limits: [
    { measure: "TREAD_DEPTH", wheel: "S1", low: 1.6, high: 25, unsafe: true, sentence: "bald", point: "UNSAFE.WHEEL_SET" },
    { measure: "PAD_THICKNESS", corner: "LF", low: 1.6, high: 30, unsafe: true, sentence: "too thin", endedBy: "PADS_REPLACED", point: "UNSAFE.PAD.LF" },
    { measure: "PAD_THICKNESS", corner: "RF", low: 9, high: 30, unsafe: true, sentence: "of another corner" },
    { measure: "WHEEL_TORQUE", corner: "LF", low: 166.25, high: 1000, unsafe: true, sentence: "loose", point: "UNSAFE.WHEEL_TORQUE.LF" },
    { measure: "WHEEL_TORQUE", corner: "LF", low: 0, high: 192.5, unsafe: false, sentence: "too tight", point: "UNSAFE.WHEEL_TORQUE.LF" },
    { measure: "PAD_THICKNESS", corner: "LF", low: 3, high: 30, unsafe: false, sentence: "worn", endedBy: "PADS_REPLACED" },
    { measure: "TREAD_DEPTH", wheel: "S1", low: 3, high: 25, unsafe: false, sentence: "used up" },
  ],
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

test("an odometer that is read again waits for its reason, and is sent as a correction of what was shown", async () => {
  visit.state.odometer = { written: "38000 km", shown: { metric: "38000" } };
  assert.deepEqual([visit.odometer().written, visit.odometer().where], ["38000", "book"]);
  await visit.readOdometer("382000");
  await visit.readOdometer("38200");
  const { written, where, entry } = visit.odometer();
  assert.deepEqual([written, where, entry.odometer, entry.seen], ["38200", "held", "38200 km", "38000 km"]);
  assert.equal(outbox.entries.length, 1);
  await outbox.drop(entry);
  assert.equal(visit.odometer().written, "38000");
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

test("a value outside its limits is told at once, the gravest first, and both ends are within", async () => {
  const told = async (depth) => {
    await visit.enter(TREAD, depth);
    return visit.brokenBy(TREAD)?.sentence;
  };
  assert.equal(visit.brokenBy(TREAD), undefined);
  assert.equal(await told("1"), "bald");
  assert.equal(await told("1.6"), "used up");
  assert.equal(await told("2,9"), "used up");
  assert.equal(await told("3"), undefined);
});

test("a limit binds its own corner and wheel", async () => {
  await visit.enter(PAD, "8");
  assert.equal(visit.brokenBy(PAD), undefined);
  await visit.record("leaving", { wheels: { LF: "W1" } });
  await visit.enter(PUT_ON, "1");
  assert.equal(visit.brokenBy(PUT_ON), undefined);
});

test("new pads end what was told of the old ones", async () => {
  await visit.enter(PAD, "0.5");
  assert.deepEqual(visit.openPoints().map(({ key }) => key), ["UNSAFE.PAD.LF"]);
  await visit.enter(REPLACED, "not done");
  assert.equal(visit.brokenBy(PAD).sentence, "too thin");
  await visit.enter(REPLACED, "done");
  assert.equal(visit.brokenBy(PAD), undefined);
  assert.deepEqual(visit.openPoints(), []);
});

test("a wheel outside its torque is not done, though its fasteners are ticked, until it is torqued again", async () => {
  await visit.record("leaving", { wheels: { LF: "W1" } });
  await visit.tick("FASTENER.LF.1", true);
  await visit.tick("FASTENER.LF.2", true);
  assert.equal(visit.progress(TIGHTEN).done, 1);
  for (const torque of ["140", "200"]) {
    await visit.enter(TORQUE, torque, "MISREAD");
    assert.deepEqual(visit.progress(TIGHTEN), { missing: [{ field: TORQUE }], done: 0, of: 1 });
    assert.deepEqual(visit.openPoints().map(({ key, corner, unsafe }) => [key, corner, unsafe]).slice(-1), [["UNSAFE.WHEEL_TORQUE.LF", "LF", true]]);
  }
  await visit.enter(TORQUE, "175", "MISREAD");
  assert.equal(visit.progress(TIGHTEN).done, 1);
  assert.equal(visit.openPoints().some(({ unsafe }) => unsafe), false);
});

test("what the book found and the tablet sees is one point, in the book's words", async () => {
  visit.state.unsafe = [{ key: "UNSAFE.PAD.LF", sentence: { en: { metric: "Pads too thin." } } }];
  await visit.enter(PAD, "0.5");
  assert.deepEqual(visit.openPoints(), [{ key: "UNSAFE.PAD.LF", sentence: "Pads too thin.", unsafe: true }]);
});

test("the pressure to set is held to what is shown beside it", async () => {
  const limit = { measure: "PRESSURE_SET", corner: "LF", low: 240, high: 260, unsafe: false, sentence: "set again" };
  visit.state.air = { LF: { en: { metric: { set: "", from: "", limit } } } };
  await visit.record("leaving", { wheels: { LF: "W1" } });
  await visit.enter(SET, "180");
  assert.equal(visit.brokenBy(SET).sentence, "set again");
  await visit.enter(SET, "260");
  assert.equal(visit.brokenBy(SET), undefined);
});

test("what was answered not done is missing, and done is not", async () => {
  const missing = () => visit.progress(BRAKE).missing.map(({ field: each }) => each.measure);
  await visit.enter(CLOSED, "not done");
  assert.deepEqual(missing(), ["BRACKET_CLEANED", "CALIPER_CLOSED"]);
  await visit.enter(CLOSED, "done", "MISREAD");
  assert.deepEqual(missing(), ["BRACKET_CLEANED"]);
});

test("a step in which a value waits for a person's word is not done, folded or not", async () => {
  const folded = step({ id: "FOLDED", groups: [{ title: "", hints: [], fields: [PAD], folded: true, soundAtOnce: [] }] });
  assert.deepEqual([visit.asksIn(folded), visit.progress(folded).of], [false, 0]);
  visit.state.readings["PAD_THICKNESS.LF.INNER."] = { id: "1", written: "8.0 mm", shown: { metric: "8.0" } };
  await visit.enter(PAD, "7.0");
  assert.deepEqual([visit.asksIn(folded), visit.progress(folded).missing], [true, [{ field: PAD }]]);
  await outbox.amend(outbox.entries.at(-1), { reason: "MISREAD", held: false });
  assert.deepEqual([visit.asksIn(folded), visit.progress(folded).of], [false, 0]);
});

test("wheels that were stopped are not on, and the step needs a person", async () => {
  await visit.record("leaving", { wheels: { LF: "W1" } });
  assert.equal(visit.isFitted, true);
  await outbox.amend(outbox.entries.at(-1), { refused: "Stop." });
  assert.deepEqual([visit.isFitted, visit.asksIn(ON)], [false, true]);
});

test("what goes on is read before its wheels have corners, and what was read goes along", async () => {
  const stored = { set: "W", hint: "", wheelAt: { LF: "W1" } };
  visit.sheets = { en: { metric: { ...SHEET, planned: { LF: "W1" }, fills: [stored] } } };
  const [out] = visit.fieldsOutOfStore(visit.goingOn());
  await visit.enter(out, "6.9");
  assert.equal(outbox.entries.at(-1).wheel, "W1");
  assert.deepEqual(visit.progress(ON).missing, [{ wheels: "which-wheels" }]);
  const atRear = { ...PUT_ON, corner: /** @type {bay.Corner} */ ("RR") };
  await visit.record("leaving", { wheels: { RR: "W1" } });
  assert.deepEqual([visit.read(atRear), visit.read(TREAD)], ["6.9", ""]);
});

test("the set that a person takes goes on, whatever is planned", () => {
  const [summer, winter] = [{ set: "S", hint: "", wheelAt: { LF: "S1" } }, { set: "W", hint: "", wheelAt: { LF: "W1" } }];
  visit.sheets = { en: { metric: { ...SHEET, planned: { LF: "W1" }, fills: [summer, winter] } } };
  assert.equal(visit.goingOn(), winter);
  visit.takeSet("S");
  assert.equal(visit.goingOn(), summer);
  assert.deepEqual(visit.fieldsOutOfStore(summer), []);
});

test("a visit in a list says the plate once, of a car that goes by it, too", async () => {
  const { titleOf } = await import("../../main/resources/cornerbook/app/assets/bay-visit.mjs");
  assert.equal(titleOf(sheet({ car: "Ostrel Wren", plate: "QX 8476", day: "25 Nov 2026" })), "Ostrel Wren QX 8476, 25 Nov 2026");
  assert.equal(titleOf(sheet({ car: "QX 8476", plate: "QX 8476", day: "25 Nov 2026" })), "QX 8476, 25 Nov 2026");
});

test("what the server tells while the sheet is on its way is not put back by what was asked for before it", async () => {
  const asked = { ...visit.state, now: "2026-11-25T08:00:00Z" };
  const told = { ...asked, photos: [{ id: "1", corner: "LF", onSheet: false, person: "Ada" }] };
  const answer = (/** @type {unknown} */ content) => new Response(JSON.stringify(content));
  let arrives = (/** @type {Response} */ _sheet) => {};
  globalThis.fetch = (address) => (String(address).endsWith("sheet.json") ? new Promise((resolve) => (arrives = resolve)) : Promise.resolve(answer(asked)));
  const fetched = visit.fetch();
  visit.take(told);
  arrives(answer({ en: { metric: SHEET } }));
  await fetched;
  assert.equal(visit.state.photos.length, 1);
  const again = visit.fetch();
  arrives(answer({ en: { metric: SHEET } }));
  await again;
  assert.equal(visit.state.photos.length, 0, "asked for after it, it is the newer one");
});

const ALL = (words) => ({ en: { metric: words } });
const WORK = { key: "PADS.FRONT", places: ["PADS_REPLACED.LF", "PADS_REPLACED.RF"], holds: true, stop: ALL("stop"), amount: ALL("$203.40"), price: "CAD 180.00", free: false };
const ASKING = { name: "Ottilie", telephone: "555 0100", mayCall: true, law: ALL("law"), works: [WORK], lines: [{ key: "OWN.Pads", words: "Pads" }] };

test("work that is not agreed is held at its place, counts as missing, and keeps the car from leaving", async () => {
  await visit.enter(REPLACED, "done");
  assert.equal(visit.asked(REPLACED), undefined, "before there is an estimate");
  visit.state.asking = structuredClone(ASKING);
  const step = SHEET.steps.find(({ id }) => id === "PADS.LF");
  assert.equal(visit.asked(REPLACED).held, true);
  assert.ok(visit.asksIn(step));
  assert.ok(visit.progress(step).missing.some(({ field: missing }) => missing === REPLACED));
  assert.deepEqual(visit.openPoints().find(({ key }) => key === "NOT_AGREED.PADS.FRONT"), { key: "NOT_AGREED.PADS.FRONT", sentence: "stop", closedBy: "PADS_REPLACED.LF", unsafe: false });
  assert.equal(visit.asked(PAD), undefined, "what is measured is not asked about");
});

test("without a link an agreement by telephone releases it, and what was refused does not", async () => {
  visit.state.asking = structuredClone(ASKING);
  await visit.enter(REPLACED, "done");
  await visit.record("agreed", { work: "PADS.FRONT", name: "Ottilie", contact: "555 0100", price: "CAD 180.00" });
  assert.equal(visit.asked(REPLACED).held, false);
  assert.equal(visit.openPoints().some(({ key }) => key.startsWith("NOT_AGREED")), false);
  const entry = visit.here("agreed")[0];
  entry.refused = "no";
  assert.equal(visit.asked(REPLACED).held, true);
});

test("work without charge is held again once it is charged after all", async () => {
  visit.state.asking = structuredClone(ASKING);
  visit.state.asking.works[0].settled = ALL("free");
  visit.state.asking.works[0].free = true;
  await visit.enter(REPLACED, "done");
  assert.deepEqual([visit.asked(REPLACED).held, visit.asked(REPLACED).free], [false, true]);
  await visit.record("work", { work: "PADS.FRONT", answer: "ASKED_AGAIN" });
  assert.equal(visit.asked(REPLACED).held, true);
  await visit.record("work", { work: "PADS.FRONT", answer: "WITHOUT_CHARGE", reason: "GOODWILL" });
  assert.deepEqual([visit.asked(REPLACED).held, visit.asked(REPLACED).free], [false, true]);
  await visit.record("work", { work: "PADS.FRONT", answer: "AS_LINE", line: "OWN.Pads" });
  assert.deepEqual([visit.asked(REPLACED).held, visit.asked(REPLACED).free], [false, false]);
});

test("what is taken back leaves nothing open: unsent it goes, in the book it is corrected", async () => {
  visit.state.asking = structuredClone(ASKING);
  await visit.enter(REPLACED, "done");
  await visit.takeBack(REPLACED);
  assert.equal(visit.read(REPLACED), "");
  visit.state.readings["PADS_REPLACED.LF.."] = { id: "7", written: "done", shown: { metric: "done" } };
  assert.equal(visit.asked(REPLACED).held, true);
  await visit.takeBack(REPLACED);
  const { entry, where } = visit.look(REPLACED);
  assert.deepEqual([entry.written, entry.shown, entry.reason, where], ["not done", "7", "TAKEN_BACK", "here"]);
  assert.equal(visit.asked(REPLACED), undefined);
});

test("a place that asks for a written estimate is told without holding anything", async () => {
  visit.state.asking = { ...structuredClone(ASKING), works: [{ ...WORK, holds: false }] };
  await visit.enter(REPLACED, "done");
  assert.equal(visit.asked(REPLACED).held, false);
  assert.equal(visit.openPoints().some(({ key }) => key.startsWith("NOT_AGREED")), false);
});
