import assert from "node:assert/strict";
import { test } from "node:test";
import { bareNumber, hasOtherUnit, inWords, isSame, isWithin, pointsOf, saysDone, withMark, withoutUnit, withUnit } from "../../main/resources/cornerbook/app/assets/bay-written.mjs";
import { field } from "./tablet.mjs";

const mm = field({ suffix: " mm" });
const in32nds = field({ suffix: "/32 in", high: 31.5 });
const done = field({ words: [{ written: "not done", label: "pas fait", undone: true }, { written: "done", label: "fait", undone: false }] });

test("a bare number is kept with its field's unit, and comes back without", () => {
  assert.equal(withUnit(mm, "5.0"), "5.0 mm");
  assert.equal(withoutUnit(mm, "5.0 mm"), "5.0");
  assert.equal(withUnit(in32nds, "6"), "6/32 in");
  assert.equal(withUnit(in32nds, "1 3/16"), "1 3/16 in");
});

test("a unit that is written stays", () => {
  assert.equal(withUnit(mm, "6/32 in"), "6/32 in");
  assert.equal(withoutUnit(mm, "6/32 in"), "6/32 in");
  assert.ok(hasOtherUnit("6/32 in"));
  assert.ok(!hasOtherUnit("24,91; 24,92"));
});

test("a comma and a point part the same digits", () => {
  assert.equal(bareNumber("5,1"), 5.1);
  assert.equal(bareNumber("5.1"), 5.1);
  assert.equal(bareNumber("stud 2: 0 20"), undefined);
});

test("points that begin at a stud have their field's unit, too", () => {
  const inches = field({ suffix: " in", points: true });
  assert.equal(withUnit(inches, "stud 2: 0 0.001 0.002 0.001"), "stud 2: 0 0.001 0.002 0.001 in");
  assert.equal(withUnit(inches, "goujon 2 : 0 20 35 10 µm"), "goujon 2 : 0 20 35 10 µm");
});

test("a value is shown with the mark of the language, and typed with either it is the same", () => {
  assert.equal(withMark("27.31 27.3 mm", ","), "27,31 27,3 mm");
  assert.equal(withMark("27,31 mm", "."), "27,31 mm");
  assert.equal(withMark("2. 3", ","), "2. 3");
  assert.ok(isSame("7,4", "7.4"));
  assert.ok(!isSame("7,4", "7.5"));
});

test("only what is a bare number can lie outside of a range", () => {
  assert.ok(isWithin(25, mm));
  assert.ok(!isWithin(25.1, mm));
  assert.ok(!isWithin(-0.1, mm));
  assert.ok(isWithin(bareNumber("0 20 35 10 µm"), mm));
});

test("a chosen word is shown in the language of the sheet", () => {
  assert.equal(inWords(done, "done"), "fait");
  assert.equal(inWords(undefined, "done"), "done");
});

test("what says that nothing was done closes nothing", () => {
  assert.ok(saysDone(done, "done"));
  assert.ok(!saysDone(done, "not done"));
  assert.ok(!saysDone(done, ""));
  assert.ok(saysDone(mm, "5.0"));
});

test("the points around a disc are told apart, whatever parts them and wherever they begin; one value has none", () => {
  const points = (/** @type {string} */ text) => pointsOf(text).map(({ start, end }) => text.slice(start, end));
  assert.deepEqual(points("0 12 30 11 µm"), ["0", "12", "30", "11"]);
  assert.deepEqual(points("stud 3: 0;-12; 30 11"), ["0", "-12", "30", "11"]);
  assert.deepEqual(points("goujon 3 : 27,31 27,30 27,32 27,30 mm"), ["27,31", "27,30", "27,32", "27,30"]);
  for (const text of ["", "0.03", "0.03 mm", "1 1/4 in", "9/32 in", "0 12 µm 30", "0-12", "seized"]) {
    assert.deepEqual(points(text), [], text);
  }
});
