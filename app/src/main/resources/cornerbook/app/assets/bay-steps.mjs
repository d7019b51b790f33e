// The order in which a person takes steps and fields.
export const fieldsOf = (step) => step.groups.flatMap((group) => group.fields);

/** The steps, with the brakes in the order in which the person walks. */
export function inOrderOf(walk, steps) {
  const brakes = steps.filter((step) => step.corner).sort((one, other) => walk.indexOf(one.corner) - walk.indexOf(other.corner));
  return steps.map((step) => (step.corner ? brakes.shift() : step));
}

/** Fields as one tool after the other goes round the whole car. */
export function byTool(walk, fields) {
  const measures = fields.map((field) => field.measure);
  const place = (field) => measures.indexOf(field.measure) * walk.length + walk.indexOf(field.corner);
  return [...fields].sort((one, other) => place(one) - place(other));
}
