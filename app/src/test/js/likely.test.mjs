import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { likelyOdometers } from "../../main/resources/cornerbook/app/assets/bay-likely.mjs";

const TABLE = new URL("../../../../core/src/test/resources/reference/season/likely-odometers.csv", import.meta.url);

test("what was likely meant is what the server says", () => {
  const [, ...lines] = readFileSync(TABLE, "utf8").split("\n").filter((line) => line && !line.startsWith("#"));
  assert.ok(lines.length > 5);
  for (const line of lines) {
    const [typed, low, high, first, firstSlip, second, secondSlip] = line.split(",");
    const expected = [[first, firstSlip], [second, secondSlip]].filter(([value]) => value).map(([value, slip]) => ({ slip, value: Number(value) }));
    assert.deepEqual(likelyOdometers(Number(typed), { low: Number(low), high: Number(high) }), expected, line);
  }
});
