// What was likely meant by an odometer that the car can hardly have: the same as LikelyOdometer of the server says, for a tablet
// without a link. Both are held to one table, likely-odometers.csv.
const KM_PER_MILE = 1.609344;
const MOST = 2;

/**
 * At most two, the likeliest first.
 *
 * @param {number} typed
 * @param {bay.Range} range in the same unit
 * @returns {bay.Likely[]}
 */
export function likelyOdometers(typed, { low, high }) {
  const digits = String(Math.round(typed));
  const places = [...digits].map((_digit, at) => at);
  const fewer = places.map((at) => digits.slice(0, at) + digits.slice(at + 1));
  const swapped = places.slice(1).map((at) => digits.slice(0, at - 1) + digits.charAt(at) + digits.charAt(at - 1) + digits.slice(at + 1));
  const away = (/** @type {bay.Likely} */ { value }) => Math.abs(value - (low + high) / 2);
  const lastLeftOut = (/** @type {bay.Likely} */ { value }) => value === Math.floor(Math.round(typed) / 10);
  /** @type {[string, number[]][]} */
  const all = [
    ["DIGIT_TOO_MANY", digits.length > 1 ? fewer.map(Number) : []],
    ["DIGITS_SWAPPED", swapped.map(Number)],
    ["MILES_AND_KILOMETRES", [Math.round(typed * KM_PER_MILE), Math.round(typed / KM_PER_MILE)]],
  ];
  /** @type {bay.Likely[]} */
  const likely = [];
  for (const [slip, values] of all) {
    const here = values.map((value) => ({ slip, value })).filter(({ value }) => value >= low && value <= high && value !== Math.round(typed));
    for (const each of here.sort((one, other) => Number(lastLeftOut(other)) - Number(lastLeftOut(one)) || away(one) - away(other))) {
      if (!likely.some(({ value }) => value === each.value)) {
        likely.push(each);
      }
    }
  }
  return likely.slice(0, MOST);
}
