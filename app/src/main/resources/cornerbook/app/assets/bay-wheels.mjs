// Which wheel goes to which corner: as planned, unless the person says otherwise; what was read off it stops the wrong one.
import { h, note } from "./bay-dom.mjs";
import { walk } from "./bay-person.mjs";
import { scanButton } from "./bay-scan.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { cornerName, say, told } from "./bay-words.mjs";

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function wheelsStep(view, step) {
  const { visit } = view;
  const { sheet } = visit;
  const places = walk().map((corner) => place(visit, corner));
  const mixed = h("div", { ariaLive: "polite" });
  const check = () => {
    const sets = new Set(places.map(({ select }) => sheet.wheels[select.value]?.set));
    const twice = new Set(places.map(({ select }) => select.value)).size < places.length;
    mixed.replaceChildren(
      ...(sets.size > 1 ? [note("wrong", say("mixed-sets", { n: sets.size }))] : []),
      ...(twice ? [note("wrong", say("wheel-twice"))] : []),
    );
  };
  places.forEach(({ select }) => select.addEventListener("change", check));
  const said = h("div", { ariaLive: "polite" });
  view.onUpdate(() => {
    const entry = visit.here("leaving").at(-1);
    said.replaceChildren(
      entry?.refused ? note("wrong", told(entry.refused))
      : entry ? note("here", say("recorded-here"))
      : Object.keys(visit.state.leftOn).length > 0 ? note("book", say("recorded"))
      : note("", sheet.plannedHint),
    );
  });
  const record = () => {
    const other = places.find(({ select, tag }) => !["", select.value].includes(tag.value.trim()));
    if (other) {
      mixed.replaceChildren(note("wrong", say("other-tag", { read: other.tag.value.trim(), corner: cornerName(other.corner), chosen: other.select.value })));
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
    h("div", { className: "car" }, ...places.map((each) => each.element), h("div", { className: "body", ariaHidden: "true" }, h("span", {}, say("front")))),
    mixed,
    said,
    h("button", { type: "button", className: "main", onclick: record }, say("these-wheels-on")),
    ...(fields.length > 0 ? [h("h3", {}, say("out-of-store")), view.corners(fields)] : []),
  ];
}

/**
 * @param {bay.Visit} visit
 * @param {bay.Corner} corner
 */
function place(visit, corner) {
  const { sheet } = visit;
  const standing = visit.leaving(corner) ?? sheet.planned[corner] ?? "";
  const select = h("select", { id: `wheel.${corner}` }, ...Object.entries(sheet.wheels).map(([tag, wheel]) => h("option", { value: tag, selected: tag === standing }, `${tag}, ${wheel.season}`)));
  const wheel = sheet.wheels[standing];
  const said = h("div", { ariaLive: "polite" });
  /**
   * @param {string} name
   * @param {string} label
   */
  const typed = (name, label) => h("input", { id: `${name}.${corner}`, type: "text", maxLength: 40, autocomplete: "off", autocapitalize: "characters", spellcheck: false, placeholder: "\u2013", "aria-label": say("label-at", { label, corner: cornerName(corner) }) });
  const tag = typed("tag", say("tag"));
  const code = typed("dateCode", say("date-code"));
  const sensor = typed("sensor", say("sensor"));
  // A scanner types the tag and Enter.
  const look = () => {
    const read = tag.value.trim();
    const known = sheet.wheels[read];
    const belongs = walk().find((each) => sheet.planned[each] === read);
    said.replaceChildren(
      read === "" ? "" :
      !known ? note("wrong", say("no-wheel", { read }))
      : belongs !== corner ? note("wrong", belongs ? say("belongs-to", { read, corner: cornerName(belongs) }) : say("stays-off", { read, set: known.setName }))
      : note("book", say("right-wheel")),
    );
  };
  tag.addEventListener("change", look);
  const scan = scanButton(say("scan-tag"), (text) => {
    tag.value = text;
    look();
  });
  const fields = [{ label: say("tag-read"), input: tag }, { label: say("date-code"), input: code }, { label: say("sensor"), input: sensor }];
  for (const [index, { input }] of fields.entries()) {
    input.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        event.preventDefault();
        (fields[index + 1]?.input ?? tag).focus();
      }
    });
  }
  const element = h(
    "section",
    { className: `corner ${corner}` },
    h("h3", {}, cornerName(corner), h("small", {}, wheel?.came ? say("ran-at", { corner: cornerName(wheel.came) }) : "")),
    h("label", { htmlFor: select.id }, say("wheel")),
    select,
    h("p", { className: "ghost" }, wheel?.storePlace ? say("store", { place: wheel.storePlace }) : ""),
    h("div", { className: "spots spots-3" }, ...fields.map(({ label, input }) => h("div", { className: "field" }, h("label", { htmlFor: input.id }, label), input))),
    scan,
    said,
  );
  const read = () => ({
    ...(code.value.trim() ? { [`dateCode.${corner}`]: code.value.trim() } : {}),
    ...(sensor.value.trim() ? { [`sensor.${corner}`]: sensor.value.trim() } : {}),
  });
  return { corner, select, tag, element, read };
}
