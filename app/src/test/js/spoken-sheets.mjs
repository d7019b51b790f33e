// Any reading of any measure on sheets that a server made, said in any of its ways, comes back as itself. The sheets stand in the
// file that is named; what is then entered, by its measure, is printed for the server to read.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import { lexiconOf } from "../../main/resources/cornerbook/app/assets/bay-lexicon.mjs";
import { understand } from "../../main/resources/cornerbook/app/assets/bay-spoken.mjs";
import { withUnit } from "../../main/resources/cornerbook/app/assets/bay-written.mjs";
import { sayIn } from "./catalogue.mjs";
import { chance, sayReading } from "./sayings.mjs";

const SAYINGS = 4;

/** @type {bay.ForAll<bay.Sheet>[]} */
const cars = JSON.parse(readFileSync(pathToFileURL(argv[2] ?? ""), "utf8"));
const next = chance(20261129);
const faults = [];
/** @type {string[][]} */
const entered = [];
for (const sheets of cars) {
  for (const [language, byUnits] of Object.entries(sheets)) {
    for (const { steps } of Object.values(byUnits)) {
      const say = sayIn(language);
      const lexicon = lexiconOf(say, steps.flatMap(({ groups }) => groups.flatMap(({ fields }) => fields)));
      for (const step of steps) {
        for (const field of step.groups.flatMap(({ fields }) => fields)) {
          for (let count = 0; count < SAYINGS; count++) {
            const { text, expected } = sayReading(field, language, say, next);
            const heard = understand(text, lexicon, steps, step, () => true);
            entered.push([field.measure, withUnit(field, expected)]);
            if (heard.length !== 1 || heard[0].fields[0] !== field || heard[0].text !== expected) {
              faults.push(`${language} ${step.id} ${field.measure} ${field.corner ?? ""} ${field.spot ?? ""} ${field.suffix}: "${text}" is ${expected}, not ${JSON.stringify(heard.map((each) => [each.fields[0]?.measure, each.fields[0]?.corner, each.fields[0]?.spot, each.text, each.why]))}`);
            }
          }
        }
      }
    }
  }
}
assert.equal(faults.length, 0, `${faults.length} of ${entered.length}:\n${faults.slice(0, 40).join("\n")}`);
console.log(JSON.stringify(entered));
