// Numbers that a library spelled, by language, come back as themselves: whole as a torque, with digits after the point as a
// pressure in bar. They stand in the file that is named.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import { lexiconOf } from "../../main/resources/cornerbook/app/assets/bay-lexicon.mjs";
import { understand } from "../../main/resources/cornerbook/app/assets/bay-spoken.mjs";
import { sayIn } from "./catalogue.mjs";
import { field, step } from "./tablet.mjs";

const TORQUE = field({ measure: "WHEEL_TORQUE", suffix: " N·m", high: 1_000 });
const STEP = step({ id: "TORQUE" }, TORQUE);

/** @type {Record<string, Record<string, string>>} */
const spelled = JSON.parse(readFileSync(pathToFileURL(argv[2] ?? ""), "utf8"));
for (const [language, numbers] of Object.entries(spelled)) {
  const lexicon = lexiconOf(sayIn(language), [TORQUE]);
  const faults = Object.entries(numbers).filter(([words, value]) => understand(words, lexicon, [STEP], STEP, () => true)[0]?.text !== value);
  assert.ok(Object.keys(numbers).length > 5_000);
  assert.deepEqual(faults.slice(0, 30), [], `${faults.length} in ${language}`);
}
