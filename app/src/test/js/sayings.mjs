// Says readings in the ways in which people and dictation software do; spells numbers by rules of its own.
import { UNITS } from "../../main/resources/cornerbook/app/assets/bay-lexicon.mjs";
import { scaleOf } from "../../main/resources/cornerbook/app/assets/bay-numerals.mjs";
import { unitOf } from "../../main/resources/cornerbook/app/assets/bay-spoken.mjs";

const ENGLISH = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ");
const ENGLISH_TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const FRENCH = "zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf".split(" ");
const FRENCH_TENS = ["", "", "vingt", "trente", "quarante", "cinquante", "soixante", "septante", "huitante", "nonante"];

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export function chance(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/**
 * A whole number below 10 000 in one of the ways in which it is spelled.
 *
 * @param {number} value
 * @param {string} language
 * @param {() => number} next
 */
export function spell(value, language, next) {
  const [ones, tens] = language === "fr" ? [FRENCH, FRENCH_TENS] : [ENGLISH, ENGLISH_TENS];
  const below100 = (number) => {
    const low = number % 10;
    const ten = Math.floor(number / 10);
    if (number < 20) {
      return ones[number];
    }
    if (language === "fr" && ten >= 7 && next() < 0.6) {
      const rest = number - (ten === 7 ? 60 : 80);
      const joint = ten === 7 && rest === 11 ? " et " : "-";
      return rest === 0 ? "quatre-vingts" : `${ten === 7 ? "soixante" : "quatre-vingt"}${joint}${ones[rest]}`;
    }
    return low === 0 ? tens[ten] : language === "fr" && low === 1 ? `${tens[ten]} et un` : `${tens[ten]}${next() < 0.5 ? "-" : " "}${ones[low]}`;
  };
  const hundreds = Math.floor(value / 100) % 10;
  const thousands = Math.floor(value / 1_000);
  const rest = value % 100;
  const [hundred, thousand] = language === "fr" ? [hundreds > 1 && rest === 0 && thousands === 0 && next() < 0.5 ? "cents" : "cent", "mille"] : ["hundred", "thousand"];
  return [
    thousands === 0 ? "" : language === "fr" && thousands === 1 ? thousand : `${ones[thousands]} ${thousand}`,
    hundreds === 0 ? "" : language === "fr" && hundreds === 1 ? hundred : `${ones[hundreds]} ${hundred}`,
    hundreds > 0 && rest > 0 && language === "en" && next() < 0.5 ? "and" : "",
    rest > 0 || value === 0 ? below100(rest) : "",
  ].filter(Boolean).join(" ");
}

/**
 * A number in one of the ways in which it is said where numbers of this unit are expected.
 *
 * @param {string} value as it is typed
 * @param {bay.Scale} scale
 * @param {string} language
 * @param {() => number} next
 */
export function sayNumber(value, scale, language, next) {
  const minus = value.startsWith("-") ? (language === "fr" ? "moins " : "minus ") : "";
  const [whole, after] = value.replace("-", "").split(".");
  const ones = language === "fr" ? FRENCH : ENGLISH;
  const each = (text) => [...text].map((digit) => ones[Number(digit)]).join(" ");
  const spelled = spell(Number(whole), language, next);
  const ways = [value.replace("-", "")];
  if (after === undefined) {
    ways.push(spelled);
    if (["whole", "psi"].includes(scale) && whole.length > 1 && whole.length < 5) {
      ways.push(each(whole), [...whole].join(" "));
    }
    // Quatre vingt-six is 86 to everybody.
    if (["whole", "psi"].includes(scale) && whole.length === 3 && whole[1] !== "0" && !(language === "fr" && whole.startsWith("42"))) {
      ways.push(`${ones[Number(whole[0])]} ${spell(Number(whole.slice(1)), language, next)}`);
    }
  } else {
    const point = language === "fr" ? (next() < 0.7 ? "virgule" : "point") : "point";
    ways.push(`${whole},${after}`, `${spelled} ${point} ${each(after)}`, `${whole} ${point} ${after}`);
    if (whole === "0") {
      ways.push(`${point} ${each(after)}`);
    }
    if (language === "fr") {
      ways.push(`${spelled} virgule ${after.startsWith("0") ? each(after) : spell(Number(after), language, next)}`);
    }
    if (after === "5") {
      ways.push(`${spelled} ${language === "fr" ? "et demi" : "and a half"}`);
    }
    const runs = { tenths: after.length === 1 && whole.length < 3, psi: after.length === 1 && whole.length === 2, volts: after.length < 3 && whole.length < 3 }[scale];
    if (runs) {
      // A ten before a digit is another number.
      const joins = /[2-9]0$/.test(whole) || (language === "fr" && /[17-9]\d?$/.test(whole));
      ways.push(`${whole} ${after}`, ...(joins ? [] : [`${spelled} ${each(after)}`]));
    }
  }
  return next() < 0.2 ? value : minus + one(ways, next);
}

/**
 * One of several.
 *
 * @template T
 * @param {T[]} several
 * @param {() => number} next
 */
export const one = (several, next) => several[Math.floor(next() * several.length)];

/** The generator spells no higher number. */
const HIGHEST = 9_999;

const phrases = (text) => text.split(",").map((phrase) => phrase.trim()).filter(Boolean);

/**
 * A reading of a field in one of the ways in which it is said: corner, measure and place in any order, then the value.
 *
 * @param {bay.Field} field
 * @param {string} language
 * @param {(key: string, facts?: bay.Facts) => string} say
 * @param {() => number} next
 * @returns {{ text: string, expected: string }}
 */
export function sayReading(field, language, say, next) {
  const names = [
    ...(field.corner ? [one(phrases(say("spoken-corner", { corner: field.corner })), next)] : []),
    one(phrases(say("spoken-measure", { measure: field.measure })), next),
    ...(field.spot ? [one(phrases(say("spoken-spot", { spot: field.spot })), next)] : []),
  ].sort(() => next() - 0.5);
  const { said, expected } = field.words.length > 0 ? sayWord(field, say, next) : sayValue(field, language, say, next);
  const text = [...names, said].join(next() < 0.3 ? ", " : " ");
  return { text: next() < 0.3 ? `${text.charAt(0).toUpperCase()}${text.slice(1)}.` : text, expected };
}

function sayWord(field, say, next) {
  const word = one(field.words, next);
  const ways = [word.label, ...phrases(say("spoken-word", { word: word.written.replaceAll(/\W/g, "_") }))];
  // What two words of one scale share says neither.
  const others = field.words.filter((each) => each !== word).flatMap((each) => [each.label, ...phrases(say("spoken-word", { word: each.written.replaceAll(/\W/g, "_") }))]);
  return { said: one(ways.filter((way) => !others.includes(way)), next), expected: word.written };
}

function sayValue(field, language, say, next) {
  const own = unitOf(field);
  const units = Object.keys(UNITS).filter((unit) => UNITS[unit].of === UNITS[own].of && say("spoken-unit", { unit }) !== "");
  if (UNITS[own].of === "length" && field.high * UNITS[own].size > 1 && field.low === 0 && next() < 0.15) {
    const parts = 1 + Math.floor(next() * Math.min(31, (field.high * UNITS[own].size) / (25.4 / 32) - 1));
    const below = language === "fr" ? ["trente-deuxièmes", "sur trente-deux"] : ["thirty-seconds", "over thirty-two"];
    const said = next() < 0.4 ? `${parts}/32` : `${spell(parts, language, next)} ${one(below, next)}`;
    return { said, expected: own === "part32" ? String(parts) : `${parts}/32 in` };
  }
  const inUnit = (value, unit) => (value * UNITS[own].size + (UNITS[own].zero ?? 0) - (UNITS[unit].zero ?? 0)) / UNITS[unit].size;
  const unit = next() < 0.4 ? one(units.filter((each) => inUnit(field.low, each) < HIGHEST), next) : undefined;
  const to = (value) => inUnit(value, unit ?? own);
  const [low, high] = [to(field.low), Math.min(to(field.high), HIGHEST)];
  const scale = unit ? scaleOf(unit) : field.points ? "plain" : scaleOf(own);
  const digits = { tenths: 1, psi: Math.floor(next() * 2), volts: Math.floor(next() * 3), whole: 0, plain: Math.floor(next() * 4) }[scale];
  const value = Math.min(Math.max(low + next() * (high - low), Math.ceil(low)), Math.floor(high)).toFixed(digits);
  const text = /^-0(\.0*)?$/.test(value) ? value.slice(1) : value;
  const said = sayNumber(text, scale, language, next);
  return { said: unit ? `${said} ${one(phrases(say("spoken-unit", { unit })), next)}` : said, expected: unit && unit !== own ? `${text} ${UNITS[unit].name}` : text };
}
