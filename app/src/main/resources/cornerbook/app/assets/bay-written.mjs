// What is typed into a field: with which unit it is kept, and whether it can be at all.
const BARE = /^[0-9.,;\s+\u2212-]+$/;
const FIRST_STUD = /^(?:stud|goujon)\s*\d+\s*:/i;
const POINT = /(\d)\.(?=\d)/g;
const FRACTION = /^(?:\d+ )?\d+\s*\/\s*\d+$/;
const NUMBER = /^[+-]?\d*[.,]?\d+$/;
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
