// One visit on this tablet: the sheet, what the book has, and over it what is only here.
import { ask } from "./bay-ask.mjs";
import { learn } from "./bay-clock.mjs";
import { chosen, person } from "./bay-person.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { bareNumber, isBare, isWithin, saysDone, saysNotDone, withoutUnit, withUnit } from "./bay-written.mjs";

const SECOND_CHECK = "SECOND_CHECK";
const TIGHT = "TIGHT.";
const NOT = "NOT.";
const WHEELS_ON = "WHEELS_ON";
const RECEIVE = "RECEIVE";
const ALWAYS = "ALWAYS";
/** @type {bay.Corner[]} */
const CORNERS = ["LF", "RF", "LR", "RR"];

export class Visit extends EventTarget {
  /**
   * By the tag of the language and the name of the units; undefined when they were never here.
   *
   * @type {bay.ForAll<bay.Sheet> | undefined}
   */
  sheets;

  /** Whether the book has it no longer. */
  gone = false;

  /** The set that a person took out of the store. */
  #taken = "";

  /** How often the server told a state by itself. */
  #told = 0;

  /** @type {bay.State} */
  state = { now: "", whereabouts: "", odometer: { written: "", shown: {} }, leftOn: {}, readings: {}, rivals: [], ticks: {}, photos: [], tools: {}, air: {}, unsafe: [], onCar: [], remarks: {}, advised: [], plans: [] };

  /**
   * @param {string} id
   * @param {bay.Outbox} outbox
   */
  constructor(id, outbox) {
    super();
    this.id = id;
    this.outbox = outbox;
    outbox.addEventListener("state", (event) => {
      const { visit, state } = /** @type {CustomEvent<{ visit: string, state: bay.State }>} */ (event).detail;
      if (visit === id) {
        this.take(state);
      }
    });
    outbox.addEventListener("change", () => this.dispatchEvent(new Event("change")));
  }

  /** In the language and the units of the person who works here now. */
  get sheet() {
    const sheet = sheetOf(this.sheets);
    if (!sheet) {
      throw new Error(`The sheet of ${this.id} is not here`);
    }
    return sheet;
  }

  /** From the tablet, unless the server was faster; without sheets when it was never here. */
  async load() {
    const kept = await this.outbox.store.get("sheets", this.id);
    if (!this.sheets && kept && sheetOf(kept.sheets)) {
      Object.assign(this, { sheets: kept.sheets, state: kept.state });
    }
  }

  /** From the server; what it has told meanwhile is newer than the state that was asked for before it. */
  async fetch() {
    const told = this.#told;
    const base = `/bay/visits/${encodeURIComponent(this.id)}`;
    const [sheets, state] = await Promise.all(
      [`${base}/sheet.json`, `${base}/state.json`].map(async (address) => {
        const response = await ask(address);
        this.gone = response.status === 404;
        if (!response.ok) {
          throw new Error(`The server answered ${response.status}`);
        }
        return response.json();
      }),
    );
    this.sheets = sheets;
    if (told === this.#told) {
      this.state = state;
    }
    learn(state.now);
    this.dispatchEvent(new Event("change"));
    // Hands can begin while it goes to the disk.
    this.#keep();
  }

  /** @param {bay.State} state */
  take(state) {
    this.#told++;
    this.state = state;
    learn(state.now);
    this.#keep();
    this.dispatchEvent(new Event("change"));
  }

  #keep() {
    if (this.sheets) {
      this.outbox.store.put("sheets", { visit: this.id, sheets: this.sheets, state: this.state, keptAt: Date.now() });
    }
  }

  get pending() {
    return this.outbox.of(this.id);
  }

  /**
   * Entries of a kind that are only here.
   *
   * @template {bay.Made["kind"]} K
   * @param {K} kind
   */
  here(kind) {
    return /** @type {bay.EntryOf<K>[]} */ (this.pending.filter((entry) => entry.kind === kind));
  }

  /**
   * The wheel that the car leaves on at a corner, in the book or only here; undefined until somebody recorded it.
   *
   * @param {bay.Corner} corner
   */
  leaving(corner) {
    const entry = this.here("leaving").findLast((each) => !each.refused);
    return (entry?.wheels ?? this.state.leftOn)[corner];
  }

  /** Whether somebody recorded which wheels go on. */
  get isFitted() {
    return CORNERS.some((corner) => this.leaving(corner));
  }

  /** The sets of the car, each as it may go on by all that was read of it until now. */
  fills() {
    return this.sheet.fills.map((fill) => {
      // A state that an older program left on this tablet has none.
      const plan = this.state.plans?.find(({ set }) => set === fill.set);
      return plan ? { set: fill.set, wheelAt: plan.wheelAt, hint: plan.hint[chosen().language]?.[chosen().units] ?? "" } : fill;
    });
  }

  /** The set that goes on, or stays: the one that a person took, that was read as it came out of the store, or that is planned. */
  goingOn() {
    const fills = this.fills();
    const planned = Object.values(this.sheet.planned);
    return fills.find(({ set }) => set === this.#taken) ?? fills.find((fill) => this.fieldsOutOfStore(fill).some((field) => this.read(field) !== "")) ?? fills.find(({ wheelAt }) => Object.values(wheelAt).some((tag) => planned.includes(tag)));
  }

  /** @param {string} set of which a person said that it goes on, or stays */
  hasTaken(set) {
    return this.#taken === set;
  }

  /** @param {string} set which goes on, as a person says */
  takeSet(set) {
    this.#taken = set;
    this.dispatchEvent(new Event("change"));
  }

  /**
   * The places for what is read of a set before it is known which wheel goes where; none of the one that the car came on.
   *
   * @param {bay.Fill} fill
   * @returns {bay.StoredField[]}
   */
  fieldsOutOfStore({ set }) {
    // The corner of a wheel must not change with the plan while it is read.
    const wheelAt = this.sheet.fills.find((fill) => fill.set === set)?.wheelAt ?? {};
    const fields = this.sheet.steps.filter(({ kind }) => kind === "WHEELS").flatMap(({ groups }) => groups.filter(({ folded }) => !folded)).flatMap((group) => group.fields);
    return fields.flatMap((field) => {
      const wheel = field.corner && wheelAt[field.corner];
      return wheel && !Object.values(this.sheet.arrived).includes(wheel) ? { ...field, wheel } : [];
    });
  }

  /** @param {bay.Field | bay.StoredField} field */
  wheelOf(field) {
    const { ofWheel, goesOn, corner } = field;
    return "wheel" in field ? field.wheel : !ofWheel || !corner ? "" : (goesOn ? this.leaving(corner) : this.sheet.arrived[corner]) ?? "";
  }

  /** @param {bay.Field} field */
  keyOf(field) {
    return [field.measure, field.corner ?? "", field.spot ?? "", this.wheelOf(field)].join(".");
  }

  /**
   * Whether a field has a place: its wheel is known, and it is not read as the wheel that came already.
   *
   * @param {bay.Field} field
   */
  applies(field) {
    const wheel = this.wheelOf(field);
    return !field.ofWheel || (wheel !== "" && !(field.goesOn && field.onlyNew && wheel === this.wheelOf({ ...field, goesOn: false })));
  }

  /**
   * What a field shows, and where that is.
   *
   * @param {bay.Field} field
   * @returns {bay.Look}
   */
  look(field) {
    const key = this.keyOf(field);
    // What came out of the store may have been read before it had its corner.
    const keys = [key, ...(field.onlyNew ? CORNERS.map((corner) => this.keyOf({ ...field, corner, ...{ wheel: this.wheelOf(field) } })) : [])];
    const entry = this.here("reading").findLast((each) => keys.includes(each.key));
    const stored = keys.map((each) => this.state.readings[each]).find((each) => each);
    const rival = this.state.rivals.find((each) => each.key === key);
    const written = entry ? withoutUnit(field, entry.written) : (stored?.shown[chosen().units] ?? "");
    const where = entry?.refused ? "refused" : entry?.held ? "held" : entry ? (entry.seq === undefined ? "writing" : "here") : rival ? "rival" : stored ? "book" : "";
    return { key, entry, stored, rival, written, where };
  }

  /**
   * What was read at a field, here or in the book; what was refused is nothing.
   *
   * @param {bay.Field} field
   */
  read(field) {
    const { where, written, stored } = this.look(field);
    return where === "refused" ? (stored?.shown[chosen().units] ?? "") : written;
  }

  /** @param {bay.Field} field */
  lastOf(field) {
    return field.ofWheel ? this.#ofWheel(field)?.last[`${field.measure}.${field.spot ?? ""}`] : field.last;
  }

  /** @param {bay.Field} field */
  expectedOf(field) {
    return field.ofWheel ? this.#ofWheel(field)?.expected[`${field.measure}.${field.spot ?? ""}`] : field.expected;
  }

  /**
   * The limit that the value of a field lies outside of, the gravest first; undefined when it lies within all. A value with a
   * unit of its own is left to the server.
   *
   * @param {bay.Field} field
   */
  brokenBy(field, text = this.read(field)) {
    const value = bareNumber(text);
    return value === undefined ? undefined : this.#limitsOf(field).find((limit) => !isWithin(value, limit) && !this.#ended(limit));
  }

  /**
   * What an older program left on this tablet has none.
   *
   * @param {bay.Field} field
   */
  #limitsOf(field) {
    const air = field.measure === "PRESSURE_SET" && field.corner ? this.state.air[field.corner]?.[chosen().language]?.[chosen().units]?.limit : undefined;
    const wheel = this.wheelOf(field);
    return air ? [air] : (this.sheet.limits ?? []).filter((limit) => limit.measure === field.measure && (limit.corner ?? field.corner) === field.corner && (limit.wheel ?? wheel) === wheel);
  }

  /** @param {bay.Limit} limit */
  #ended({ endedBy, corner }) {
    return endedBy !== undefined && this.#has(`${endedBy}.${corner ?? ""}`);
  }

  /** @param {bay.Field} field */
  #ofWheel(field) {
    return this.sheet.wheels[this.wheelOf(field)];
  }

  /**
   * The tick that stands of a step, here or in the book; a fastener's is that of the wheel that goes on.
   *
   * @param {string} tick
   */
  #ticked(tick) {
    const wheel = this.#wheelOfTick(tick);
    const stored = this.state.ticks[tick];
    return this.here("tick").findLast((each) => each.tick === tick && !each.refused && each.wheel === wheel) ?? (stored?.wheel === wheel ? stored : undefined);
  }

  /** @param {string} tick */
  #wheelOfTick(tick) {
    const corner = CORNERS.find((each) => tick.startsWith(fastenersOf(each)));
    return corner && this.leaving(corner);
  }

  /** @param {string} tick */
  done(tick) {
    return this.#ticked(tick)?.done ?? false;
  }

  /** @param {bay.Corner} corner */
  #fasteners(corner) {
    return (this.sheet.fasteners?.order ?? []).map((number) => fastenersOf(corner) + number);
  }

  /**
   * Whether every fastener of a wheel is ticked, or its torque was read, and none was taken back.
   *
   * @param {bay.Corner | undefined} corner
   */
  tight(corner) {
    if (!corner) {
      return false;
    }
    const ticks = this.#fasteners(corner).map((key) => this.#ticked(key));
    const torque = this.#fieldsOfMeasure("WHEEL_TORQUE").find((field) => field.corner === corner);
    return !ticks.some((tick) => tick && !tick.done) && ((ticks.length > 0 && ticks.every((tick) => tick?.done)) || Boolean(torque && this.read(torque)));
  }

  /**
   * Whether a wheel is tight, and no torque that was read says otherwise.
   *
   * @param {bay.Corner | undefined} corner
   */
  torqued(corner) {
    return this.tight(corner) && !this.#fieldsOfMeasure("WHEEL_TORQUE").some((field) => field.corner === corner && this.brokenBy(field));
  }

  /** Each tick of a fastener and each torque: which, and of whom. */
  tightenings() {
    const ticked = CORNERS.flatMap((corner) => this.#fasteners(corner)).map((key) => this.#ticked(key)).flatMap((tick) => (tick?.done ? tick : []));
    const written = this.#fieldsOfMeasure("WHEEL_TORQUE").map((field) => this.look(field)).flatMap(({ entry, stored }) => (entry && !entry.refused ? entry : stored ?? []));
    return [...ticked, ...written];
  }

  tightenedBy() {
    return new Set(this.tightenings().map(({ person: name }) => name));
  }

  /** Whether another person than those has checked them, each of them before the eyes. */
  secondChecked() {
    const check = this.#ticked(SECOND_CHECK);
    return check !== undefined && check.done && this.tightenings().every((each) => each.person !== check.person && check.seen?.includes(each.id));
  }

  /**
   * The name of what is missing; none where only wheels are.
   *
   * @param {bay.Missing} missing
   */
  #keyOfMissing(missing) {
    return "tick" in missing ? missing.tick.key : "field" in missing ? this.keyOf(missing.field) : undefined;
  }

  /**
   * What is missing in a step and may be left open: nobody has said why yet.
   *
   * @param {bay.Step} step
   */
  canBeLeft(step) {
    return this.progress(step).missing.flatMap((missing) => {
      const key = this.#keyOfMissing(missing);
      return key === undefined || this.#ticked(key)?.reason ? [] : [{ key, missing }];
    });
  }

  /**
   * What is missing in a step and was left open, with its reason: it stays missing.
   *
   * @param {bay.Step} step
   * @returns {bay.LeftOpen[]}
   */
  leftOpen(step) {
    return this.progress(step).missing.flatMap((missing) => {
      const key = this.#keyOfMissing(missing);
      const tick = key === undefined ? undefined : this.#ticked(key);
      return key !== undefined && tick?.reason ? [{ key, missing, reason: tick.reason, person: tick.person }] : [];
    });
  }

  /**
   * Why the work that a point waits for was left open; empty where nobody said so.
   *
   * @param {bay.OpenPoint} point
   * @param {(reason: string) => string} words
   */
  whyLeftOpen({ closedBy }, words) {
    const place = closedBy?.startsWith(TIGHT) ? `WHEEL_TORQUE.${closedBy.slice(TIGHT.length)}` : closedBy;
    const step = place === undefined ? undefined : this.sheet.steps.find((each) => each.ticks.some(({ key }) => key === place) || fieldsOf(each).some((field) => `${field.measure}.${field.corner ?? ""}` === place));
    const left = step && this.leftOpen(step).find(({ missing }) => ("tick" in missing && missing.tick.key === place) || ("field" in missing && `${missing.field.measure}.${missing.field.corner ?? ""}` === place));
    return left ? words(left.reason) : "";
  }

  get asksSecondCheck() {
    return this.sheet.cautions.some((caution) => caution.key === SECOND_CHECK);
  }

  /**
   * Whether something was done or read, by the name that the rules give it.
   *
   * @param {string} key
   * @returns {boolean}
   */
  #has(key) {
    return (
      key === ALWAYS ||
      (key === WHEELS_ON && this.isFitted) ||
      (key === SECOND_CHECK && this.secondChecked()) ||
      CORNERS.some((corner) => key === TIGHT + corner && this.tight(corner)) ||
      (key.startsWith(NOT) && this.#ofCar(key.slice(NOT.length)).some((field) => saysNotDone(field, this.read(field)))) ||
      this.#ofCar(key).some((field) => saysDone(field, this.read(field)))
    );
  }

  /**
   * The fields of a name at the car as it came: what is done to a wheel from the store opens and closes nothing.
   *
   * @param {string} key
   */
  #ofCar(key) {
    return this.#fieldsOf(key).filter((field) => this.applies(field) && !(field.ofWheel && field.goesOn));
  }

  /**
   * What is open by all that this tablet knows: work that is not ended, what the book found unsafe when it last said so, and what
   * was read since.
   *
   * @returns {bay.OpenPoint[]}
   */
  openPoints() {
    const work = this.sheet.cautions.filter((caution) => caution.openedBy.some((key) => this.#has(key)) && !this.#has(caution.closedBy));
    // A state that an older program left on this tablet has none.
    const found = (this.state.unsafe ?? []).map(({ key, sentence }) => ({ key, sentence: sentence[chosen().language]?.[chosen().units] ?? "", unsafe: true }));
    /** @type {bay.OpenPoint[]} */
    const points = [...work.map(({ key, sentence, closedBy }) => ({ key, sentence, closedBy, unsafe: false })), ...found];
    const keep = new Set((this.sheet.limits ?? []).filter(({ point }) => point).map(({ measure }) => measure));
    for (const field of this.sheet.steps.flatMap(fieldsOf).filter((each) => keep.has(each.measure) && this.applies(each))) {
      const { point, sentence = "" } = this.brokenBy(field) ?? {};
      if (point && !points.some(({ key }) => key === point)) {
        points.push({ key: point, sentence, corner: field.corner, unsafe: true });
      }
    }
    return [...points, ...this.#notAgreed()];
  }

  /**
   * Work that was done and is neither agreed nor without charge.
   *
   * @returns {bay.OpenPoint[]}
   */
  #notAgreed() {
    return (this.state.asking?.works ?? []).flatMap((work) => {
      const field = this.sheet.steps.flatMap(fieldsOf).find((each) => this.applies(each) && this.#workOf(each) === work && this.asked(each)?.held);
      return field ? [{ key: `NOT_AGREED.${work.key}`, sentence: stopWords(work), closedBy: `${field.measure}.${field.corner ?? ""}`, unsafe: false }] : [];
    });
  }

  /**
   * The step in which a point is closed; none where no entry closes it.
   *
   * @param {bay.OpenPoint} point
   */
  stepThatCloses({ closedBy }) {
    return closedBy === undefined ? undefined : this.sheet.steps.find((step) => (step.kind === "TORQUE" && closedBy.startsWith(TIGHT)) || (step.kind === "WHEELS" && closedBy === WHEELS_ON) || step.ticks.some((tick) => tick.key === closedBy) || fieldsOf(step).some((field) => `${field.measure}.${field.corner ?? ""}` === closedBy));
  }

  /** @param {string} measure */
  #fieldsOfMeasure(measure) {
    return this.sheet.steps.flatMap(fieldsOf).filter((field) => field.measure === measure && this.applies(field));
  }

  /** @param {string} key */
  #fieldsOf(key) {
    return this.sheet.steps.flatMap(fieldsOf).filter((field) => `${field.measure}.${field.corner ?? ""}` === key);
  }

  /**
   * Whether a value waits for a person's word: its reason, or which of two counts.
   *
   * @param {bay.Field} field
   */
  #asks(field) {
    return ["held", "rival", "refused"].includes(this.look(field).where) || Boolean(this.asked(field)?.held);
  }

  /**
   * The work that a field says was done, where that is charged for; undefined where nobody has to be asked.
   *
   * @param {bay.Field} field
   * @returns {bay.Asked | undefined}
   */
  asked(field) {
    const work = this.#workOf(field);
    if (!work || !saysDone(field, this.read(field))) {
      return undefined;
    }
    const entry = this.#answered(work);
    const stored = work.settled?.[chosen().language]?.[chosen().units];
    // That it is without charge may be taken back; what the customer agreed to stands.
    const settled = entry?.kind === "agreed" || (entry && entry.answer !== "ASKED_AGAIN") || (stored !== undefined && !(entry && work.free));
    const free = settled && (entry ? entry.kind === "work" && entry.answer === "WITHOUT_CHARGE" : work.free);
    return { work, held: work.holds && !settled, free, entry: settled ? entry : undefined, stored: settled ? stored : undefined };
  }

  /**
   * A state that an older program left on this tablet has none.
   *
   * @param {bay.Field} field
   */
  #workOf(field) {
    const place = `${field.measure}.${field.corner ?? ""}`;
    return this.state.asking?.works.find(({ places }) => places.includes(place));
  }

  /**
   * What was said to work last and is only here.
   *
   * @param {bay.Work} work
   */
  #answered(work) {
    return this.pending.flatMap((entry) => ((entry.kind === "agreed" || entry.kind === "work") && entry.work === work.key && !entry.refused ? entry : [])).at(-1);
  }

  /**
   * Work is not done after all: what was never sent goes, what the book may have is corrected.
   *
   * @param {bay.Field} field
   */
  takeBack(field) {
    const { entry, stored } = this.look(field);
    const undone = field.words.find((word) => word.undone);
    return entry && !entry.tried && !stored ? this.outbox.drop(entry) : this.enter(field, undone?.written ?? "", "TAKEN_BACK");
  }

  /**
   * Whether something in a step waits for a person's word.
   *
   * @param {bay.Step} step
   */
  asksIn(step) {
    return fieldsOf(step).some((field) => this.applies(field) && this.#asks(field)) || (step.id === RECEIVE && ["held", "refused"].includes(this.odometer().where)) || (step.kind === "WHEELS" && this.here("leaving").some((entry) => entry.refused));
  }

  /**
   * What a step waits for, each a field, a tick or the wheels, and of how many places; what most visits do without does not count.
   *
   * @param {bay.Step} step
   * @returns {bay.Progress}
   */
  progress(step) {
    const fields = step.groups.filter((group) => !group.folded).flatMap((group) => group.fields).filter((field) => this.applies(field));
    // A wheel is tight by its ticks, too; what the wrench showed need not be typed.
    /** @param {bay.Field} field */
    const open = (field) => (field.measure === "WHEEL_TORQUE" ? !this.torqued(field.corner) : !saysDone(field, this.read(field)) || this.#asks(field));
    const ticks = step.kind === "TORQUE" ? [] : step.ticks;
    // Its places are not there before it is known which wheels go on.
    const waits = ["CAR", "TORQUE"].includes(step.kind) && fieldsOf(step).some((field) => field.goesOn) && !fields.some((field) => field.goesOn);
    const goingOn = step.kind === "WHEELS" && !this.isFitted ? this.goingOn() : undefined;
    fields.push(...(goingOn ? this.fieldsOutOfStore(goingOn) : []));
    // What was answered "not done", or asks something, is open wherever it stands; work that the customer did not want is not.
    const folded = step.groups.filter((group) => group.folded).flatMap((group) => group.fields).filter((field) => this.applies(field) && ((saysNotDone(field, this.read(field)) && !this.#workOf(field)?.holds) || this.#asks(field)));
    fields.push(...folded);
    const missing = [
      ...fields.filter(open).map((field) => ({ field })),
      ...ticks.filter((tick) => !this.done(tick.key)).map((tick) => ({ tick })),
      ...(step.kind === "WHEELS" && !this.isFitted ? [{ wheels: "which-wheels" }] : []),
      ...(waits ? [{ wheels: "first-wheels" }] : []),
    ];
    const of = fields.length + ticks.length + (step.kind === "WHEELS" || waits ? 1 : 0);
    return { missing, done: of - missing.length, of };
  }

  /**
   * A reading; what was never sent is replaced, what the book may have is corrected with a reason.
   *
   * @param {bay.Field} field
   * @param {string} text
   * @param {string} [reason]
   */
  async enter(field, text, reason, by = person()) {
    const written = withUnit(field, text);
    const { key, entry, stored } = this.look(field);
    const known = entry?.tried && !entry.refused ? entry.id : entry ? entry.shown : stored?.id;
    return this.outbox.add(
      {
        visit: this.id, kind: "reading", key, person: by, written,
        measure: field.measure, corner: field.corner, spot: field.spot, wheel: this.wheelOf(field) || undefined,
        goesOn: field.goesOn, shown: known, reason: known ? reason : undefined, held: Boolean(known && !reason),
      },
      entry && (!entry.tried || entry.refused) ? entry : undefined,
    );
  }

  /** Where the car is, as it was said here or the book has it; empty where an older program left the state. */
  whereabouts() {
    return this.here("state").findLast((each) => !each.refused)?.state ?? this.state.whereabouts ?? "";
  }

  /**
   * What the odometer reads, here or in the book; what was refused is nothing.
   *
   * @returns {{ written: string, entry?: bay.EntryOf<"put right">, where: bay.Where }}
   */
  odometer() {
    const entry = this.here("put right").findLast((each) => !each.refused);
    const unit = ` ${this.sheet.odometer.unit}`;
    const typed = entry && (entry.odometer.endsWith(unit) ? entry.odometer.slice(0, -unit.length) : entry.odometer);
    // A state that an older program left on this tablet has none.
    const written = typed ?? this.state.odometer?.shown[chosen().units] ?? "";
    return { written, entry, where: entry?.held ? "held" : entry ? (entry.seq === undefined ? "writing" : "here") : written ? "book" : "" };
  }

  /**
   * The odometer was read again; it waits for its reason.
   *
   * @param {string} text
   */
  readOdometer(text) {
    const { entry } = this.odometer();
    const odometer = isBare(text) ? `${text} ${this.sheet.odometer.unit}` : text;
    const seen = !entry ? this.state.odometer.written : entry.tried ? entry.odometer : entry.seen;
    return this.outbox.add({ visit: this.id, kind: "put right", person: person(), odometer, seen, held: true }, entry && !entry.tried ? entry : undefined);
  }

  /** Whether it is written what an odometer read that was replaced: then the new one may read less. */
  wasOdometerReplaced() {
    return this.#fieldsOfMeasure("REPLACED_ODOMETER").some((field) => this.read(field) !== "");
  }

  /**
   * Says upon which tick it was made, and a check what it was made of: the book does not go by the clocks.
   *
   * @param {string} tick
   * @param {boolean} done
   * @param {string} [by]
   * @param {string} [reason] why it is left open, when it is not done
   */
  tick(tick, done, by = person(), reason = "") {
    return this.outbox.add({
      visit: this.id, kind: "tick", tick, done, reason: reason || undefined, person: by, wheel: this.#wheelOfTick(tick), shown: this.#ticked(tick)?.id,
      seen: tick === SECOND_CHECK && done ? this.tightenings().map(({ id }) => id) : undefined,
    }, this.here("tick").find((each) => each.tick === tick && each.refused));
  }

  /**
   * What stands written on a topic.
   *
   * @param {string} topic
   */
  remark(topic) {
    // A state that an older program left on this tablet has none.
    return this.here("remark").findLast((each) => each.topic === topic && !each.refused)?.words ?? this.state.remarks?.[topic] ?? "";
  }

  /** What the customer may decline; a state that an older program left on this tablet has none. */
  advised() {
    return (this.state.advised ?? []).map(({ key, sentence, declinedBy }) => {
      const entry = this.here("declined").findLast((each) => each.advice === key && !each.refused);
      return { key, sentence: sentence[chosen().language]?.[chosen().units] ?? "", declined: entry?.declined ?? declinedBy !== undefined, saidBy: entry ? entry.saidBy : declinedBy };
    });
  }

  /**
   * Why work must not be begun at a step: an estimate was given, and the customer has not agreed to it. All of it where the car comes in.
   *
   * @param {bay.Step} step
   */
  stopped({ id, corner }) {
    return (this.state.advised ?? [])
      .filter(({ stop, corners }) => stop && (id === "RECEIVE" || (corner && corners?.includes(corner))))
      .map(({ stop }) => stop?.[chosen().language]?.[chosen().units] ?? "");
  }

  /**
   * Mark of the tool of a kind that this visit is worked with; empty while none is named.
   *
   * @param {string} kind
   */
  tool(kind) {
    return this.here("tool").findLast((each) => each.tool === kind)?.toolId ?? this.state.tools[kind] ?? "";
  }

  /**
   * @param {string} kind
   * @param {string} toolId
   */
  useTool(kind, toolId) {
    return this.outbox.add({ visit: this.id, kind: "tool", tool: kind, toolId, person: person() });
  }

  /**
   * Anything else than a reading, a tick or a tool.
   *
   * @template {"move" | "leaving" | "departure" | "state" | "remark" | "declined" | "agreed" | "work" | "answer" | "photo" | "photo choice"} K
   * @param {K} kind
   * @param {Omit<bay.MadeOf<K>, "kind" | keyof bay.OfVisit>} values
   */
  record(kind, values) {
    const before = kind === "leaving" || kind === "departure" ? this.here(kind).findLast((each) => Boolean(each.refused) || !each.tried) : undefined;
    return this.outbox.add(/** @type {bay.MadeOf<K>} */ ({ visit: this.id, kind, person: person(), ...values }), before);
  }
}

/** @param {bay.Work} work */
const stopWords = ({ stop }) => stop[chosen().language]?.[chosen().units] ?? "";

/** @param {bay.Corner} corner */
const fastenersOf = (corner) => `FASTENER.${corner}.`;

/**
 * The sheet that the person who works here now reads, of those that the server made; none of what an older server made.
 *
 * @param {bay.ForAll<bay.Sheet>} [sheets]
 */
export const sheetOf = (sheets) => sheets?.[chosen().language]?.[chosen().units];

/**
 * The plate beside the name of a car; empty where the car goes by its plate.
 *
 * @param {bay.Sheet} sheet
 */
export const plateOf = ({ car, plate }) => (plate === car ? "" : plate);

/**
 * A visit in a list: the car, its plate where that is not its name, and the day.
 *
 * @param {bay.Sheet} sheet
 */
export const titleOf = (sheet) => `${[sheet.car, plateOf(sheet)].filter(Boolean).join(" ")}, ${sheet.day}`;
