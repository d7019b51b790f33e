// Shows the steps of a visit, one at a time.
import { departStep } from "./bay-depart.mjs";
import { Dictation } from "./bay-dictation.mjs";
import { byId, h, note } from "./bay-dom.mjs";
import { elsewhere } from "./bay-elsewhere.mjs";
import { FieldView } from "./bay-field.mjs";
import { catchStrayValues, follows, TypingPace } from "./bay-gauge.mjs";
import { leaving } from "./bay-leave.mjs";
import { odometer } from "./bay-odometer.mjs";
import { chosen, people, walk } from "./bay-person.mjs";
import { photos } from "./bay-photo.mjs";
import { remarks } from "./bay-remark.mjs";
import { byTool, fieldsOf, inOrderOf, nextCorner, nextPlace } from "./bay-steps.mjs";
import { tools } from "./bay-tools.mjs";
import { torqueStep } from "./bay-torque.mjs";
import { Tray } from "./bay-tray.mjs";
import { wheelsStep } from "./bay-wheels.mjs";
import { whereabouts } from "./bay-whereabouts.mjs";
import { cornerName, say } from "./bay-words.mjs";

export class SheetView {
  /** @type {FieldView[]} */
  #views = [];
  /** @type {(() => void)[]} */
  #updates = [];
  #drawnFor = "";
  #title = h("h2");
  #pace = new TypingPace();
  #dictation = new Dictation(this);

  /** Whether the last word was a key's: who goes by keys is shown what has the focus, other hands the step from its top. */
  #byKeys = false;

  /**
   * What was read off wheels that are not recorded yet, by the place where it was typed: the page may be drawn anew before.
   *
   * @type {Map<string, string>}
   */
  readOffWheels = new Map();

  /** @param {bay.Visit} visit */
  constructor(visit) {
    this.visit = visit;
    this.tray = new Tray(visit);
    visit.addEventListener("change", () => this.update());
    addEventListener("hashchange", () => this.show());
    byId("steps").addEventListener("focusin", showFocused);
    addEventListener("keydown", () => (this.#byKeys = true), true);
    addEventListener("pointerdown", () => (this.#byKeys = false), true);
    people.addEventListener("change", () => this.update());
    catchStrayValues(
      this.#pace,
      (at) => (document.querySelector("dialog[open]") ? undefined : this.#empty().find((input) => follows(input, at)) ?? this.#atNextCorner(at)),
      () => this.tray,
      { isTag: (typed) => typed in this.visit.sheet.wheels, scanned: (tag) => this.openSet(tag) },
    );
  }

  /** The steps, with the brakes in the order in which the person walks. */
  get steps() {
    return inOrderOf(walk(), this.visit.sheet.steps);
  }

  get step() {
    const [id = ""] = decodeURIComponent(location.hash.slice(1)).split("/");
    const { steps } = this;
    const step = steps.find((each) => each.id === id) ?? steps[0];
    if (!step) {
      throw new Error(`The visit ${this.visit.id} has no steps`);
    }
    return step;
  }

  /** Where values are typed, in the order of the hands. */
  #inputs() {
    return this.#views.flatMap((view) => view.input ?? []);
  }

  #empty() {
    return this.#inputs().filter((input) => input.value === "" && input.checkVisibility());
  }

  /**
   * A gauge that typed the last value of a corner goes on at the next one, with the value that is typed where that one's step is
   * opened.
   *
   * @param {Element} at
   */
  #atNextCorner(at) {
    const next = at.matches("#next .main") && this.#empty().length === 0 ? nextCorner(this.steps, this.step) : undefined;
    if (!next || !this.visit.progress(next).missing.some((each) => "field" in each && each.field.words.length === 0)) {
      return undefined;
    }
    history.pushState(null, "", `#${next.id}`);
    this.show();
    return this.#empty()[0];
  }

  show() {
    const { step } = this;
    this.#drawnFor = this.#drawing();
    this.#views = [];
    this.#updates = [];
    const parts = {
      FIELDS: () => step.groups.map((group) => this.group(group)), CAR: () => this.#car(step), DEPART: () => departStep(this),
      WHEELS: () => wheelsStep(this, step), TORQUE: () => torqueStep(this, step),
    }[step.kind]();
    const ticks = step.kind === "TORQUE" ? [] : step.ticks.map((tick) => this.ticked(tick));
    const title = h("h2", { tabIndex: -1 }, step.title);
    this.#title = title;
    byId("main").replaceChildren(title, ["RECEIVE", "DEPART"].includes(step.id) ? whereabouts(this) : "", stops(this, step), ...step.cautions.map(minded), ...this.#mindedBefore(), ...tools(this, step), ...(step.id === "RECEIVE" ? openMatters(this.visit.sheet) : []), step.id === "RECEIVE" ? odometer(this) ?? "" : "", h("div", { className: "ticks" }, ...ticks.slice(0, -1)), ...parts, ...ticks.slice(-1), ...sources(step), ...(step.corner || step.id === "RECEIVE" ? [photos(this, step.corner)] : []), leaving(this, step), remarks(this, step), elsewhere(this, step));
    const at = this.steps.indexOf(step);
    /**
     * @param {bay.Step | undefined} to
     * @param {string} words
     * @param {string} kind
     */
    const go = (to, words, kind) => (to ? h("a", { className: `button ${kind}`, href: `#${to.id}` }, words) : h("span"));
    const next = this.steps[at + 1];
    byId("next").replaceChildren(this.tray.element, go(this.steps[at - 1], say("back"), "quiet"), this.#dictation.button, go(next, next ? say("next", { step: next.title }) : "", "main"));
    this.#walkByTool(step);
    this.update();
    scrollTo(0, 0);
    this.focus();
  }

  /**
   * A wheel was scanned, at the rack or on the car: its set is taken, and the hands are at its readings.
   *
   * @param {string} tag
   */
  openSet(tag) {
    const set = this.visit.sheet.wheels[tag]?.set;
    if (set === undefined) {
      return;
    }
    const came = Object.values(this.visit.sheet.arrived).includes(tag);
    history.pushState(null, "", came ? "#OFF" : "#ON");
    if (!came && !this.visit.isFitted) {
      this.visit.takeSet(set);
    }
    this.show();
    const here = this.#views.filter(({ field, input }) => input && this.visit.wheelOf(field) === tag);
    const first = here.find((view) => !view.isFilled) ?? here[0];
    first?.input?.focus();
    first?.element.scrollIntoView({ block: "center" });
  }

  /** The hands go on where something is missing. */
  focus() {
    (this.#empty()[0] ?? this.#title).focus({ preventScroll: !this.#byKeys });
  }

  update() {
    if (this.#drawnFor !== this.#drawing()) {
      const before = document.activeElement;
      const at = scrollY;
      this.show();
      const again = document.getElementById(before?.id ?? "");
      if (before instanceof HTMLButtonElement) {
        // What was pressed stays under the finger, and the answer beside it before the eyes.
        const pressed = sameButton(before);
        if (pressed) {
          pressed.focus({ preventScroll: true });
          scrollTo(0, at);
        }
      }
      if (again instanceof HTMLInputElement && before instanceof HTMLInputElement && (again.value !== before.value || this.readOffWheels.has(before.id))) {
        // Somebody was typing there.
        again.value = before.value;
        again.focus();
      }
      return;
    }
    this.#views.forEach((view) => view.update());
    this.#updates.forEach((update) => update());
    this.tray.update();
    this.#showSteps();
  }

  /** What decides which fields there are, and their words: language, units, the way round the car, the wheels that go on. */
  #drawing() {
    const set = this.visit.goingOn()?.set;
    return [chosen().language, chosen().units, ...walk().map((corner) => `${corner} ${this.visit.leaving(corner)}`), set, set !== undefined && this.visit.hasTaken(set)].join();
  }

  /**
   * Called with each change while the step is shown.
   *
   * @param {() => void} update
   */
  onUpdate(update) {
    this.#updates.push(update);
  }

  #showSteps() {
    const all = this.steps.map((step) => ({ step, ...this.visit.progress(step) }));
    const open = all.reduce((sum, { missing }) => sum + missing.length, this.visit.openPoints().length);
    const bar = byId("steps");
    all.forEach(({ step, done, of }, at) => {
      const asks = this.visit.asksIn(step);
      const words = step.kind === "DEPART" ? say("open", { n: open }) : of > 0 ? say("done-of", { done, of }) : asks ? say("asks-you") : "";
      const link = linkTo(bar, at, step.id);
      link.className = asks ? "asks" : of > 0 && done === of ? "all" : "";
      if (link.textContent !== step.tab + words) {
        link.replaceChildren(step.tab, ...(words ? [h("small", {}, words)] : []));
      }
    });
    while (bar.children.length > all.length) {
      bar.lastElementChild?.remove();
    }
    const waiting = all.find(({ step }) => this.visit.asksIn(step))?.step;
    const needs = byId("needs");
    needs.hidden = !waiting;
    needs.textContent = waiting ? say("needs-you-at", { step: waiting.title }) : "";
    needs.onclick = () => waiting && this.#goToWhatAsks(waiting);
    const now = /** @type {HTMLElement} */ (bar.children[this.steps.indexOf(this.step)]);
    if (now.ariaCurrent !== "step") {
      bar.querySelectorAll("[aria-current]").forEach((each) => each.removeAttribute("aria-current"));
      now.ariaCurrent = "step";
      bar.scrollLeft = now.offsetLeft - 60;
    }
    showFocused();
  }

  /**
   * Opens a step where something waits for a person's word, and brings it before the eyes.
   *
   * @param {bay.Step} step
   */
  #goToWhatAsks(step) {
    history.pushState(null, "", `#${step.id}`);
    this.show();
    const question = byId("main").querySelector(".below .note, #odometer\\.said .note");
    for (let around = question?.closest("details"); around; around = around.parentElement?.closest("details") ?? null) {
      around.open = true;
    }
    question?.parentElement?.querySelector("button")?.focus({ preventScroll: true });
    question?.scrollIntoView({ block: "center" });
  }

  /**
   * Keeps a value or word as if it had been typed or tapped at its field, whichever step that is in.
   *
   * @param {bay.Field} field
   * @param {string} text
   */
  put(field, text) {
    const shown = this.#views.find((view) => view.field === field);
    (shown ?? new FieldView(this.visit, this.tray, field, () => {}, this.#pace, true)).put(text);
  }

  /** @param {bay.Field} field */
  view(field) {
    return this.#add(field, false).element;
  }

  /**
   * @param {bay.Field} field
   * @param {boolean} apart
   */
  #add(field, apart) {
    const view = new FieldView(this.visit, this.tray, field, (from, toWords, filling) => this.#moveOn(from, toWords, filling), this.#pace, apart);
    this.#views.push(view);
    return view;
  }

  /**
   * One tool goes round the whole car before the next is taken up.
   *
   * @param {bay.Step} step
   */
  #walkByTool(step) {
    if (!step.corner) {
      const fields = byTool(walk(), this.#views.map(({ field }) => field));
      this.#views.sort((one, other) => fields.indexOf(one.field) - fields.indexOf(other.field));
    }
  }

  /**
   * Past the last place to the next step.
   *
   * @param {FieldView} from
   * @param {boolean} toWords
   * @param {boolean} filling
   */
  #moveOn(from, toWords, filling) {
    const next = nextPlace(this.#views, from, toWords, filling);
    const target = next ? next.input ?? next.place.querySelector("button") : byId("next").querySelector("a.main");
    if (target instanceof HTMLElement) {
      target.focus();
      target.scrollIntoView({ block: "nearest" });
    }
    next?.input?.select();
  }

  /** What was to be minded at the corners before this one: four times the same is not read. */
  #saidBefore() {
    const before = this.step.corner ? this.steps.slice(0, this.steps.indexOf(this.step)).filter(({ corner }) => corner) : [];
    return new Set(before.flatMap(({ groups }) => groups.flatMap(({ hints }) => hints.map(({ words }) => words))));
  }

  /** That in one line, which opens. */
  #mindedBefore() {
    const before = this.#saidBefore();
    const again = this.step.groups.flatMap(({ hints }) => hints).filter(({ words }) => before.has(words));
    return again.length > 0 ? [h("details", {}, h("summary", {}, say("minded-before", { n: again.length })), ...again.map(({ words }) => note("caution", words)))] : [];
  }

  /** @param {bay.Group} group */
  group({ title, hints, fields, folded, soundAtOnce }) {
    const before = this.#saidBefore();
    const cautions = hints.filter(({ words }) => !before.has(words)).map(({ words }) => note("caution", words));
    const parts = this.#fields(fields);
    if (!folded) {
      return h("section", {}, title ? h("h3", {}, title) : null, ...cautions, ...this.#atOnce(fields), ...parts);
    }
    const read = () => fields.filter((field) => this.visit.read(field) !== "").length;
    const count = h("small", {});
    this.onUpdate(() => (count.textContent = read() > 0 ? say("read", { n: read() }) : ""));
    const details = h("details", { open: read() > 0 }, h("summary", {}, title, count), ...cautions, ...parts);
    // A sheet that an older server made has none.
    const looked = fields.filter((field) => soundAtOnce?.includes(field.measure) && this.visit.applies(field));
    return looked.length > 0 ? h("div", { className: "look" }, this.#allSound(title, looked), details) : details;
  }

  /**
   * One tap for all where nothing was seen; what was answered before stays.
   *
   * @param {string} title
   * @param {bay.Field[]} fields
   */
  #allSound(title, fields) {
    const open = () => fields.filter((field) => this.visit.read(field) === "");
    const sound = () => Promise.all(open().map((field) => this.visit.enter(field, field.words[0]?.written ?? "")));
    const button = h("button", { type: "button", className: "tick", onclick: sound });
    this.onUpdate(() => {
      button.ariaPressed = String(open().length === 0);
      button.textContent = say("all-sound", { step: title, seen: this.#isSeen(fields) });
    });
    return button;
  }

  /**
   * Whether something was answered otherwise than as it should be.
   *
   * @param {bay.Field[]} fields
   */
  #isSeen(fields) {
    return fields.some((field) => !["", field.words[0]?.written].includes(this.visit.read(field)));
  }

  /**
   * One tap where several of a corner are as they should be, one for those of all four; what was answered before stays.
   *
   * @param {bay.Field[]} fields
   */
  #atOnce(fields) {
    const asked = fields.filter((field) => field.corner && field.words.length > 0 && this.visit.applies(field));
    const [first] = asked;
    const word = first?.words[0];
    if (!word || asked.length < 2 || asked.some((field) => field.words[0]?.written !== word.written)) {
      return [];
    }
    const measures = new Set(asked.map(({ measure }) => measure));
    const everywhere = this.steps.filter(({ corner }) => corner).flatMap(fieldsOf).filter((field) => measures.has(field.measure) && field.words[0]?.written === word.written && this.visit.applies(field));
    return [h("div", { className: "row at-once" }, this.#answerAll(asked, (seen) => say("all-here", { word: word.label, seen })), this.#answerAll(everywhere, (seen) => say("all-corners", { word: word.label, seen })))];
  }

  /**
   * @param {bay.Field[]} fields
   * @param {(seen: boolean) => string} words whether one of them is not as it should be
   */
  #answerAll(fields, words) {
    const open = () => fields.filter((field) => this.visit.read(field) === "");
    const button = h("button", { type: "button", className: "tick", onclick: () => Promise.all(open().map((field) => this.visit.enter(field, field.words[0]?.written ?? ""))) });
    this.onUpdate(() => {
      button.ariaPressed = String(open().length === 0);
      button.textContent = words(this.#isSeen(fields));
    });
    return button;
  }

  /**
   * Each at its corner of the car, where the step goes round it.
   *
   * @param {bay.Field[]} fields
   */
  #fields(fields) {
    const shown = fields.filter((field) => this.visit.applies(field));
    const roundTheCar = !this.step.corner && shown.some((field) => field.corner);
    return [roundTheCar ? this.corners(shown) : h("div", { className: "fields" }, ...shown.map((field) => this.view(field)))];
  }

  /**
   * The car from above: each corner at its place, walked in the chosen order.
   *
   * @param {bay.Step} step
   */
  #car(step) {
    const shown = fieldsOf(step).filter((field) => this.visit.applies(field));
    if (shown.every((field) => !field.corner)) {
      return [note("asks", say("record-wheels-first")), h("a", { className: "button main", href: "#ON" }, say("wheels-on"))];
    }
    return [...this.#fields(shown.filter((field) => !field.corner)), this.corners(shown)];
  }

  /** @param {bay.Field[]} fields */
  corners(fields) {
    return h(
      "div",
      { className: "car" },
      ...walk().map((corner) => {
        const here = fields.filter((field) => field.corner === corner);
        const wheel = here.slice(0, 1).map((field) => this.visit.wheelOf(field)).join();
        const views = here.map((field) => this.#add(field, true));
        return h("section", { className: `corner ${corner}` }, h("h3", {}, cornerName(corner), h("small", {}, wheel)), this.#air(here), h("div", { className: `spots spots-${here.length}` }, ...views.map((view) => view.element)), ...views.map((view) => view.below));
      }),
      h("div", { className: "body", ariaHidden: "true" }, h("span", {}, say("front"))),
    );
  }

  /**
   * Wheels that have no corner yet, each with what is read of it, and what there is to say of it.
   *
   * @param {bay.StoredField[]} fields
   * @param {(wheel: string) => string} saidOf
   */
  wheelByWheel(fields, saidOf) {
    const wheels = [...new Set(byTool(walk(), fields).map(({ wheel }) => wheel))];
    return h("div", { className: "rack" }, ...wheels.map((wheel) => {
      const here = fields.filter((field) => field.wheel === wheel);
      const views = here.map((field) => this.#add(field, true));
      const said = h("small", {});
      this.onUpdate(() => (said.textContent = saidOf(wheel)));
      return h("section", { className: "corner" }, h("h3", {}, wheel, said), h("div", { className: `spots spots-${here.length}` }, ...views.map((view) => view.element)), ...views.map((view) => view.below));
    }));
  }

  /**
   * What to set, as the server last computed it from the temperatures that it had.
   *
   * @param {bay.Field[]} fields
   */
  #air(fields) {
    const { corner } = fields.find((field) => field.measure === "PRESSURE_SET") ?? {};
    if (!corner) {
      return null;
    }
    const words = h("p", { className: "air" });
    this.onUpdate(() => {
      const air = this.visit.state.air[corner]?.[chosen().language]?.[chosen().units];
      words.replaceChildren(...(air ? [h("strong", {}, air.set), ` ${air.from}`] : []));
    });
    return words;
  }

  /** @param {bay.Tick} tick */
  ticked(tick, done = () => this.visit.done(tick.key)) {
    const button = h("button", { type: "button", className: "tick", onclick: () => this.visit.tick(tick.key, !done()) }, tick.label);
    this.onUpdate(() => {
      button.ariaPressed = String(done());
    });
    return button;
  }
}

/** Brings a step's link that has the focus into the bar whole: browsers leave half a link where it is, and others grow beside it. */
function showFocused() {
  byId("steps").querySelector(":focus")?.scrollIntoView({ block: "nearest", inline: "nearest" });
}

/**
 * The button of the step that says what another said which is gone.
 *
 * @param {HTMLButtonElement} before
 */
const sameButton = (before) => [...byId("main").querySelectorAll("button")].find((button) => button.textContent === before.textContent);

/**
 * What hurts here, or what is missing and where it is given.
 *
 * @param {bay.Mind} mind
 */
function minded({ words, address }) {
  return address ? note("asks", words, " ", h("a", { className: "button quiet", href: address }, say("give-it"))) : note("caution", words);
}

/**
 * What must not be begun here before the customer has agreed to it.
 *
 * @param {SheetView} view
 * @param {bay.Step} step
 */
function stops(view, step) {
  const place = h("div", { className: "stops", ariaLive: "polite" });
  const address = `/visits/${encodeURIComponent(view.visit.id)}`;
  let shown = "";
  const show = () => {
    const words = view.visit.stopped(step);
    const now = JSON.stringify(words);
    if (shown !== now) {
      shown = now;
      place.replaceChildren(...words.map((each) => note("asks", each)), words.length === 0 ? "" : h("p", { className: "actions" }, h("a", { className: "button quiet", href: `${address}/agree?way=TELEPHONE` }, say("ask-by-telephone")), " ", h("a", { className: "button quiet", href: `${address}/estimate` }, say("to-the-estimate"))));
    }
  };
  view.onUpdate(show);
  show();
  return place;
}

/**
 * What was asked for at the last visit, and what was left open.
 *
 * @param {bay.Sheet} sheet
 */
function openMatters({ matters }) {
  // A sheet that an older server made has none.
  const [first] = matters ?? [];
  return first ? [h("section", { className: "matters" }, h("h3", {}, say("open-since", { day: first.day })), h("ul", {}, ...matters.map(({ words, day }) => h("li", {}, day === first.day ? words : say("of-day", { day, words })))))] : [];
}

/**
 * Who says what is to be minded in a step, folded away.
 *
 * @param {bay.Step} step
 */
function sources({ cautions, groups }) {
  const said = [...cautions, ...groups.flatMap(({ hints }) => hints)].filter(({ source }) => source !== "");
  return said.length > 0 ? [h("details", {}, h("summary", {}, say("who-says-so")), h("ul", { className: "soft" }, ...said.map(({ words, source }) => h("li", {}, `${words} (${source})`))))] : [];
}

/**
 * The link to a step at its place in the bar, the one that is there already if it leads there: a finger may lie on it.
 *
 * @param {HTMLElement} bar
 * @param {number} at
 * @param {string} id
 */
function linkTo(bar, at, id) {
  const there = bar.children[at];
  if (there instanceof HTMLAnchorElement && there.hash === `#${id}`) {
    return there;
  }
  const link = h("a", { href: `#${id}` });
  if (there) {
    there.replaceWith(link);
  } else {
    bar.append(link);
  }
  return link;
}
