// By which words a person says measures, corners, places, conditions, units and numbers: those of the catalogue, in one language.
const CORNERS = ["LF", "RF", "LR", "RR"];
const SPOTS = ["OUTER", "CENTRE", "INNER"];
const SIGNS = /** @type {const} */ (["point", "minus", "over", "and", "half", "quarter", "same", "correct", "every", "filler"]);
const PARTS = [2, 4, 8, 16, 32, 64];
const BELOW_TWENTY = [...Array(20).keys()];
const TENS = [20, 30, 40, 50, 60, 70, 80, 90];
const LARGE = [100, 1_000];

/**
 * The units that are said, each with the name that the server reads, what it measures, and its size there; temperatures also with
 * their zero. Sizes of NIST Special Publication 811 (2008), appendix B.8.
 *
 * @type {Record<string, { name: string, of: string, size: number, zero?: number }>}
 */
export const UNITS = {
  mm: { name: "mm", of: "length", size: 1 },
  um: { name: "µm", of: "length", size: 0.001 },
  in: { name: "in", of: "length", size: 25.4 },
  part32: { name: "/32 in", of: "length", size: 25.4 / 32 },
  kPa: { name: "kPa", of: "pressure", size: 1 },
  psi: { name: "psi", of: "pressure", size: 6.894757 },
  bar: { name: "bar", of: "pressure", size: 100 },
  Nm: { name: "N·m", of: "torque", size: 1 },
  lbft: { name: "lbf·ft", of: "torque", size: 1.355818 },
  lbin: { name: "lbf·in", of: "torque", size: 0.1129848 },
  C: { name: "°C", of: "temperature", size: 1 },
  F: { name: "°F", of: "temperature", size: 1 / 1.8, zero: -32 / 1.8 },
  V: { name: "V", of: "voltage", size: 1 },
  A: { name: "A", of: "current", size: 1 },
  mA: { name: "mA", of: "current", size: 0.001 },
  Ah: { name: "A·h", of: "charge", size: 1 },
  percent: { name: "%", of: "share", size: 1 },
  g: { name: "g", of: "mass", size: 1 },
  oz: { name: "oz", of: "mass", size: 28.34952 },
  studs: { name: "studs", of: "studs", size: 1 },
  clicks: { name: "clicks", of: "clicks", size: 1 },
  km: { name: "km", of: "distance", size: 1 },
  mi: { name: "mi", of: "distance", size: 1.609344 },
};

/** Words and numbers of a phrase. */
const WORD = /[a-z°µ%²·]+|\d+/g;

/**
 * A text of one case and without accents, as long as it was, so that places in one are places in the other.
 *
 * @param {string} text
 */
export const plain = (text) => [...text].map((letter) => letter.toLowerCase().normalize("NFD").charAt(0).padEnd(letter.length)).join("").replaceAll("μ", "µ");

/**
 * The words of a phrase with single blanks between them.
 *
 * @param {string} phrase
 */
export const phraseOf = (phrase) => (plain(phrase).match(WORD) ?? []).join(" ");

/**
 * How a condition is named where its words are said.
 *
 * @param {string} written as entries and the book name it
 */
const nameOf = (written) => written.replaceAll(/\W/g, "_");

/**
 * All that may be said of these fields.
 *
 * @param {(key: string, facts?: bay.Facts) => string} say gives the words of the catalogue
 * @param {bay.Field[]} fields
 * @returns {bay.Lexicon}
 */
export function lexiconOf(say, fields) {
  /** @type {Map<string, bay.Meaning[]>} */
  const meanings = new Map();
  /**
   * @param {string} phrases parted by commas
   * @param {bay.Meaning} meaning
   */
  const add = (phrases, meaning) => {
    for (const phrase of new Set(phrases.split(",").map(phraseOf))) {
      if (phrase !== "") {
        meanings.set(phrase, [...(meanings.get(phrase) ?? []), meaning]);
      }
    }
  };
  for (const corner of CORNERS) {
    add(say("spoken-corner", { corner }), { is: "corner", corner: /** @type {bay.Corner} */ (corner) });
  }
  for (const spot of SPOTS) {
    add(say("spoken-spot", { spot }), { is: "spot", spot });
  }
  for (const measure of new Set(fields.map((field) => field.measure))) {
    add(say("spoken-measure", { measure }), { is: "measure", measure });
  }
  /** @type {Map<string, string>} */
  const words = new Map();
  for (const { written, label } of fields.flatMap((field) => field.words)) {
    words.set(written, [words.get(written) ?? say("spoken-word", { word: nameOf(written) }), label].join(","));
  }
  words.forEach((phrases, written) => add(phrases, { is: "word", written }));
  // "Tread centre" is where a hole is, and a place of the tread.
  const named = [...meanings].flatMap(([phrase, all]) => all.filter(({ is }) => is === "measure").map(({ measure }) => ({ phrase, measure })));
  const placed = [...meanings].flatMap(([phrase, all]) => all.filter(({ is }) => is === "spot").map(({ spot }) => ({ phrase, spot })));
  for (const [phrase] of [...meanings].filter(([, all]) => all.some(({ is }) => is === "word"))) {
    for (const { measure, spot } of named.flatMap((name) => placed.filter((place) => phrase === `${name.phrase} ${place.phrase}`).map((place) => ({ ...name, ...place })))) {
      add(phrase, { is: "measure", measure, spot });
    }
  }
  for (const unit of Object.keys(UNITS)) {
    add(say("spoken-unit", { unit }), { is: "unit", unit });
  }
  for (const parts of PARTS) {
    add(say("spoken-parts", { parts }), { is: "parts", parts });
  }
  for (const number of [...BELOW_TWENTY, ...TENS, ...LARGE]) {
    add(say("spoken-number", { number }), { is: "number", value: number });
  }
  for (const sign of SIGNS) {
    add(say("spoken-sign", { sign }), { is: sign });
  }
  return {
    meanings,
    longest: Math.max(...[...meanings.keys()].map((phrase) => phrase.split(" ").length)),
    toNineteen: new Set(TENS.filter((tens) => say("spoken-to-nineteen", { tens }) === "true")),
  };
}
