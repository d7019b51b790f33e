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
 * @param {bay.Corner[]} walk
 * @param {bay.Field[]} fields
 */
export function byTool(walk, fields) {
  const measures = fields.map((field) => field.measure);
  /** @param {bay.Field} field */
  const place = (field) => measures.indexOf(field.measure) * walk.length + (field.corner ? walk.indexOf(field.corner) : -1);
  return [...fields].sort((one, other) => place(one) - place(other));
}
