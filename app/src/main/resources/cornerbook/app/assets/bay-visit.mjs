// One visit on this tablet: the sheet, what the book has, and over it what is only here.
import { learn } from "./bay-clock.mjs";
import { chosen, person } from "./bay-person.mjs";
import { fieldsOf } from "./bay-steps.mjs";
import { saysDone, withoutUnit, withUnit } from "./bay-written.mjs";

const SECOND_CHECK = "SECOND_CHECK";
const TIGHT = "TIGHT.";
const CORNERS = ["LF", "RF", "LR", "RR"];

export class Visit extends EventTarget {
  constructor(id, outbox) {
    super();
    this.id = id;
    this.outbox = outbox;
    this.state = { leftOn: {}, readings: {}, rivals: [], ticks: {}, onCar: [] };
    outbox.addEventListener("state", (event) => {
      if (event.detail.visit === id) {
        this.take(event.detail.state);
      }
    });
    outbox.addEventListener("change", () => this.dispatchEvent(new Event("change")));
  }

  /** In the language and the units of the person who works here now. */
  get sheet() {
    return sheetOf(this.sheets);
  }

  /** From the tablet, unless the server was faster; without sheets when it was never here. */
  async load() {
    const kept = await this.outbox.store.get("sheets", this.id);
    if (!this.sheets && sheetOf(kept?.sheets)) {
      Object.assign(this, { sheets: kept.sheets, state: kept.state });
    }
  }

  /** From the server. */
  async fetch() {
    const base = `/bay/visits/${encodeURIComponent(this.id)}`;
    const [sheets, state] = await Promise.all(
      [`${base}/sheet.json`, `${base}/state.json`].map(async (address) => {
        const response = await fetch(address, { signal: AbortSignal.timeout(10_000) });
        this.gone = response.status === 404;
        if (!response.ok) {
          throw new Error(`The server answered ${response.status}`);
        }
        return response.json();
      }),
    );
    this.sheets = sheets;
    this.state = state;
    learn(state.now);
    this.dispatchEvent(new Event("change"));
    // Hands can begin while it goes to the disk.
    this.#keep();
  }

  take(state) {
    this.state = state;
    learn(state.now);
    this.#keep();
    this.dispatchEvent(new Event("change"));
  }

  #keep() {
    return this.outbox.store.put("sheets", { visit: this.id, sheets: this.sheets, state: this.state, keptAt: Date.now() });
  }

  get pending() {
    return this.outbox.of(this.id);
  }

  /** The wheel that the car leaves on at a corner, in the book or only here; undefined until somebody recorded it. */
  leaving(corner) {
    const entry = this.pending.findLast((each) => each.kind === "leaving");
    return (entry?.wheels ?? this.state.leftOn)[corner];
  }

  wheelOf(field) {
    return !field.ofWheel ? "" : (field.goesOn ? this.leaving(field.corner) : this.sheet.arrived[field.corner]) ?? "";
  }

  keyOf(field) {
    return [field.measure, field.corner ?? "", field.spot ?? "", this.wheelOf(field)].join(".");
  }

  /** Whether a field has a place: its wheel is known, and it is not read as the wheel that came already. */
  applies(field) {
    const wheel = this.wheelOf(field);
    return !field.ofWheel || (wheel !== "" && !(field.goesOn && field.onlyNew && wheel === this.sheet.arrived[field.corner]));
  }

  /** What a field shows, and where that is. */
  look(field) {
    const key = this.keyOf(field);
    const entry = this.pending.findLast((each) => each.key === key);
    const stored = this.state.readings[key];
    const rival = this.state.rivals.find((each) => each.key === key);
    const written = entry ? withoutUnit(field, entry.written) : (stored?.shown[chosen().units] ?? "");
    const where = entry?.refused ? "refused" : entry?.held ? "held" : entry ? (entry.seq === undefined ? "writing" : "here") : rival ? "rival" : stored ? "book" : "";
    return { key, entry, stored, rival, written, where };
  }

  /** What was read at a field, here or in the book; what was refused is nothing. */
  read(field) {
    const { where, written, stored } = this.look(field);
    return where === "refused" ? (stored?.shown[chosen().units] ?? "") : written;
  }

  lastOf(field) {
    return field.ofWheel ? this.#ofWheel(field)?.last?.[`${field.measure}.${field.spot ?? ""}`] : field.last;
  }

  expectedOf(field) {
    return field.ofWheel ? this.#ofWheel(field)?.expected?.[`${field.measure}.${field.spot ?? ""}`] : field.expected;
  }

  #ofWheel(field) {
    return this.sheet.wheels[this.wheelOf(field)];
  }

  /** The tick that stands of a step, here or in the book; a fastener's is that of the wheel that goes on. */
  #ticked(tick) {
    const wheel = this.#wheelOfTick(tick);
    const fits = (each) => each?.wheel === wheel;
    return this.pending.findLast((each) => each.tick === tick && !each.refused && fits(each)) ?? [this.state.ticks[tick]].find(fits);
  }

  #wheelOfTick(tick) {
    const [kind, corner] = tick.split(".");
    return kind === "FASTENER" ? this.leaving(corner) : undefined;
  }

  done(tick) {
    return this.#ticked(tick)?.done ?? false;
  }

  #fasteners(corner) {
    return this.sheet.fasteners.order.map((number) => `FASTENER.${corner}.${number}`);
  }

  /** Whether every fastener of a wheel is ticked, or its torque was read, and none was taken back. */
  tight(corner) {
    const ticks = this.#fasteners(corner).map((key) => this.#ticked(key));
    const torque = this.#fieldsOfMeasure("WHEEL_TORQUE").find((field) => field.corner === corner);
    return !ticks.some((tick) => tick && !tick.done) && (ticks.every((tick) => tick?.done) || Boolean(torque && this.read(torque)));
  }

  /** Each tick of a fastener and each torque: which, and of whom. */
  tightenings() {
    const ticked = CORNERS.flatMap((corner) => this.#fasteners(corner)).map((key) => this.#ticked(key)).filter((tick) => tick?.done);
    const written = this.#fieldsOfMeasure("WHEEL_TORQUE").map((field) => this.look(field)).map(({ entry, stored }) => (entry?.refused ? stored : entry ?? stored));
    return [...ticked, ...written.filter(Boolean)];
  }

  tightenedBy() {
    return new Set(this.tightenings().map(({ person: name }) => name));
  }

  /** Whether another person than those has checked them, each of them before the eyes. */
  secondChecked() {
    const check = this.#ticked(SECOND_CHECK);
    return Boolean(check?.done) && this.tightenings().every((each) => each.person !== check.person && check.seen?.includes(each.id));
  }

  get asksSecondCheck() {
    return this.sheet.cautions.some((caution) => caution.key === SECOND_CHECK);
  }

  /** Cautions that are open by all that this tablet knows. */
  openCautions() {
    const has = (key) =>
      (key === "WHEELS_ON" && CORNERS.some((corner) => this.leaving(corner))) ||
      (key === SECOND_CHECK && this.secondChecked()) ||
      (key.startsWith(TIGHT) && this.tight(key.slice(TIGHT.length))) ||
      this.#fieldsOf(key).some((field) => this.applies(field) && saysDone(field, this.read(field)));
    return this.sheet.cautions.filter((caution) => caution.openedBy.some(has) && !has(caution.closedBy));
  }

  /** The step in which a caution is closed. */
  stepThatCloses(caution) {
    return this.sheet.steps.find((step) => (step.kind === "TORQUE" && caution.closedBy.startsWith(TIGHT)) || step.ticks.some((tick) => tick.key === caution.closedBy) || fieldsOf(step).some((field) => `${field.measure}.${field.corner ?? ""}` === caution.closedBy));
  }

  #fieldsOfMeasure(measure) {
    return this.sheet.steps.flatMap(fieldsOf).filter((field) => field.measure === measure && this.applies(field));
  }

  #fieldsOf(key) {
    return this.sheet.steps.flatMap(fieldsOf).filter((field) => `${field.measure}.${field.corner ?? ""}` === key);
  }

  /** What a step waits for, each a field, a tick or the wheels, and of how many places; what most visits do without does not count. */
  progress(step) {
    const fields = step.groups.filter((group) => !group.folded).flatMap((group) => group.fields).filter((field) => this.applies(field));
    // A wheel is tight by its ticks, too; what the wrench showed need not be typed.
    const open = (field) => (field.measure === "WHEEL_TORQUE" ? !this.tight(field.corner) : this.read(field) === "");
    const ticks = step.kind === "TORQUE" ? [] : step.ticks;
    // Its places are not there before it is known which wheels go on.
    const waits = ["CAR", "TORQUE"].includes(step.kind) && fieldsOf(step).some((field) => field.goesOn) && !fields.some((field) => field.goesOn);
    const missing = [
      ...fields.filter(open).map((field) => ({ field })),
      ...ticks.filter((tick) => !this.done(tick.key)).map((tick) => ({ tick })),
      ...(step.kind === "WHEELS" && !CORNERS.some((corner) => this.leaving(corner)) ? [{ wheels: "which-wheels" }] : []),
      ...(waits ? [{ wheels: "first-wheels" }] : []),
    ];
    const of = fields.length + ticks.length + (step.kind === "WHEELS" || waits ? 1 : 0);
    return { missing, done: of - missing.length, of };
  }

  /** A reading; what was never sent is replaced, what the book may have is corrected with a reason. */
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

  /** Says upon which tick it was made, and a check what it was made of: the book does not go by the clocks. */
  tick(tick, done, by = person()) {
    return this.outbox.add({
      visit: this.id, kind: "tick", tick, done, person: by, wheel: this.#wheelOfTick(tick), shown: this.#ticked(tick)?.id,
      seen: tick === SECOND_CHECK && done ? this.tightenings().map(({ id }) => id) : undefined,
    }, this.pending.find((each) => each.tick === tick && each.refused));
  }

  /** Mark of the tool of a kind that this visit is worked with; empty while none is named. */
  tool(kind) {
    return this.pending.findLast((each) => each.kind === "tool" && each.tool === kind)?.toolId ?? this.state.tools?.[kind] ?? "";
  }

  useTool(kind, toolId) {
    return this.outbox.add({ visit: this.id, kind: "tool", tool: kind, toolId, person: person() });
  }

  record(kind, values) {
    const before = kind === "leaving" || kind === "departure" ? this.pending.findLast((each) => each.kind === kind && (each.refused || !each.tried)) : undefined;
    return this.outbox.add({ visit: this.id, kind, person: person(), ...values }, before);
  }
}

/** The sheet that the person who works here now reads, of those that the server made; none of what an older server made. */
export const sheetOf = (sheets) => sheets?.[chosen().language]?.[chosen().units];
