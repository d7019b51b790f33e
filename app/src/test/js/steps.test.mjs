import assert from "node:assert/strict";
import { test } from "node:test";
import { byTool, inOrderOf } from "../../main/resources/cornerbook/app/assets/bay-steps.mjs";
import { field, step } from "./tablet.mjs";

/** @type {bay.Corner[]} */
const WALK = ["RR", "LR", "LF", "RF"];

/** @type {bay.Corner[]} */
const CORNERS = ["LF", "RF", "LR", "RR"];

test("the brakes come in the order in which the person walks, the other steps stay", () => {
  const steps = [step({ id: "LIFT" }), ...CORNERS.map((corner) => step({ id: `BRAKE.${corner}`, corner })), step({ id: "PEDAL" })];
  assert.deepEqual(inOrderOf(WALK, steps).map(({ id }) => id), ["LIFT", "BRAKE.RR", "BRAKE.LR", "BRAKE.LF", "BRAKE.RF", "PEDAL"]);
  assert.equal(steps[1].corner, "LF");
});

test("one tool goes round the whole car before the next is taken up", () => {
  const fields = CORNERS.flatMap((corner) => [...["OUTER", "INNER"].map((spot) => field({ measure: "TREAD_DEPTH", corner, spot })), field({ measure: "PRESSURE_FOUND", corner })]);
  const taken = byTool(WALK, fields);
  assert.deepEqual(taken.slice(0, 3).map(({ corner, spot }) => [corner, spot]), [["RR", "OUTER"], ["RR", "INNER"], ["LR", "OUTER"]]);
  assert.deepEqual(taken.slice(8).map(({ measure, corner }) => [measure, corner]), WALK.map((corner) => ["PRESSURE_FOUND", corner]));
});
