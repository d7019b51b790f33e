// Where the car is: desk and bay say it to each other.
import { h } from "./bay-dom.mjs";
import { say } from "./bay-words.mjs";

/** What is said by hand; a car is gone by its hand-over. */
const BY_HAND = ["EXPECTED", "WAITING", "ON_THE_HOIST", "DONE"];

/** @param {string} state */
export const whereaboutsWords = (state) => say("whereabouts", { state });

/** @param {bay.View} view */
export function whereabouts(view) {
  const { visit } = view;
  const buttons = BY_HAND.map((state) => h("button", { type: "button", value: state, onclick: () => visit.record("state", { state }) }, whereaboutsWords(state)));
  const gone = h("strong", {}, whereaboutsWords("GONE"));
  view.onUpdate(() => {
    const now = visit.whereabouts();
    buttons.forEach((button) => (button.ariaPressed = String(button.value === now)));
    gone.hidden = now !== "GONE";
  });
  return h("fieldset", { className: "whereabouts" }, h("legend", {}, say("whereabouts-title")), ...buttons, gone);
}
