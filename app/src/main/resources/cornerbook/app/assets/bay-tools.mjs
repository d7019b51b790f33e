// The tools of the shop that a step is worked with: one tap names one, another tap takes it back.
import { h } from "./bay-dom.mjs";

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function tools(view, step) {
  return view.visit.sheet.tools.filter((tool) => tool.steps.includes(step.id)).map((tool) => choice(view, tool));
}

/**
 * @param {bay.View} view
 * @param {bay.Tool} tool
 */
function choice(view, { kind, title, options }) {
  const { visit } = view;
  const buttons = options.map(({ id, label }) => {
    const button = h("button", { type: "button", className: "tick", onclick: () => visit.useTool(kind, visit.tool(kind) === id ? "" : id) }, label);
    view.onUpdate(() => {
      button.ariaPressed = String(visit.tool(kind) === id);
    });
    return button;
  });
  return h("div", { className: "ticks", role: "group", ariaLabel: title }, ...buttons);
}
