// The order in which a person takes steps and fields.
/** @param {bay.Step} step */
export const fieldsOf = (step) => step.groups.flatMap((group) => group.fields);

/**
 * The steps, with the brakes in the order in which the person walks.
 *
 * @param {bay.Corner[]} walk
 * @param {bay.Step[]} steps
 */
export function inOrderOf(walk, steps) {
  const brakes = walk.flatMap((corner) => steps.filter((step) => step.corner === corner));
  return steps.map((step) => (step.corner && brakes.shift()) || step);
}

/**
 * Fields as one tool after the other goes round the whole car.
 *
 * @template {bay.Field} F
 * @param {bay.Corner[]} walk
 * @param {F[]} fields
 */
export function byTool(walk, fields) {
  const measures = fields.map((field) => field.measure);
  /** @param {F} field */
  const place = (field) => measures.indexOf(field.measure) * walk.length + (field.corner ? walk.indexOf(field.corner) : -1);
  return [...fields].sort((one, other) => place(one) - place(other));
}

/**
 * The place to which the hands go from another: a value goes on to the next one to be typed, and while the sheet is being filled
 * past what has a value already; a choice, and the Tab key, to a place of either kind.
 *
 * @template {{ isShown: boolean, isTyped: boolean, isFilled: boolean }} P
 * @param {P[]} places in the order of the hands
 * @param {P} from
 * @param {boolean} toWords
 * @param {boolean} filling
 */
export const nextPlace = (places, from, toWords, filling) =>
  places.slice(places.indexOf(from) + 1).find((place) => place.isShown && (toWords || place.isTyped) && !(filling && place.isTyped && place.isFilled));

/**
 * The step at whose fields a gauge goes on when this one has nothing left to type: the next corner, as the person walks.
 *
 * @param {bay.Step[]} steps in the order in which the person takes them
 * @param {bay.Step} step
 */
export function nextCorner(steps, step) {
  const next = steps[steps.indexOf(step) + 1];
  return step.corner && next?.corner ? next : undefined;
}
