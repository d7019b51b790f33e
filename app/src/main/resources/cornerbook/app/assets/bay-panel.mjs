// The settings of a person, one tap away: who works here, units, light or dark, the order of the corners.
import { h, note } from "./bay-dom.mjs";
import { choose, chosen, cornersOf, isKnown, isPaired, others, people, person, takeOver, workAs } from "./bay-person.mjs";
import { cornerName, LANGUAGES, listed, say, told } from "./bay-words.mjs";

const UNITS = ["metric", "us"];
const LOOKS = ["light", "dark", "device"];
const WALKS = [
  "LF-RF-LR-RR", "LF-LR-RF-RR",
  "LF-RF-RR-LR", "LF-LR-RR-RF", "RF-LF-LR-RR", "RF-RR-LR-LF", "LR-LF-RF-RR", "LR-RR-RF-LF", "RR-RF-LF-LR", "RR-LR-LF-RF",
];

/**
 * Opens the panel.
 *
 * @param {string[]} names offered where nobody needs a PIN
 * @param {string[]} onCar
 * @param {() => void} closed called when the hands go on
 */
export function openPanel(names, onCar, closed) {
  /** @type {HTMLDialogElement} */
  const dialog = h("dialog", { className: "panel" });
  dialog.setAttribute("aria-labelledby", "panel-title");
  const show = () => {
    const focused = document.activeElement?.id ?? "";
    dialog.replaceChildren(
      h("div", { className: "head" }, h("h2", { id: "panel-title" }, say("settings-of", { person: person() || undefined })), h("button", { type: "button", id: "panel-close", className: "quiet", onclick: () => dialog.close() }, say("close"))),
      ...(onCar.length > 0 ? [h("p", {}, say("on-car", { people: listed(onCar) }))] : []),
      options("language", say("language"), LANGUAGES.map((language) => [language, say("language-name", { language })])),
      options("units", say("units"), UNITS.map((units) => [units, say("units-name", { units })])),
      options("walk", say("walk"), WALKS.map((way) => [way, cornersOf(way).map(cornerName).join(" ")])),
      options("look", say("look"), LOOKS.map((look) => [look, say("look-name", { look })])),
      ...whoWorks(names),
    );
    document.getElementById(focused)?.focus();
  };
  people.addEventListener("change", show);
  dialog.addEventListener("close", () => {
    people.removeEventListener("change", show);
    dialog.remove();
    closed();
  });
  document.body.append(dialog);
  show();
  dialog.showModal();
}

/**
 * @param {keyof bay.Chosen} name
 * @param {string} title
 * @param {string[][]} values each with its words
 */
function options(name, title, values) {
  const group = h("fieldset", { className: `options ${name}` }, h("legend", {}, title));
  for (const [value = "", label] of values) {
    const button = h("button", { type: "button", id: `${name}.${value}`, onclick: () => choose({ [name]: value }).catch(() => {}) }, label);
    button.ariaPressed = String(chosen()[name] === value);
    group.append(button);
  }
  return group;
}

/**
 * Without a PIN where the tablet is not paired.
 *
 * @param {string[]} names
 */
function whoWorks(names) {
  const said = h("div", { ariaLive: "polite" });
  const pin = h("input", { "data-takes": "\\d{4,}", id: "pin", type: "password", inputMode: "numeric", maxLength: 12, autocomplete: "off" });
  const unknown = person() && !isKnown(person());
  const offered = isPaired() ? (unknown ? [person(), ...others()] : others()) : names.filter((name) => name !== person());
  const name = isPaired()
    ? h("select", { id: "taker" }, ...offered.map((each) => h("option", { value: each }, each)))
    : h("input", { id: "taker", type: "text", maxLength: 60, autocomplete: "off" });
  const take = async () => {
    if (!name.value.trim()) {
      return;
    }
    if (!isPaired()) {
      workAs(name.value.trim());
      return;
    }
    const problem = await takeOver(name.value, pin.value);
    document.querySelector(".panel .said")?.replaceChildren(problem ? note("wrong", told(problem)) : note("book", say("works-here", { person: person() })));
  };
  pin.addEventListener("keydown", (event) => event.key === "Enter" && take());
  said.className = "said";
  if (isPaired() && offered.length === 0) {
    return [];
  }
  return [
    h("h3", {}, unknown ? say("type-pin", { person: person() }) : say("another-takes-over")),
    ...(isPaired() ? [] : [h("div", { className: "row" }, ...offered.map((each) => h("button", { type: "button", className: "quiet", onclick: () => workAs(each) }, each)))]),
    h("div", { className: "fields" },
      h("div", { className: "field" }, h("label", { htmlFor: "taker" }, say("name")), name),
      isPaired() ? h("div", { className: "field" }, h("label", { htmlFor: "pin" }, say("pin")), pin) : null),
    h("button", { type: "button", onclick: take }, say("take-over")),
    said,
  ];
}
