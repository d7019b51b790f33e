// What is dictated becomes readings at their places, as technicians say them; what is not understood becomes none.
import assert from "node:assert/strict";
import { test } from "node:test";
import { lexiconOf, UNITS } from "../../main/resources/cornerbook/app/assets/bay-lexicon.mjs";
import { understand } from "../../main/resources/cornerbook/app/assets/bay-spoken.mjs";
import { sayIn } from "./catalogue.mjs";
import { chance, one, sayReading } from "./sayings.mjs";
import { field, step } from "./tablet.mjs";

const STRANGE = 5_000;

/** @type {bay.Corner[]} */
const CORNERS = ["LF", "RF", "LR", "RR"];
const MOVEMENT = ["free", "tight", "seized"].map((written) => ({ written, label: written, undone: false }));

/** In the units of a person. */
const sheetIn = ({ thin, thinHigh, pressure, pressureHigh }) => [
  step({ id: "OFF", title: "Wheels off" }, ...CORNERS.flatMap((corner) => ["OUTER", "CENTRE", "INNER"].map((spot) => field({ measure: "TREAD_DEPTH", corner, spot, label: `Tread ${spot}`, suffix: thin, high: thinHigh })))),
  ...CORNERS.map((corner) => step({ id: `BRAKE.${corner}`, title: "Brake", corner },
    ...["INNER", "OUTER"].flatMap((spot) => [field({ measure: "PAD_THICKNESS", corner, spot, suffix: thin, high: thinHigh }), field({ measure: "PAD_MOVEMENT", corner, spot, words: MOVEMENT })]),
    field({ measure: "SLIDE_PIN_MOVEMENT", corner, words: MOVEMENT }), field({ measure: "DISC_THICKNESS", corner, suffix: " mm", high: 60 }), field({ measure: "DISC_RUNOUT", corner, suffix: " mm", high: 5, points: true }))),
  step({ id: "ON", title: "Wheels on" }, ...CORNERS.map((corner) => field({ measure: "TREAD_DEPTH", corner, spot: "OUTER", goesOn: true, suffix: thin, high: thinHigh }))),
  step({ id: "PRESSURE", title: "Pressures" }, field({ measure: "TYRE_TEMPERATURE", suffix: " °C", low: -50, high: 90 }), ...CORNERS.map((corner) => field({ measure: "PRESSURE_SET", corner, goesOn: true, suffix: pressure, high: pressureHigh }))),
  step({ id: "TORQUE", title: "Torque" }, ...CORNERS.map((corner) => field({ measure: "WHEEL_TORQUE", corner, goesOn: true, suffix: " N·m", high: 1_000 }))),
  step({ id: "BATTERY", title: "Battery" }, field({ measure: "BATTERY_VOLTAGE", suffix: " V", high: 18 }), field({ measure: "STANDBY_CURRENT", suffix: " mA", high: 10_000 })),
];
const METRIC = sheetIn({ thin: " mm", thinHigh: 25, pressure: " kPa", pressureHigh: 1_000 });
const fieldsIn = (steps) => steps.flatMap(({ groups }) => groups.flatMap(({ fields }) => fields));
const US = sheetIn({ thin: "/32 in", thinHigh: 31.49, pressure: " psi", pressureHigh: 145.03 });

const lexicons = new Map();

/**
 * @param {string} language
 * @param {bay.Step[]} steps
 * @returns {bay.Lexicon}
 */
function lexiconFor(language, steps) {
  const key = `${language} ${steps === US}`;
  lexicons.set(key, lexicons.get(key) ?? lexiconOf(sayIn(language), fieldsIn(steps)));
  return lexicons.get(key);
}

/**
 * What is understood in a step, as "LF TREAD_DEPTH OUTER 7.2", and why what is not is not.
 *
 * @param {string} text
 * @param {string} at
 * @param {{ language?: string, steps?: bay.Step[], applies?: (field: bay.Field) => boolean }} how
 */
function heard(text, at, how = {}) {
  const { language = "en", steps = METRIC, applies = () => true } = how;
  const lexicon = lexiconFor(language, steps);
  const open = steps.find(({ id }) => id === at);
  return understand(text, lexicon, steps, open ?? steps[0], applies).map(({ fields: [place], said, text: value, why }) => (value === undefined ? `${why?.key} “${said}”` : [place?.corner, place?.measure, place?.spot, value].filter(Boolean).join(" ")));
}

const LEFT_FRONT = ["LF TREAD_DEPTH OUTER 7.2", "LF TREAD_DEPTH CENTRE 7.1", "LF TREAD_DEPTH INNER 6.8"];

test("grooves and a brake in one breath, with and without punctuation, in words and digits", () => {
  for (const text of ["left front seven two, seven one, six eight", "left front seven two seven one six eight", "Left front 7 2, 7.1, 6,8.", "front left tread depth: 7.2 7.1 6.8", "LF 7 2 7 1 6 8", "left front seven point two six point eight correct that seven one and six eight"]) {
    assert.deepEqual(heard(text, "OFF"), LEFT_FRONT, text);
  }
  assert.deepEqual(heard("left front seven two; right rear inner pad four point five, seized", "OFF"), ["LF TREAD_DEPTH OUTER 7.2", "RR PAD_THICKNESS INNER 4.5", "RR PAD_MOVEMENT INNER seized"]);
});

test("French says and writes it with its own numbers", () => {
  const fr = { language: "fr" };
  for (const text of ["avant gauche sept virgule deux, sept un, six huit", "Avant gauche : 7,2, 7,1 et 6,8.", "avant-gauche profondeur 7 2 7 1 6 8"]) {
    assert.deepEqual(heard(text, "OFF", fr), LEFT_FRONT, text);
  }
  assert.deepEqual(heard("arrière droite plaquette intérieure quatre virgule cinq, grippée", "BRAKE.LF", fr), ["RR PAD_THICKNESS INNER 4.5", "RR PAD_MOVEMENT INNER seized"]);
  for (const [said, value] of [["soixante-dix", "70"], ["septante", "70"], ["soixante et onze", "71"], ["quatre-vingts", "80"], ["huitante et un", "81"], ["quatre-vingt-dix-sept", "97"], ["nonante sept", "97"], ["cent cinq", "105"], ["deux cent quarante", "240"]]) {
    assert.deepEqual(heard(`avant gauche ${said}`, "TORQUE", fr), [`LF WHEEL_TORQUE ${value}`], said);
  }
});

test("the step in which it is spoken says which measure is meant", () => {
  assert.deepEqual(heard("left front seven two", "OFF"), ["LF TREAD_DEPTH OUTER 7.2"]);
  assert.deepEqual(heard("left front seven two", "TORQUE"), ["LF WHEEL_TORQUE 72"]);
  assert.deepEqual(heard("left front two forty", "PRESSURE"), ["LF PRESSURE_SET 240"]);
  assert.deepEqual(heard("outer seven two", "BRAKE.RF"), ["RF PAD_THICKNESS OUTER 7.2"]);
  assert.deepEqual(heard("twelve sixty-five", "BATTERY"), ["BATTERY_VOLTAGE 12.65"]);
  // Of a wheel that is in two steps, the one that is open; from elsewhere neither.
  assert.deepEqual(heard("tread left front outer seven", "ON"), ["LF TREAD_DEPTH OUTER 7"]);
  assert.deepEqual(heard("tread left front outer seven", "TORQUE"), ["spoken-which “seven”"]);
  // A wheel that goes on has no corner before it is recorded, and what is said of it is not put to the one that came.
  assert.deepEqual(heard("tread left front outer seven", "ON", { applies: ({ goesOn }) => !goesOn }), ["record-wheels-first “seven”"]);
});

test("a unit that is said stays with its value", () => {
  assert.deepEqual(heard("left front thirty-six psi, right front two hundred forty kilopascals", "PRESSURE"), ["LF PRESSURE_SET 36 psi", "RF PRESSURE_SET 240"]);
  assert.deepEqual(heard("left front nine thirty-seconds, nine over thirty-two, 9/32", "OFF"), ["OUTER", "CENTRE", "INNER"].map((spot) => `LF TREAD_DEPTH ${spot} 9/32 in`));
  assert.deepEqual(heard("left front nine thirty-seconds, 8, seven", "OFF", { steps: US }), ["spoken-which", "8", "7"].map((_, at) => `LF TREAD_DEPTH ${["OUTER", "CENTRE", "INNER"][at]} ${[9, 8, 7][at]}`));
  assert.deepEqual(heard("left front 36, right front thirty-five and a half", "PRESSURE", { steps: US }), ["LF PRESSURE_SET 36", "RF PRESSURE_SET 35.5"]);
  assert.deepEqual(heard("tyre temperature minus five", "PRESSURE"), ["TYRE_TEMPERATURE -5"]);
  // 36 of what, when the last one says psi?
  assert.deepEqual(heard("left front 36, right front 35 psi", "PRESSURE"), ["spoken-two-units “36”", "RF PRESSURE_SET 35 psi"]);
  assert.deepEqual(heard("left front 36 psi", "TORQUE"), ["spoken-no-place “36 psi”"]);
});

test("same is the value said before, and a correction replaces the last one, told or not taken", () => {
  assert.deepEqual(heard("left front two forty, right front same, left rear same", "PRESSURE"), ["LF PRESSURE_SET 240", "RF PRESSURE_SET 240", "LR PRESSURE_SET 240"]);
  assert.deepEqual(heard("left front pins tight, right rear same", "BRAKE.LF"), ["LF SLIDE_PIN_MOVEMENT tight", "RR SLIDE_PIN_MOVEMENT tight"]);
  assert.deepEqual(heard("left front 7 2, 7 6, correct that, seven one, 6 8", "OFF"), LEFT_FRONT);
  assert.deepEqual(heard("left front seventy-two, correct that, seven two, seven one, 6 8", "OFF"), LEFT_FRONT);
  assert.deepEqual(heard("inner seized, correction, free", "BRAKE.RF"), ["RF PAD_MOVEMENT INNER free"]);
  assert.deepEqual(heard("same", "OFF"), ["not-understood “same”"]);
  assert.deepEqual(heard("left front 7 2, correct that", "OFF"), ["not-understood “correct that”"]);
});

test("both, and the order of the places where none is named", () => {
  assert.deepEqual(heard("both pads free", "BRAKE.LF"), ["LF PAD_MOVEMENT INNER free", "LF PAD_MOVEMENT OUTER free"]);
  assert.deepEqual(heard("centre seven one, six eight", "OFF"), ["spoken-which-corner “seven one”", "spoken-which-corner “six eight”"]);
  assert.deepEqual(heard("right front centre seven one, six eight", "OFF"), ["RF TREAD_DEPTH CENTRE 7.1", "RF TREAD_DEPTH INNER 6.8"]);
  assert.deepEqual(heard("pads free", "BRAKE.LF"), ["spoken-which “free”"]);
});

test("out of range, between two readings, too many, twice: told with what was expected, and the rest keeps its places", () => {
  assert.deepEqual(heard("left front 72, 7 1, 6 8", "OFF"), ["cannot-be “72”", "LF TREAD_DEPTH CENTRE 7.1", "LF TREAD_DEPTH INNER 6.8"]);
  assert.deepEqual(heard("left front seven six five", "OFF"), ["spoken-ways “seven six five”"]);
  assert.deepEqual(heard("left front seven six five, six eight", "OFF"), ["spoken-ways “seven six five”", "spoken-which “six eight”"]);
  assert.deepEqual(heard("left front one two", "OFF", { steps: US }), ["spoken-ways “one two”"]);
  assert.deepEqual(heard("left front 7, 7, 7, 7", "OFF").at(-1), "spoken-too-many “7”");
  assert.deepEqual(heard("left front outer 7 2, outer 7 3", "OFF"), ["spoken-twice “7 2”", "spoken-twice “7 3”"]);
  assert.deepEqual(heard("left front outer 7 2, outer 7 2", "OFF"), ["LF TREAD_DEPTH OUTER 7.2"]);
  assert.deepEqual(heard("standby 1,200", "BATTERY"), ["spoken-ways “1,200”"]);
  assert.deepEqual(heard("left front 300 psi", "PRESSURE"), ["cannot-be “300 psi”"]);
  // Hundredths of a dial are said with their point.
  assert.deepEqual(heard("runout zero three", "BRAKE.LF"), ["spoken-too-many “zero three”"]);
  assert.deepEqual(heard("runout point zero three", "BRAKE.LF"), ["LF DISC_RUNOUT 0.03"]);
});

test("a strange word takes what follows along until the next corner, and the measure that it may have been", () => {
  assert.deepEqual(heard("left front seven joint two", "OFF"), ["not-understood “seven joint two”"]);
  assert.deepEqual(heard("write rear inner pad four five", "BRAKE.LF"), ["not-understood “write rear inner pad four five”"]);
  assert.deepEqual(heard("left front seven two, hm, right front seven one", "OFF"), ["LF TREAD_DEPTH OUTER 7.2", "not-understood “hm”", "RF TREAD_DEPTH OUTER 7.1"]);
  assert.deepEqual(heard("left front lighning four five, right front five", "OFF"), ["not-understood “lighning four five”", "spoken-measure-unclear “five”"]);
  assert.deepEqual(heard("left front lighning four five, right front tread five", "OFF").at(-1), "RF TREAD_DEPTH OUTER 5");
  assert.deepEqual(heard("left front not seized", "BRAKE.LF"), ["not-understood “not seized”"]);
  assert.deepEqual(heard("left seven two", "OFF"), ["not-understood “left seven two”"]);
  assert.deepEqual(heard("left front minus blah seven", "OFF"), ["not-understood “minus blah seven”"]);
});

/** Letters at random, and words of the other language, which are nobody's words here. */
test("strange words never yield a value, wherever they stand", () => {
  const next = chance(7);
  const known = new Set([...lexiconFor("en", METRIC).meanings.keys()].flatMap((phrase) => phrase.split(" ")));
  const strange = () => {
    for (;;) {
      const word = Array.from({ length: 2 + Math.floor(next() * 7) }, () => String.fromCharCode(97 + Math.floor(next() * 26))).join("");
      if (!known.has(word)) {
        return word;
      }
    }
  };
  const parts = ["left front", "right rear", "outer", "inner", "tread", "pad", "seven two", "7.2", "240", "psi", "seized", "same", "correct that", "both", ",", "."];
  for (let count = 0; count < STRANGE; count++) {
    const after = Array.from({ length: 6 }, () => one(parts.filter((part) => !part.includes("front") && !part.includes("rear")), next));
    const text = [one(["", "left front", "tread"], next), strange(), ...after].join(" ");
    assert.deepEqual(heard(text, one(["OFF", "BRAKE.LF", "TORQUE"], next)).filter((each) => !each.includes("“")), [], text);
    const all = Array.from({ length: 8 }, strange).join(next() < 0.5 ? " " : ", ");
    assert.deepEqual(heard(all, "BRAKE.LF").filter((each) => !each.includes("“")), [], all);
  }
});

test("whatever is said, a value lies in its field's range and no place has two", () => {
  const next = chance(11);
  const lexicon = lexiconFor("en", METRIC);
  const words = [...lexicon.meanings.keys(), "7 2", "7.2", "72", "9/32", "blah", ",", "."];
  for (let count = 0; count < STRANGE; count++) {
    const text = Array.from({ length: 12 }, () => one(words, next)).join(" ");
    const taken = understand(text, lexicon, METRIC, one(METRIC, next), () => true).filter(({ text: value }) => value !== undefined);
    for (const { fields: [place], text: value = "", unit } of taken) {
      const size = Number(value.split("/")[0]?.split(" ")[0]);
      assert.ok(place && (place.words.length > 0 ? place.words.some(({ written }) => written === value) : unit !== undefined || (size >= place.low && size <= place.high)), text);
    }
    assert.equal(new Set(taken.map(({ fields: [place] }) => place)).size, taken.length, text);
  }
});

test("any reading said in any of its ways comes back as itself, in both languages and in the units of each person", () => {
  const next = chance(3);
  for (const language of ["en", "fr"]) {
    const say = sayIn(language);
    for (const steps of [METRIC, US]) {
      const lexicon = lexiconFor(language, steps);
      for (const open of steps) {
        for (const place of fieldsIn([open]).flatMap((each) => Array(25).fill(each))) {
          const { text, expected } = sayReading(place, language, say, next);
          assert.deepEqual(understand(text, lexicon, steps, open, () => true).map(({ fields, text: value }) => [fields[0], value]), [[place, expected]], text);
        }
      }
    }
  }
});

/** NIST Special Publication 811 (2008), appendix B.8, and its section 4.2 of temperatures. */
test("units have the sizes of their standard", () => {
  const inBase = (unit, value) => value * UNITS[unit].size + (UNITS[unit].zero ?? 0);
  for (const [unit = "", base] of [["in", 25.4], ["psi", 6.894757], ["lbft", 1.355818], ["lbin", 0.1129848], ["oz", 28.34952], ["mi", 1.609344], ["bar", 100]]) {
    assert.ok(Math.abs(inBase(unit, 1) - Number(base)) < 1e-9);
  }
  assert.ok(Math.abs(inBase("F", 212) - 100) < 1e-9 && Math.abs(inBase("F", 32)) < 1e-9);
});
