// Numbers as they are said and as dictation writes them: in words or digits, digit by digit, with a point, a comma or none.
/** @type {Record<string, number>} */
const MOST_DIGITS_OF_A_RUN = { whole: 4, psi: 4 };
const MOST_AFTER_POINT = 4;

/** How a number of a unit is said where no point is said: with the digits that a tool for it shows after the point. */
/** @type {Record<string, bay.Scale>} */
const SCALES = { mm: "tenths", bar: "tenths", V: "volts", psi: "psi", in: "plain" };

/** @param {string} unit */
export const scaleOf = (unit) => SCALES[unit] ?? "whole";

/**
 * The whole number that words make from a place on, and where they end; undefined where none begins.
 *
 * @param {(number | "and" | undefined)[]} words numbers as they are said one by one, and what joins them
 * @param {number} at
 * @param {Set<number>} toNineteen tens that go on to nineteen, as sixty does in French
 */
export function cardinal(words, at, toNineteen) {
  const some = belowThousand(words, at, toNineteen);
  const thousands = some && some.value >= 1 ? some : words[at] === 1_000 ? { value: 1, end: at } : undefined;
  if (!thousands || words[thousands.end] !== 1_000) {
    return some;
  }
  const rest = belowThousand(words, thousands.end + 1, toNineteen);
  return rest && rest.value >= 1 ? { value: thousands.value * 1_000 + rest.value, end: rest.end } : { value: thousands.value * 1_000, end: thousands.end + 1 };
}

/**
 * @param {(number | "and" | undefined)[]} words
 * @param {number} at
 * @param {Set<number>} toNineteen
 */
function belowThousand(words, at, toNineteen) {
  const some = belowHundred(words, at, toNineteen);
  const hundreds = some && some.value >= 1 && some.value <= 9 ? some : words[at] === 100 ? { value: 1, end: at } : undefined;
  if (!hundreds || words[hundreds.end] !== 100) {
    return some;
  }
  const end = hundreds.end + 1;
  const rest = belowHundred(words, words[end] === "and" ? end + 1 : end, toNineteen);
  return rest && rest.value >= 1 ? { value: hundreds.value * 100 + rest.value, end: rest.end } : { value: hundreds.value * 100, end };
}

/**
 * @param {(number | "and" | undefined)[]} words
 * @param {number} at
 * @param {Set<number>} toNineteen
 */
function belowHundred(words, at, toNineteen) {
  const tens = words[at];
  if (typeof tens !== "number" || tens >= 100) {
    return undefined;
  }
  const joined = words[at + 1] === "and";
  const low = words[at + (joined ? 2 : 1)];
  // French says vingt et un and soixante et onze, and "and" before no other.
  const fits = tens >= 20 && typeof low === "number" && low >= 1 && low <= (toNineteen.has(tens) ? 19 : 9) && (!joined || low % 10 === 1);
  return fits ? { value: tens + low, end: at + (joined ? 3 : 2) } : { value: tens, end: at + 1 };
}

/** @param {bay.Said | undefined} said */
const isDigit = (said) => said?.digits?.length === 1;

/** @param {bay.Said | undefined} said */
const isTwoDigits = (said) => said?.digits?.length === 2;

/**
 * What a few numbers said in a row are as one value; undefined when they are none.
 *
 * @param {bay.Said[]} all
 * @param {bay.Scale} scale
 * @param {boolean} first whether nothing was said before them
 */
function asOne(all, scale, first) {
  const [one, ...rest] = all;
  if (!one || rest.some(({ minus }) => minus)) {
    return undefined;
  }
  const sign = one.minus ? "-" : "";
  if (rest.length === 0 && one.value !== undefined) {
    return sign + one.value;
  }
  const at = all.findIndex(({ point }) => point);
  if (at >= 0) {
    const after = all.slice(at + 1);
    const digits = after.map((said) => said.digits ?? ".").join("");
    // Digits one by one, or a number at the end: "virgule cinquante-cinq", "virgule zéro cinq".
    const ends = after.every((said, index) => isDigit(said) || index === after.length - 1);
    const whole = at === 0 && first ? "0" : at === 1 ? one.digits : undefined;
    return whole !== undefined && ends && /^\d+$/.test(digits) && digits.length <= MOST_AFTER_POINT ? `${sign}${whole}.${digits}` : undefined;
  }
  const digits = all.map((said) => said.digits ?? ".").join("");
  const [next] = rest;
  if (!/^\d+$/.test(digits) || !one.digits || !next) {
    return undefined;
  }
  const isRun = all.every(isDigit) && one.digits !== "0" && all.length <= (MOST_DIGITS_OF_A_RUN[scale] ?? 0);
  const isHundreds = rest.length === 1 && isDigit(one) && one.digits !== "0" && isTwoDigits(next);
  const afterPoint = one.digits.length <= 2 && rest.length === 1 && isDigit(next);
  switch (scale) {
    case "tenths":
      return afterPoint ? `${sign}${one.digits}.${next.digits}` : undefined;
    case "volts":
      return one.digits.length <= 2 && (rest.length === 1 ? isDigit(next) || isTwoDigits(next) : rest.length === 2 && rest.every(isDigit)) ? `${sign}${one.digits}.${digits.slice(one.digits.length)}` : undefined;
    case "psi":
      return isTwoDigits(one) && afterPoint ? `${sign}${one.digits}.${next.digits}` : isRun || isHundreds ? sign + digits : undefined;
    case "whole":
      return isRun || isHundreds ? sign + digits : undefined;
    default:
      return undefined;
  }
}

/**
 * All the ways in which numbers said in a row are values one after the other.
 *
 * @param {bay.Said[]} run
 * @param {bay.Scale} scale
 * @param {number} most values that there can be
 * @returns {string[][]}
 */
export function ways(run, scale, most, first = true) {
  if (run.length === 0) {
    return [[]];
  }
  if (most === 0) {
    return [];
  }
  return run.flatMap((_said, at) => {
    const value = asOne(run.slice(0, at + 1), scale, first);
    return value === undefined ? [] : ways(run.slice(at + 1), scale, most - 1, false).map((rest) => [value, ...rest]);
  });
}

/**
 * Of those, the ones that can have been meant: digits after a point belong to the number before it, so that "seven two seven one"
 * are two values where a tool shows tenths. Where it shows whole numbers there is such a rule only where one place was named.
 *
 * @param {string[][]} all
 * @param {boolean} isRule
 */
export function likeliest(all, isRule) {
  const fewest = Math.min(...all.map((values) => values.length));
  return isRule ? all.filter((values) => values.length === fewest) : all;
}
