// What a person writes down in a step; in the first one also what the customer complains of and what was damaged before work began.
import { h } from "./bay-dom.mjs";
import { say } from "./bay-words.mjs";

const BEFORE_WORK = ["COMPLAINT", "ARRIVAL_DAMAGE"];
const LONGEST = 1000;

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function remarks(view, step) {
  const topics = [...(step.id === "RECEIVE" ? BEFORE_WORK : []), step.id.replace(".", "_")];
  return h("section", { className: "remarks" }, ...topics.map((topic) => remark(view, topic)));
}

/**
 * @param {bay.View} view
 * @param {string} topic
 */
function remark(view, topic) {
  const { visit } = view;
  const id = `remark.${topic}`;
  const place = h("textarea", { id, rows: 2, maxLength: LONGEST });
  let shown = "";
  const keep = () => {
    const words = place.value.trim();
    if (words !== "" && words !== visit.remark(topic)) {
      visit.record("remark", { topic, words });
    }
  };
  place.addEventListener("change", keep);
  view.onUpdate(() => {
    // What somebody is typing is left alone.
    if (document.activeElement !== place && place.value === shown) {
      place.value = visit.remark(topic);
    }
    shown = visit.remark(topic);
  });
  return h("div", { className: "field" }, h("label", { htmlFor: id }, say("remark", { topic })), place);
}
