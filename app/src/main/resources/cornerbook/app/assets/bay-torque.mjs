// A tick for each fastener in the order of the star; the last one of a wheel writes its torque.
import { h } from "./bay-dom.mjs";
import { fieldsOf, note, walk } from "./bay-visit.mjs";

const RADIUS_PERCENT = 38;

export function torqueStep(view, step) {
  const { visit } = view;
  const fields = fieldsOf(step).filter((field) => visit.applies(field));
  if (fields.length === 0) {
    return [note("asks", "Record the wheels that go on first."), h("a", { className: "button main", href: "#ON" }, "Wheels on")];
  }
  const { torque, thread, count, retorque } = visit.sheet.fasteners;
  return [
    h("p", { className: "large" }, torque, h("small", {}, ` ${count} × ${thread}, again after ${retorque}`)),
    h("div", { className: "car" }, ...walk().map((corner) => wheel(view, corner, fields)), h("div", { className: "body", ariaHidden: "true" }, h("span", {}, "front"))),
    ...step.ticks.map((tick) => view.ticked(tick)),
  ];
}

function wheel(view, corner, fields) {
  const { visit } = view;
  const { order, torque } = visit.sheet.fasteners;
  const key = (number) => `FASTENER.${corner}.${number}`;
  const field = fields.find((each) => each.corner === corner);
  const tick = async (number) => {
    await visit.tick(key(number), !visit.done(key(number)));
    if (field && order.every((each) => visit.done(key(each))) && visit.look(field).written === "") {
      await visit.enter(field, torque.split(" ")[0]);
    }
  };
  const nuts = order.map((number, place) => {
    const angle = (2 * Math.PI * (number - 1)) / order.length;
    const button = h("button", { type: "button", className: "nut", onclick: () => tick(number) }, String(place + 1));
    button.ariaLabel = `${corner}, fastener ${place + 1} of ${order.length}`;
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
  return h("section", { className: `corner ${corner}` }, h("h3", {}, corner), h("div", { className: "nuts" }, ...nuts.map(({ button }) => button)), field ? view.view(field) : null);
}
