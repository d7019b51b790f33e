// What a person dictates about the car, as readings at their places. What is not understood is said so, and takes what follows it
// along until the next corner: nothing is guessed.
import { plain, UNITS } from "./bay-lexicon.mjs";
import { cardinal, likeliest, scaleOf, ways } from "./bay-numerals.mjs";
import { isBare } from "./bay-written.mjs";

const TOKEN = /(?<number>\d+(?:[.,]\d+)?(?:\/\d+)?)|(?<word>[a-z°µ%²·]+)|(?<ends>[,;.:!?\n]+)|(?<minus>(?<![\w°%])[-\u2212](?=\s?\d))|(?<=[a-z])[-\u2010\u2011](?=[a-z0-9])|(?<=\d)[-\u2010\u2011](?=[a-z])|(?<inch>["\u2033])|(?<over>\/)|[\s'\u2019+]+|(?<other>\S)/g;
const LONGEST_RUN = 12;

/** Units in which a point before three digits may part thousands, as the server has them too. */
const GROUPED = ["A", "mA", "km", "mi"];
const THOUSANDS = /^[1-9]\d{0,2}\.\d{3}$/;

/**
 * A word, phrase, number or mark of the dictation, and where it stands.
 *
 * @typedef {{ start: number, end: number, number?: string, meanings?: bay.Meaning[], ends?: boolean }} Item
 *
 * A place on the sheet and the step in which it stands.
 * @typedef {{ field: bay.Field, step: bay.Step, folded: boolean }} Place
 */

/**
 * What was dictated in a step.
 *
 * @param {string} text
 * @param {bay.Lexicon} lexicon
 * @param {bay.Step[]} steps
 * @param {bay.Step} step that was open
 * @param {(field: bay.Field) => boolean} applies whether a field has its place now
 * @returns {bay.Heard[]} in the order in which it was said
 */
export function understand(text, lexicon, steps, step, applies) {
  const listener = new Listener(text, lexicon, steps, step, applies);
  return listener.listen();
}

/**
 * The unit in which a field's bare numbers are.
 *
 * @param {bay.Field} field
 */
export const unitOf = (field) => Object.keys(UNITS).find((each) => UNITS[each]?.name === field.suffix.trim()) ?? "";

/**
 * A number of one unit in another that measures the same.
 *
 * @param {number} value
 * @param {string} from
 * @param {string} to
 */
function converted(value, from, to) {
  const [one, other] = [UNITS[from], UNITS[to]];
  return from === to || !one || !other ? value : (value * one.size + (one.zero ?? 0) - (other.zero ?? 0)) / other.size;
}

/**
 * The tokens of a text: phrases by what they mean, the longest first; numbers; where a value ends; and what nobody knows.
 *
 * @param {string} text
 * @param {bay.Lexicon} lexicon
 * @returns {Item[]}
 */
function itemsOf(text, { meanings, longest }) {
  const found = [...plain(text).matchAll(TOKEN)].filter(({ groups = {} }) => Object.values(groups).some((part) => part !== undefined));
  /** @type {Item[]} */
  const items = [];
  for (let at = 0; at < found.length; ) {
    const rest = found.slice(at, at + longest);
    const joins = rest.findIndex(({ groups }) => groups?.word === undefined && !/^\d+$/.test(groups?.number ?? ""));
    let taken = joins < 0 ? rest.length : joins;
    while (taken > 0 && !meanings.has(rest.slice(0, taken).map(([word]) => word).join(" "))) {
      taken--;
    }
    const last = rest[Math.max(taken, 1) - 1];
    const [first] = rest;
    if (!first || !last) {
      break;
    }
    const { number, ends, minus, over, inch } = first.groups ?? {};
    const phrase = rest.slice(0, taken).map(([word]) => word).join(" ");
    const place = { start: first.index ?? 0, end: (last.index ?? 0) + (last[0] ?? "").length };
    /** @type {Partial<Item>} */
    const what = taken > 0 ? { meanings: meanings.get(phrase) } : number ? { number: number.replace(",", ".") } : ends ? { ends: true } : minus ? { meanings: [{ is: "minus" }] } : over ? { meanings: [{ is: "over" }] } : inch ? { meanings: [{ is: "unit", unit: "in" }] } : {};
    items.push({ ...place, ...what });
    at += Math.max(taken, 1);
  }
  return items;
}

class Listener {
  /** @type {bay.Heard[]} */
  #heard = [];

  /** @type {bay.Said[]} */
  #run = [];
  /** Whether the run was ended by a mark; only its unit may still follow. */
  #ended = false;

  /**
   * Where a minus stands whose number follows.
   *
   * @type {number | undefined}
   */
  #minus;

  /** @type {bay.Corner | undefined} */
  #corner;
  /** @type {Set<string> | undefined} */
  #measures;
  #spot = "";
  /** Whether a number was read at the spot that was said; a word still is. */
  #spotTaken = false;
  /** Whether a value came after the names. */
  #valued = false;
  /** The measure and corner at which numbers are read in order, and how many of its places are past; not known after what can be read in two ways. */
  #row = { name: "", past: 0, isKnown: true };

  /**
   * From where on nothing is taken, since a word was not understood.
   *
   * @type {{ start: number, end: number, valued: boolean } | undefined}
   */
  #unclear;
  /** Whether a word that was not understood may have named the measure. */
  #measureUnclear = false;

  /**
   * What is said anew.
   *
   * @type {{ fields: bay.Field[], start: number, end: number } | undefined}
   */
  #again;

  /**
   * @param {string} text
   * @param {bay.Lexicon} lexicon
   * @param {bay.Step[]} steps
   * @param {bay.Step} step
   * @param {(field: bay.Field) => boolean} applies
   */
  constructor(text, lexicon, steps, step, applies) {
    this.text = text;
    this.lexicon = lexicon;
    this.step = step;
    this.applies = applies;
    /** @type {Place[]} */
    this.places = steps.flatMap((each) => each.groups.flatMap(({ fields, folded }) => fields.map((field) => ({ field, step: each, folded }))));
    this.items = itemsOf(text, lexicon);
    this.words = this.items.map(({ meanings }) => meanings?.find(({ is }) => is === "number")?.value ?? (meanings?.some(({ is }) => is === "and") ? /** @type {const} */ ("and") : undefined));
  }

  listen() {
    for (let at = 0; at < this.items.length; ) {
      const next = this.#hear(at);
      const last = this.items[next - 1];
      if (this.#unclear && last && !last.ends && !last.meanings?.some(({ is }) => is === "filler" || is === "and")) {
        this.#unclear.end = last.end;
      }
      at = next;
    }
    this.#flush();
    this.#dropAgain();
    this.#clear();
    return this.#agreed();
  }

  /**
   * Takes what stands at a place; the place after it.
   *
   * @param {number} at
   */
  #hear(at) {
    const item = this.items[at];
    if (!item) {
      return at + 1;
    }
    const { start, end, number, meanings, ends } = item;
    const isNumber = number !== undefined || this.words[at] !== undefined || meanings?.some(({ is }) => ["point", "filler"].includes(is));
    if (this.#minus !== undefined && !isNumber) {
      this.#miss({ start: this.#minus, end });
    }
    if (ends) {
      this.#ended = this.#run.length > 0;
      return at + 1;
    }
    if (number !== undefined) {
      const [value = "", parts] = number.split("/");
      this.#say({ start, end, ...(parts ? { value: number, parts: true } : { value, digits: value.includes(".") ? undefined : value }) });
      return at + 1;
    }
    const whole = cardinal(this.words, at, this.lexicon.toNineteen);
    if (whole) {
      const digits = String(whole.value);
      this.#say({ start, end: this.items[whole.end - 1]?.end ?? end, digits, value: digits });
      return whole.end;
    }
    if (!meanings) {
      this.#miss(item);
      return at + 1;
    }
    return this.#mean(this.#meant(meanings), item, at);
  }

  /**
   * Of several meanings the one that fits what is spoken of: a condition where its measure was named, else the measure.
   *
   * @param {bay.Meaning[]} meanings
   */
  #meant(meanings) {
    const words = meanings.filter(({ is }) => is === "word");
    const isSaidOf = this.places.some(({ field }) => (this.#measures?.has(field.measure) ?? false) && field.words.some(({ written }) => words.some((word) => word.written === written)));
    const others = meanings.filter(({ is }) => is !== "word");
    return isSaidOf || others.length === 0 ? words : others;
  }

  /**
   * @param {bay.Meaning[]} meanings of one kind
   * @param {Item} item
   * @param {number} at
   */
  #mean(meanings, item, at) {
    const [first] = meanings;
    const { is, corner, spot, unit, parts } = first ?? /** @type {bay.Meaning} */ ({ is: "filler" });
    const last = this.#run.at(-1);
    const isOpen = last !== undefined && !this.#ended;
    switch (is) {
      case "filler":
        return at + 1;
      case "minus":
        this.#minus ??= item.start;
        return at + 1;
      case "point":
        this.#say({ start: item.start, end: item.end, point: true });
        return at + 1;
      case "half":
      case "quarter":
        if (isOpen && last.digits) {
          Object.assign(last, { value: `${last.digits}.${is === "half" ? "5" : "25"}`, digits: undefined, end: item.end });
          return at + 1;
        }
        break;
      case "parts":
        if (isOpen && last.value && !last.parts) {
          Object.assign(last, { value: `${last.value}/${parts}`, digits: undefined, parts: true, end: item.end });
          return at + 1;
        }
        break;
      case "over":
        return this.#over(item, at);
      case "unit":
        if (this.#run.length > 0) {
          this.#flush(unit, item.end);
          return at + 1;
        }
        // "Nine thirty-seconds of an inch" has its unit already.
        if (this.#heard.at(-1)?.unit === unit) {
          return at + 1;
        }
        break;
      case "and":
        this.#ended = this.#run.length > 0;
        return at + 1;
      case "corner":
        this.#flush();
        this.#atCorner(corner);
        return at + 1;
      case "spot":
      case "every":
        this.#flush();
        this.#dropAgain();
        this.#named();
        this.#at(spot ?? "EVERY");
        return at + 1;
      case "measure":
        this.#flush();
        this.#ofMeasure(new Set(meanings.flatMap(({ measure }) => measure ?? [])));
        if (spot) {
          this.#at(spot);
        }
        return at + 1;
      case "word":
        this.#flush();
        this.#condition(meanings.flatMap(({ written }) => written ?? []), item);
        return at + 1;
      case "same":
        this.#flush();
        this.#same(item);
        return at + 1;
      case "correct":
        this.#flush();
        this.#correct(item);
        return at + 1;
    }
    this.#miss(item);
    return at + 1;
  }

  /**
   * A fraction: "nine over thirty-two".
   *
   * @param {Item} item
   * @param {number} at
   */
  #over(item, at) {
    const last = this.#run.at(-1);
    const below = this.items[at + 1]?.number ?? cardinal(this.words, at + 1, this.lexicon.toNineteen)?.value;
    const end = this.items[at + 1]?.number ? at + 2 : cardinal(this.words, at + 1, this.lexicon.toNineteen)?.end;
    if (!last?.digits || this.#ended || !below || !/^\d+$/.test(String(below)) || end === undefined) {
      this.#miss(item);
      return at + 1;
    }
    Object.assign(last, { value: `${last.digits}/${below}`, digits: undefined, parts: true, end: this.items[end - 1]?.end });
    return end;
  }

  /** @param {bay.Said} said */
  #say(said) {
    if (this.#ended) {
      this.#flush();
    }
    this.#run.push(this.#minus === undefined ? said : { ...said, start: this.#minus, minus: true });
    this.#minus = undefined;
  }

  /**
   * A word that nobody knows: what was said just before it may have gone on, and what follows may be about something else.
   *
   * @param {Item} item
   */
  #miss({ start, end }) {
    const [first] = this.#ended ? [] : this.#run;
    const from = first?.start ?? start;
    if (first) {
      this.#run = [];
    } else {
      this.#flush();
    }
    this.#minus = undefined;
    this.#unclear = { start: this.#unclear?.start ?? this.#again?.start ?? from, end, valued: this.#unclear?.valued ?? false };
    this.#again = undefined;
  }

  /** Says what was not taken, where something else is spoken of. */
  #clear() {
    if (this.#unclear) {
      const { start, end, valued } = this.#unclear;
      this.#heard.push({ said: this.text.slice(start, end), start, fields: [], why: { key: "not-understood" } });
      this.#measureUnclear ||= valued;
      this.#unclear = undefined;
    }
  }

  /** @param {bay.Corner | undefined} corner */
  #atCorner(corner) {
    this.#dropAgain();
    this.#clear();
    this.#named();
    this.#corner = corner;
  }

  /** @param {Set<string>} measures */
  #ofMeasure(measures) {
    this.#dropAgain();
    this.#named();
    this.#measures = measures;
    this.#measureUnclear = false;
    if (this.places.every(({ field }) => !measures.has(field.measure) || !field.corner)) {
      // Of the whole car: no corner matters.
      this.#clear();
      this.#measureUnclear = false;
    }
  }

  /** @param {string} spot */
  #at(spot) {
    this.#spot = spot;
    this.#spotTaken = false;
  }

  /** After a value a name begins anew, and what was said of the place holds no more. */
  #named() {
    if (this.#valued) {
      this.#spot = "";
      this.#row = { name: "", past: 0, isKnown: true };
    }
    this.#valued = false;
  }

  /**
   * The fields of the one measure that is spoken of; or why there is none.
   *
   * @param {(field: bay.Field) => boolean} fits
   * @param {boolean} leads whether the measure with which the step begins is meant where none was named
   * @returns {bay.Field[] | bay.Facts & { key: string }}
   */
  #fields(fits, leads) {
    const measures = this.#measures;
    const isHere = (/** @type {Place} */ { step }) => step === this.step || (step.corner !== undefined && this.step.corner !== undefined);
    const named = this.places.filter((place) => fits(place.field) && (measures ? measures.has(place.field.measure) : isHere(place)));
    const here = named.filter(isHere);
    const near = here.length > 0 ? here : named;
    const corner = this.#corner ?? this.step.corner;
    const cornered = near.filter(({ field }) => field.corner);
    const ofCar = near.filter(({ field }) => !field.corner);
    if (!corner && cornered.length > 0 && (!measures || ofCar.length === 0)) {
      return { key: "spoken-which-corner" };
    }
    const there = cornered.filter(({ field }) => field.corner === corner);
    const all = there.length > 0 ? there : measures || cornered.length === 0 ? ofCar : [];
    const places = all.filter(({ field }) => this.applies(field));
    if (places.length === 0) {
      return { key: all.some(({ field }) => field.goesOn) ? "record-wheels-first" : "spoken-no-place" };
    }
    const titles = [...new Set(places.map(({ step }) => step.title))];
    if (titles.length > 1) {
      return { key: "spoken-which", choices: titles };
    }
    const shown = places.filter(({ folded }) => !folded);
    const open = shown.length > 0 ? shown : places;
    const [first] = open;
    const kinds = [...new Set(open.map(({ field }) => field.measure))];
    if (kinds.length > 1 && !(leads && !measures)) {
      return { key: "spoken-which", choices: [...new Set(open.map(({ field }) => field.label))] };
    }
    return open.map(({ field }) => field).filter((field) => field.measure === first?.field.measure);
  }

  /**
   * Puts the numbers that were said in a row to their places.
   *
   * @param {string} [unit]
   * @param {number} [end]
   */
  #flush(unit, end) {
    const run = this.#run;
    const [first] = run;
    const last = run.at(-1);
    this.#run = [];
    this.#ended = false;
    if (!first || !last) {
      return;
    }
    this.#valued = true;
    const start = first.start;
    const said = this.text.slice(start, end ?? last.end);
    const again = this.#again?.fields;
    this.#again = undefined;
    if (this.#isUnclear()) {
      return;
    }
    const isPart = run.some(({ parts }) => parts);
    const fits = (/** @type {bay.Field} */ field) => field.words.length === 0 && (isPart || unit ? UNITS[unitOf(field)]?.of === UNITS[unit ?? "in"]?.of : true);
    const fields = again ?? this.#fields(fits, true);
    if (this.#measureUnclear && !again) {
      this.#heard.push({ said, start, fields: [], why: { key: "spoken-measure-unclear" } });
    } else if (!Array.isArray(fields)) {
      this.#heard.push({ said, start, fields: [], why: fields });
    } else {
      this.#read(run, { said, start, unit: unit ?? (isPart ? "in" : undefined) }, fields, again !== undefined);
    }
  }

  /** Whether what is said now is not taken. */
  #isUnclear() {
    if (this.#unclear) {
      this.#unclear.valued = true;
    }
    return this.#unclear !== undefined;
  }

  /**
   * @param {bay.Said[]} run
   * @param {{ said: string, start: number, unit?: string }} about
   * @param {bay.Field[]} fields of one measure in the order of the hands
   * @param {boolean} isAgain
   */
  #read(run, { said, start, unit }, fields, isAgain) {
    const [field] = fields;
    if (!field) {
      return;
    }
    const every = isAgain ? fields.length > 1 : this.#spot === "EVERY" && !this.#spotTaken;
    const isNamed = this.#spot !== "" && !this.#spotTaken;
    const from = isAgain || every ? 0 : this.#from(fields);
    this.#spotTaken = true;
    const open = from === undefined ? [] : fields.slice(from);
    if (open.length === 0) {
      this.#heard.push({ said, start, fields: [], why: from === undefined || !this.#row.isKnown ? { key: "spoken-which", choices: fields.map(({ label }) => label) } : { key: "spoken-too-many" } });
      return;
    }
    const scale = unit ? scaleOf(unit) : field.points ? "plain" : scaleOf(unitOf(field));
    const all = run.length > LONGEST_RUN ? [] : ways(run, scale, run.length);
    const most = every ? 1 : open.length;
    const isIn = (/** @type {string} */ value) => this.#isIn(value, field, unit);
    const grouped = GROUPED.includes(unit ?? unitOf(field)) ? run.find(({ value = "" }) => THOUSANDS.test(value))?.value : undefined;
    if (grouped) {
      this.#row = { name: rowOf(field), past: 0, isKnown: false };
      this.#heard.push({ said, start, fields: [], why: { key: "spoken-ways", ways: [[grouped], [grouped.replace(".", "")]] } });
      return;
    }
    const isRule = isNamed || !["whole", "psi"].includes(scale);
    const can = likeliest(all.filter((values) => values.length <= most && values.every(isIn)), isRule);
    const [values] = can.length === 1 ? can : likeliest(all.filter((each) => each.length <= most), true);
    if (!values || can.length > 1) {
      this.#row = { name: rowOf(field), past: 0, isKnown: false };
      this.#heard.push({ said, start, fields: run.length === 1 ? open.slice(0, 1) : [], why: can.length > 1 ? { key: "spoken-ways", ways: can } : all.length > 0 ? { key: "spoken-too-many" } : { key: "spoken-no-number" } });
      return;
    }
    for (const [index, value] of values.entries()) {
      const places = every ? fields : open.slice(index, index + 1);
      this.#heard.push(isIn(value) ? { said, start, fields: places, text: this.#written(value, field, unit), value, unit } : { said, start, fields: places, why: { key: "cannot-be", value, unit, of: field.unit, ...this.#range(field, unit) } });
    }
    if (!isAgain) {
      this.#row = { name: rowOf(field), past: (from ?? 0) + (every ? fields.length : values.length), isKnown: true };
    }
  }

  /**
   * At which of its places a measure is read next; undefined where it has no such place.
   *
   * @param {bay.Field[]} fields
   */
  #from(fields) {
    if (this.#spot && !this.#spotTaken) {
      const at = fields.findIndex(({ spot }) => spot === this.#spot);
      return at < 0 ? undefined : at;
    }
    const { name, past, isKnown } = this.#row;
    return fields[0] && name === rowOf(fields[0]) ? (isKnown ? past : undefined) : 0;
  }

  /**
   * @param {bay.Field} field
   * @param {string | undefined} unit
   */
  #range(field, unit) {
    const own = unitOf(field);
    return { low: converted(field.low, own, unit ?? own), high: converted(field.high, own, unit ?? own) };
  }

  /**
   * @param {string} value
   * @param {bay.Field} field
   * @param {string | undefined} unit
   */
  #isIn(value, field, unit) {
    const { low, high } = this.#range(field, unit);
    const [top = "", bottom = "1"] = value.split("/");
    const size = Number(top) / Number(bottom);
    return size >= low && size <= high;
  }

  /**
   * As a person would type it.
   *
   * @param {string} value
   * @param {bay.Field} field
   * @param {string | undefined} unit
   */
  #written(value, field, unit) {
    const own = unitOf(field);
    const [top = "", bottom] = value.split("/");
    if (own === "part32" && bottom === "32") {
      return top;
    }
    return unit && (unit !== own || bottom) ? `${value} ${UNITS[unit]?.name}` : value;
  }

  /**
   * A condition, where its measure, corner and place are known.
   *
   * @param {string[]} words each as entries name it
   * @param {{ start: number, end: number }} item
   */
  #condition(words, { start, end }) {
    const said = this.text.slice(start, end);
    this.#valued = true;
    const again = this.#again?.fields;
    this.#again = undefined;
    if (this.#isUnclear()) {
      return;
    }
    const written = (/** @type {bay.Field} */ field) => field.words.filter((word) => words.includes(word.written)).map((word) => word.written);
    const spot = this.#spot;
    const isThere = (/** @type {bay.Field} */ field) => spot === "" || spot === "EVERY" || field.spot === spot || (field.spot === undefined && this.#measures !== undefined);
    const fields = again ?? this.#fields((field) => written(field).length === 1 && isThere(field), false);
    if (this.#measureUnclear && !again) {
      this.#heard.push({ said, start, fields: [], why: { key: "spoken-measure-unclear" } });
    } else if (!Array.isArray(fields)) {
      this.#heard.push({ said, start, fields: [], why: fields });
    } else if (fields.length > 1 && spot !== "EVERY" && !again) {
      this.#heard.push({ said, start, fields: [], why: { key: "spoken-which", choices: fields.map(({ label }) => label) } });
    } else {
      const [field] = fields;
      const [text] = field ? written(field) : [];
      this.#heard.push(text ? { said, start, fields, text } : { said, start, fields, why: { key: "spoken-no-place" } });
    }
  }

  /**
   * The value that was said before.
   *
   * @param {Item} item
   */
  #same({ start, end }) {
    const before = this.#heard.at(-1);
    if (!before?.text || this.#unclear) {
      this.#miss({ start, end });
    } else if (before.value) {
      this.#run = [{ start, end, value: before.value, parts: before.value.includes("/") || undefined }];
      this.#flush(before.unit, end);
    } else {
      this.#condition([before.text], { start, end });
    }
  }

  /**
   * Takes the last value back; the next one goes to its place.
   *
   * @param {Item} item
   */
  #correct({ start, end }) {
    const before = this.#heard.at(-1);
    if (this.#unclear || !before || before.fields.length === 0) {
      this.#miss({ start, end });
      return;
    }
    this.#heard.pop();
    this.#again = { fields: before.fields, start, end };
  }

  /** A correction without its value leaves nothing at its place. */
  #dropAgain() {
    if (this.#again) {
      const { start, end, fields } = this.#again;
      this.#heard.push({ said: this.text.slice(start, end), start, fields, why: { key: "not-understood" } });
      this.#again = undefined;
    }
  }

  /** What was said twice of one place, and otherwise, is not taken; nor a number without a unit beside one in another than the sheet's. */
  #agreed() {
    const cells = this.#heard.flatMap((heard) => heard.fields.map((field) => ({ ...heard, fields: [field] })));
    const others = this.#heard.filter(({ fields }) => fields.length === 0);
    const foreign = new Set(cells.flatMap(({ fields: [field], unit, text }) => (field && unit && text && !isBare(text) ? field.measure : [])));
    /** @type {bay.Heard[]} */
    const agreed = [];
    for (const cell of cells) {
      const [field] = cell.fields;
      const same = cells.filter(({ fields }) => fields[0] === field);
      if (same.some(({ text }) => text !== cell.text)) {
        agreed.push({ ...cell, text: undefined, why: cell.why ?? { key: "spoken-twice" } });
      } else if (cell.value && !cell.unit && foreign.has(field?.measure ?? "")) {
        agreed.push({ ...cell, text: undefined, why: { key: "spoken-two-units" } });
      } else if (same[0] === cell) {
        agreed.push(cell);
      }
    }
    return [...agreed, ...others].sort((one, other) => one.start - other.start);
  }
}

/**
 * Names the places of one measure at one corner.
 *
 * @param {bay.Field} field
 */
const rowOf = ({ measure, corner, goesOn }) => [measure, corner, goesOn].join();
