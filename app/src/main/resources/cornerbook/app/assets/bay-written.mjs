// What is typed into a field: with which unit it is kept, and whether it can be at all.
const BARE = /^[0-9.,;\s+\u2212-]+$/;
const FIRST_STUD = /^(?:stud|goujon)\s*\d+\s*:/i;
const POINT = /(\d)\.(?=\d)/g;
const FRACTION = /^(?:\d+ )?\d+\s*\/\s*\d+$/;
const NUMBER = /^[+-]?\d*[.,]?\d+$/;
const POINT_READ = /[+\u2212-]?\d+(?:[.,]\d+)?/g;
const UNIT_AFTER = /^\s*(?:[^0-9.,;\s+\u2212-]+)?$/;
const LETTERS = /[a-z°]/i;

/**
 * A bare number in the field's unit; undefined when a unit or points are written, which the server reads.
 *
 * @param {string} text
 */
export const bareNumber = (text) => (NUMBER.test(text) ? Number(text.replace(",", ".")) : undefined);

/**
 * Whether what was typed names no unit; points around a disc may begin at a stud.
 *
 * @param {string} text
 */
export const isBare = (text) => BARE.test(text.replace(FIRST_STUD, ""));

/**
 * Where in a text the points stand that were read around a disc; none where it is one value, or anything else.
 *
 * @param {string} text
 * @returns {{ start: number, end: number }[]}
 */
export function pointsOf(text) {
  const [stud = ""] = FIRST_STUD.exec(text) ?? [];
  const from = stud.length;
  const points = [...text.matchAll(POINT_READ)].flatMap(({ index: start = 0, 0: point = "" }) => (start < from ? [] : { start, end: start + point.length }));
  const { end = 0 } = points.at(-1) ?? {};
  const between = points.map(({ start }, at) => text.slice(points[at - 1]?.end ?? from, start));
  return points.length > 1 && between.every((part, at) => /^[;\s]*$/.test(part) && (at === 0 || part !== "")) && UNIT_AFTER.test(text.slice(end)) ? points : [];
}

/**
 * Whether two texts are the same value: a point and a comma part the same digits.
 *
 * @param {string} one
 * @param {string} other
 */
export const isSame = (one, other) => one.replaceAll(",", ".") === other.replaceAll(",", ".");

/**
 * What was written, with the decimal mark of a language.
 *
 * @param {string} text
 * @param {string} mark
 */
export const withMark = (text, mark) => (mark === "." ? text : text.replace(POINT, `$1${mark}`));

/**
 * Whether what a field shows was typed in another unit than the field's.
 *
 * @param {string} shown
 */
export const hasOtherUnit = (shown) => LETTERS.test(shown);

/**
 * What was typed with the unit that it was meant in, so that it comes back as typed whoever reads it.
 *
 * @param {bay.Field} field
 * @param {string} text
 */
export function withUnit(field, text) {
  const inches = field.suffix.endsWith(" in");
  return inches && FRACTION.test(text) ? `${text} in` : isBare(text) ? text + field.suffix : text;
}

/**
 * @param {bay.Field} field
 * @param {string} written
 */
export const withoutUnit = (field, written) => (field.suffix && written.endsWith(field.suffix) ? written.slice(0, -field.suffix.length) : written);

/**
 * Whether a number is one that a range has; what is no bare number is left to the server.
 *
 * @param {number | undefined} value
 * @param {bay.Range} range
 */
export const isWithin = (value, range) => value === undefined || (value >= range.low && value <= range.high);

/**
 * The word of a scale for people; anything else as it is.
 *
 * @param {bay.Field | undefined} field
 * @param {string} written
 */
export const inWords = (field, written) => field?.words.find((word) => word.written === written)?.label ?? written;

/**
 * Whether what was read says that something was done, or is a value.
 *
 * @param {bay.Field} field
 * @param {string} written
 */
export const saysDone = (field, written) => written !== "" && !field.words.find((word) => word.written === written)?.undone;

/**
 * Whether somebody answered that it is not done.
 *
 * @param {bay.Field} field
 * @param {string} written
 */
export const saysNotDone = (field, written) => field.words.some((word) => word.written === written && word.undone);
