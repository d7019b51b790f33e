// A tick for each fastener in the order of the star says that it was tightened; a torque is what somebody reads and types.
import { byId, h, note } from "./bay-dom.mjs";
import { person, walk } from "./bay-person.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { cornerName, say } from "./bay-words.mjs";

const RADIUS_PERCENT = 38;

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function torqueStep(view, step) {
  const { visit } = view;
  const fields = fieldsOf(step).filter((field) => visit.applies(field));
  if (fields.length === 0) {
    return [note("asks", say("record-wheels-first")), h("a", { className: "button main", href: "#ON" }, say("wheels-on"))];
  }
  return [
    asked(visit.sheet.fasteners),
    h("div", { className: "car" }, ...walk().map((corner) => wheel(view, corner, fields)), h("div", { className: "body", ariaHidden: "true" }, h("span", {}, say("front")))),
    ...step.ticks.map((tick) => (visit.asksSecondCheck ? secondCheck(view, tick, fields) : view.ticked(tick))),
  ];
}

/**
 * The torque that the car's maker asks for; a step says at its top where it is given while nobody has looked it up.
 *
 * @param {bay.Fasteners | undefined} fasteners
 */
function asked(fasteners) {
  if (!fasteners) {
    return "";
  }
  const { torque, unit, thread, count, retorque } = fasteners;
  return h("p", { className: "large" }, `${torque} ${unit}`, h("small", {}, ` ${say("fasteners", { count, thread, retorque })}`));
}

/**
 * The shop asks for it, so only another person than those who tightened can tick it, and only when all is tight.
 *
 * @param {bay.View} view
 * @param {bay.Tick} tick
 * @param {bay.Field[]} fields
 */
function secondCheck(view, tick, fields) {
  const { visit } = view;
  // A check before the last tightening is none, though its tick stands.
  const button = view.ticked(tick, () => visit.secondChecked());
  const said = h("div", { ariaLive: "polite" });
  view.onUpdate(() => {
    const tight = fields.every((field) => visit.torqued(field.corner));
    const own = visit.tightenedBy().has(person());
    const checked = visit.secondChecked();
    button.disabled = !checked && (!tight || own);
    said.replaceChildren(
      checked || (tight && !own) ? "" : !tight ? note("asks", say("check-when-tight"))
      : note("asks", say("own-check", { person: person() }), " ", h("button", { type: "button", className: "quiet", onclick: () => byId("who").click() }, say("take-over"))),
    );
  });
  return h("div", {}, said, button);
}

/**
 * @param {bay.View} view
 * @param {bay.Corner} corner
 * @param {bay.Field[]} fields
 */
function wheel(view, corner, fields) {
  const { visit } = view;
  const order = visit.sheet.fasteners?.order ?? [];
  /** @param {number} number */
  const key = (number) => `FASTENER.${corner}.${number}`;
  const field = fields.find((each) => each.corner === corner);
  const nuts = order.map((number, place) => {
    const angle = (2 * Math.PI * (number - 1)) / order.length;
    const button = h("button", { type: "button", className: "nut", onclick: () => visit.tick(key(number), !visit.done(key(number))) }, String(place + 1));
    button.ariaLabel = say("fastener", { corner: cornerName(corner), place: place + 1, count: order.length });
    button.style.left = `${50 + RADIUS_PERCENT * Math.sin(angle)}%`;
    button.style.top = `${50 - RADIUS_PERCENT * Math.cos(angle)}%`;
    return { number, button };
  });
  view.onUpdate(() => {
    const next = order.find((number) => !visit.done(key(number)));
    for (const { number, button } of nuts) {
      button.ariaPressed = String(visit.done(key(number)));
      button.classList.toggle("due", number === next);
    }
  });
  const said = h("p", { className: "ghost", ariaLive: "polite" });
  view.onUpdate(() => {
    said.textContent = field && visit.tight(corner) && visit.read(field) === "" ? say("tightened-by-ticks") : "\u00a0";
  });
  return h("section", { className: `corner ${corner}` }, h("h3", {}, cornerName(corner)), h("div", { className: "nuts" }, ...nuts.map(({ button }) => button)), said, field ? view.view(field) : null);
}
