// Which wheel goes to which corner: as planned, unless the person says otherwise; what was read off it stops the wrong one.
import { h } from "./bay-dom.mjs";
import { walk } from "./bay-person.mjs";
import { scanButton } from "./bay-scan.mjs";
import { fieldsOf, note } from "./bay-visit.mjs";

export function wheelsStep(view, step) {
  const { visit } = view;
  const { sheet } = visit;
  const places = walk().map((corner) => place(visit, corner));
  const mixed = h("div", { ariaLive: "polite" });
  const check = () => {
    const seasons = new Set(places.map(({ select }) => sheet.wheels[select.value]?.season));
    const twice = new Set(places.map(({ select }) => select.value)).size < places.length;
    mixed.replaceChildren(
      ...(seasons.size > 1 ? [note("wrong", `Stop: these are wheels of ${seasons.size} sets.`)] : []),
      ...(twice ? [note("wrong", "One wheel stands at two corners.")] : []),
    );
  };
  places.forEach(({ select }) => select.addEventListener("change", check));
  const said = h("div", { ariaLive: "polite" });
  view.onUpdate(() => {
    const entry = visit.pending.findLast((each) => each.kind === "leaving");
    said.replaceChildren(
      entry?.refused ? note("wrong", entry.refused)
      : entry ? note("here", "Recorded, only on this tablet.")
      : Object.keys(visit.state.leftOn).length > 0 ? note("book", "Recorded, in the book.")
      : note("", sheet.plannedHint),
    );
  });
  const record = () => {
    const other = places.find(({ select, tag }) => !["", select.value].includes(tag.value.trim()));
    if (other) {
      mixed.replaceChildren(note("wrong", `Stop: ${other.tag.value.trim()} was read at ${other.corner}, ${other.select.value} is chosen there.`));
      return;
    }
    visit.record("leaving", {
      wheels: Object.fromEntries(places.map(({ corner, select }) => [corner, select.value])),
      shown: visit.state.leftOn,
      ...Object.assign({}, ...places.map((each) => each.read())),
    });
  };
  const fields = fieldsOf(step).filter((field) => visit.applies(field));
  return [
    h("div", { className: "car" }, ...places.map((each) => each.element), h("div", { className: "body", ariaHidden: "true" }, h("span", {}, "front"))),
    mixed,
    said,
    h("button", { type: "button", className: "main", onclick: record }, "These wheels are on"),
    ...(fields.length > 0 ? [h("h3", {}, "Tread and pressure as they came out of the store"), view.corners(fields)] : []),
  ];
}

function place(visit, corner) {
  const { sheet } = visit;
  const standing = visit.leaving(corner) ?? sheet.planned[corner] ?? "";
  const select = h("select", { id: `wheel.${corner}` }, ...Object.entries(sheet.wheels).map(([tag, wheel]) => h("option", { value: tag, selected: tag === standing }, `${tag}, ${wheel.season}`)));
  const wheel = sheet.wheels[standing];
  const said = h("div", { ariaLive: "polite" });
  const typed = (name, label) => h("input", { id: `${name}.${corner}`, type: "text", maxLength: 40, autocomplete: "off", autocapitalize: "characters", spellcheck: false, placeholder: "\u2013", "aria-label": `${label} at ${corner}` });
  const tag = typed("tag", "Tag");
  const code = typed("dateCode", "Date code");
  const sensor = typed("sensor", "Sensor");
  // A scanner types the tag and Enter.
  const look = () => {
    const read = tag.value.trim();
    const known = sheet.wheels[read];
    const belongs = Object.entries(sheet.planned).find(([, planned]) => planned === read)?.[0];
    said.replaceChildren(
      read === "" ? "" :
      !known ? note("wrong", `${read} is no wheel of this car.`)
      : belongs !== corner ? note("wrong", belongs ? `${read} belongs to ${belongs}.` : `${read} is of the ${known.season} set, it stays off.`)
      : note("book", "The right wheel."),
    );
  };
  tag.addEventListener("change", look);
  const scan = scanButton("Scan the tag", (text) => {
    tag.value = text;
    look();
  });
  const fields = [["Tag read", tag], ["Date code", code], ["Sensor", sensor]];
  for (const [index, [, input]] of fields.entries()) {
    input.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        event.preventDefault();
        (fields[index + 1]?.[1] ?? tag).focus();
      }
    });
  }
  const element = h(
    "section",
    { className: `corner ${corner}` },
    h("h3", {}, corner, h("small", {}, wheel?.came ? `ran at ${wheel.came}` : "")),
    h("label", { htmlFor: select.id }, "Wheel"),
    select,
    h("p", { className: "ghost" }, wheel?.storePlace ? `Store ${wheel.storePlace}` : ""),
    h("div", { className: "spots spots-3" }, ...fields.map(([label, input]) => h("div", { className: "field" }, h("label", { htmlFor: input.id }, label), input))),
    scan,
    said,
  );
  const read = () => ({
    ...(code.value.trim() ? { [`dateCode.${corner}`]: code.value.trim() } : {}),
    ...(sensor.value.trim() ? { [`sensor.${corner}`]: sensor.value.trim() } : {}),
  });
  return { corner, select, tag, element, read };
}
