// Which wheel goes to which corner: as planned, unless the person says otherwise; what was read off it stops the wrong one.
import { h, note } from "./bay-dom.mjs";
import { walk } from "./bay-person.mjs";
import { scanButton } from "./bay-scan.mjs";
import { shelf } from "./bay-shelf.mjs";
import { cornerName, say, told } from "./bay-words.mjs";

/**
 * One corner with what is chosen and read there.
 *
 * @typedef {object} Place
 * @property {bay.Corner} corner
 * @property {HTMLSelectElement} select
 * @property {HTMLInputElement} tag
 * @property {HTMLElement} element
 * @property {() => Record<string, string>} read date code and sensor
 * @property {() => void} look at what is chosen and read anew
 */

/**
 * @param {bay.View} view
 * @param {bay.Step} step
 */
export function wheelsStep(view, step) {
  const { visit } = view;
  const { sheet } = visit;
  const goingOn = visit.goingOn();
  /** @type {Place[]} */
  const places = walk().map((corner) => place(view, corner, (tag) => places.find(({ select }) => select.value === tag)?.corner));
  // Each asks what is chosen at the others.
  places.forEach(({ look }) => look());
  /** @param {bay.AtCorners} wheelAt */
  const put = (wheelAt) => {
    places.forEach(({ corner, select, look }) => {
      select.value = wheelAt[corner] ?? "";
      look();
    });
    check();
  };
  const mixed = h("div", { className: "mixed", ariaLive: "polite" });
  const check = () => {
    const sets = new Set(places.map(({ select }) => sheet.wheels[select.value]?.set));
    const twice = new Set(places.map(({ select }) => select.value)).size < places.length;
    mixed.replaceChildren(
      ...(sets.size > 1 ? [note("wrong", say("mixed-sets", { n: sets.size }))] : []),
      ...(twice ? [note("wrong", say("wheel-twice"))] : []),
    );
  };
  places.forEach(({ select, tag }) => {
    select.addEventListener("change", () => {
      places.forEach(({ look }) => look());
      check();
    });
    // What stopped the wheel that was read before says nothing of this one.
    tag.addEventListener("change", check);
  });
  const said = h("div", { ariaLive: "polite" });
  view.onUpdate(() => {
    const entry = visit.here("leaving").at(-1);
    said.replaceChildren(
      entry?.refused ? note("wrong", told(entry.refused))
      : entry ? note("here", say("recorded-here"))
      : Object.keys(visit.state.leftOn).length > 0 ? note("book", say("recorded"))
      : stay(visit) ? note("asks", say("none-of-season"), " ", planned(visit).hint)
      : waits(visit, visit.goingOn()?.set) ? note("asks", planned(visit).hint, " ", say("set-waits")) : note("", planned(visit).hint),
    );
  });
  const record = () => {
    const other = places.find(({ select, tag }) => !["", select.value].includes(tag.value.trim()));
    if (other) {
      mixed.replaceChildren(note("wrong", say("other-tag", { read: other.tag.value.trim(), corner: cornerName(other.corner), chosen: other.select.value })));
      return;
    }
    view.readOffWheels.clear();
    visit.record("leaving", {
      wheels: Object.fromEntries(places.map(({ corner, select }) => [corner, select.value])),
      shown: visit.state.leftOn,
      ...Object.assign({}, ...places.map((each) => each.read())),
    });
  };
  if (!visit.isFitted) {
    let shown = JSON.stringify(planned(visit).wheelAt);
    view.onUpdate(() => {
      const { wheelAt } = planned(visit);
      if (shown !== JSON.stringify(wheelAt)) {
        shown = JSON.stringify(wheelAt);
        put(wheelAt);
      }
    });
  }
  const groups = step.groups.map((group) => ({ ...group, fields: group.fields.filter((field) => visit.applies(field)) })).filter(({ fields }) => fields.length > 0);
  const fields = groups.flatMap((group) => (group.folded ? [] : group.fields));
  return [
    ...(visit.isFitted ? [] : outOfStore(view, goingOn)),
    shelf(view),
    h("div", { className: "car" }, ...places.map((each) => each.element), h("div", { className: "body", ariaHidden: "true" }, h("span", {}, say("front")))),
    mixed,
    said,
    h("button", { type: "button", className: "main", onclick: record }, say("these-wheels-on")),
    ...(fields.length > 0 ? [h("h3", {}, say("out-of-store")), view.corners(fields)] : []),
    ...groups.filter(({ folded }) => folded).map((group) => view.group(group)),
  ];
}

/**
 * Where the wheels that go on belong, by all that was read until now.
 *
 * @param {bay.Visit} visit
 */
function planned(visit) {
  const { planned: wheelAt, plannedHint: hint } = visit.sheet;
  return visit.goingOn() ?? { wheelAt, hint };
}

/**
 * Whether the wheels that the car came on are filled in for want of any other, and nobody has said that they stay.
 *
 * @param {bay.Visit} visit
 */
function stay(visit) {
  const { arrived } = visit.sheet;
  const set = visit.goingOn()?.set;
  return Object.values(planned(visit).wheelAt).every((tag) => Object.values(arrived).includes(tag)) && !(set !== undefined && visit.hasTaken(set));
}

/**
 * What was asked for at a set, such as new tyres. A sheet that an older server made has none.
 *
 * @param {bay.Visit} visit
 * @param {string | undefined} set
 */
function matters(visit, set) {
  return (visit.sheet.matters ?? []).filter((matter) => set !== undefined && matter.set === set);
}

/**
 * Whether a set is filled in at which something was asked for, and nobody has said that it goes on.
 *
 * @param {bay.Visit} visit
 * @param {string | undefined} set
 */
function waits(visit, set) {
  return set !== undefined && matters(visit, set).length > 0 && !visit.hasTaken(set);
}

/**
 * The set that goes on, one button with its shelf; its tread, wheel by wheel, before any of them has a corner; then the plan.
 *
 * @param {bay.View} view
 * @param {bay.Fill | undefined} goingOn
 */
function outOfStore(view, goingOn) {
  const { visit } = view;
  const { wheels } = visit.sheet;
  const choices = visit.fills().map(({ set }) => {
    const [tag = "", { setName = "", storePlace = "" } = {}] = Object.entries(wheels).find(([, wheel]) => wheel.set === set) ?? [];
    const stays = Object.values(visit.sheet.arrived).includes(tag);
    const button = h("button", { type: "button", className: "tick", onclick: () => visit.takeSet(set) }, say("set-on-shelf", { set: setName, stays, place: stays ? undefined : storePlace || undefined }));
    // That the wheels stay, or that a set goes on as it is, nobody has said yet.
    button.ariaPressed = String(set === goingOn?.set && !waits(visit, set) && (!stays || visit.hasTaken(set)));
    return button;
  });
  const fields = goingOn ? visit.fieldsOutOfStore(goingOn) : [];
  return [
    ...(choices.length > 1 || matters(visit, goingOn?.set).length > 0 ? [h("h3", {}, say("which-set")), h("div", { className: "ticks" }, ...choices)] : []),
    ...matters(visit, goingOn?.set).map(({ words, day }) => note("asks", say("of-day", { day, words }))),
    ...(fields.length > 0 ? [h("h3", {}, say("out-of-store")), view.wheelByWheel(fields, (wheel) => {
      const { wheelAt = /** @type {bay.AtCorners} */ ({}) } = visit.goingOn() ?? {};
      const corner = walk().find((each) => wheelAt[each] === wheel);
      return corner ? say("goes-to", { corner: cornerName(corner) }) : "";
    })] : []),
    h("h3", {}, say("where-each-goes")),
    h("p", {}, h("a", { className: "button quiet", href: `/visits/${encodeURIComponent(visit.id)}/tags.pdf` }, say("print-tags"))),
  ];
}

/**
 * @param {bay.View} view
 * @param {bay.Corner} corner
 * @param {(tag: string) => bay.Corner | undefined} chosenAt
 * @returns {Place}
 */
function place({ visit, readOffWheels }, corner, chosenAt) {
  const { sheet } = visit;
  const refused = visit.here("leaving").findLast((entry) => Boolean(entry.refused));
  const standing = (refused?.wheels ?? {})[corner] ?? visit.leaving(corner) ?? planned(visit).wheelAt[corner] ?? "";
  const select = h("select", { id: `wheel.${corner}` }, ...Object.entries(sheet.wheels).map(([tag, wheel]) => h("option", { value: tag, selected: tag === standing }, `${tag}, ${wheel.season}`)));
  const ran = h("small");
  const store = h("p", { className: "ghost" });
  const said = h("div", { ariaLive: "polite" });
  /**
   * @param {string} name
   * @param {string} label
   * @param {string} takes what of digits alone it can be; a reading of a gauge is none of it
   */
  const typed = (name, label, takes) => {
    const id = `${name}.${corner}`;
    /** @type {HTMLInputElement} */
    const input = h("input", { "data-takes": takes, id, type: "text", maxLength: 40, autocomplete: "off", autocapitalize: "characters", spellcheck: false, placeholder: "\u2013", "aria-label": say("label-at", { label, corner: cornerName(corner) }), value: readOffWheels.get(id) ?? "" });
    // The key that ends the value of a gauge takes it out again.
    for (const event of ["input", "keyup"]) {
      input.addEventListener(event, () => readOffWheels.set(id, input.value));
    }
    return input;
  };
  const tag = typed("tag", say("tag"), "\\d{4,}");
  const code = typed("dateCode", say("date-code"), "\\d{4}");
  const sensor = typed("sensor", say("sensor"), "\\d{6,}");
  // A scanner types the tag and Enter.
  const look = () => {
    const { came, storePlace } = sheet.wheels[select.value] ?? {};
    ran.textContent = came ? say("ran-at", { corner: cornerName(came) }) : "";
    store.textContent = storePlace ? say("store", { place: storePlace }) : "";
    const read = tag.value.trim();
    const known = sheet.wheels[read];
    const belongs = chosenAt(read);
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
    readOffWheels.set(tag.id, text);
    tag.dispatchEvent(new Event("change"));
  });
  const fields = [{ label: say("tag-read"), input: tag }, { label: say("date-code"), input: code }, { label: say("sensor"), input: sensor }];
  for (const [index, { input }] of fields.entries()) {
    input.addEventListener("keydown", (event) => {
      if (event.key === "Enter") {
        event.preventDefault();
        const next = fields[index + 1]?.input ?? tag;
        next.focus();
        next.select();
      }
    });
  }
  const element = h(
    "section",
    { className: `corner ${corner}` },
    h("h3", {}, cornerName(corner), ran),
    h("label", { htmlFor: select.id }, say("wheel")),
    select,
    store,
    h("div", { className: "spots spots-3" }, ...fields.map(({ label, input }) => h("div", { className: "field" }, h("label", { htmlFor: input.id }, label), input))),
    scan,
    said,
  );
  const read = () => ({
    ...(code.value.trim() ? { [`dateCode.${corner}`]: code.value.trim() } : {}),
    ...(sensor.value.trim() ? { [`sensor.${corner}`]: sensor.value.trim() } : {}),
  });
  return { corner, select, tag, element, read, look };
}
