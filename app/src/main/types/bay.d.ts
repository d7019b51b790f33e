// What the tablet and its server tell each other, and what the modules of the bay sheet pass on. The types of what the server
// sends are BaySheet, BayState, Me and EntryAnswer: ModulesTypedTest holds them to these. What is absent is left out.
declare namespace bay {
  type Corner = "LF" | "RF" | "LR" | "RR";
  type AtCorners = Partial<Record<Corner, string>>;

  /** By the tag of the language, and in it by the name of the units. */
  type ForAll<T> = Record<string, Record<string, T>>;

  // The sheet of a visit.

  interface Sheet {
    visit: string;
    assets: string;
    car: string;
    plate: string;
    day: string;
    odometer: Odometer;
    steps: Step[];
    arrived: AtCorners;
    planned: AtCorners;
    plannedHint: string;
    fills: Fill[];
    wheels: Record<string, WheelCard>;
    fasteners?: Fasteners;
    cautions: Caution[];
    partsSeen: Record<"CORNER" | "CAR", Record<string, string>>;
    people: string[];
    tools: Tool[];
    limits: Limit[];
    matters: Matter[];
  }

  interface Matter {
    words: string;
    day: string;
    set?: string;
  }

  interface Odometer {
    label: string;
    unit: string;
    low: number;
    high: number;
    expected?: Expected;
  }

  interface Fill {
    set: string;
    hint: string;
    wheelAt: AtCorners;
  }

  interface Tool {
    kind: string;
    title: string;
    steps: string[];
    options: Option[];
  }

  interface Option {
    id: string;
    label: string;
  }

  type Kind = "FIELDS" | "CAR" | "WHEELS" | "TORQUE" | "DEPART";

  interface Step {
    id: string;
    kind: Kind;
    title: string;
    tab: string;
    corner?: Corner;
    cautions: Mind[];
    groups: Group[];
    ticks: Tick[];
  }

  interface Mind {
    words: string;
    source: string;
    address?: string | null;
  }

  interface Group {
    title: string;
    hints: Mind[];
    fields: Field[];
    folded: boolean;
    soundAtOnce: string[];
  }

  interface Field {
    measure: string;
    corner?: Corner;
    spot?: string;
    ofWheel: boolean;
    goesOn: boolean;
    onlyNew: boolean;
    label: string;
    shortLabel?: string;
    unit: string;
    suffix: string;
    words: Choice[];
    points: boolean;
    low: number;
    high: number;
    last?: Last;
    expected?: Expected;
  }

  /** A place for a reading of a wheel that has no corner yet; the field's corner is the one that it may go to. */
  interface StoredField extends Field {
    wheel: string;
  }

  interface Choice {
    written: string;
    label: string;
    undone: boolean;
  }

  interface Tick {
    key: string;
    label: string;
  }

  interface Last {
    written: string;
    day: string;
  }

  interface Range {
    low: number;
    high: number;
  }

  interface Expected {
    low: number;
    high: number;
    asks: string;
  }

  /** Between what values a reading lies that needs no word. */
  interface Limit {
    measure: string;
    corner?: Corner;
    wheel?: string;
    low: number;
    high: number;
    unsafe: boolean;
    sentence: string;
    endedBy?: string;
    point?: string;
  }

  interface WheelCard {
    set: string;
    setName: string;
    season: string;
    storePlace?: string;
    came?: Corner;
    tyre: string;
    last: Record<string, Last>;
    expected: Record<string, Expected>;
  }

  interface Fasteners {
    count: number;
    order: number[];
    torque: string;
    unit: string;
    thread: string;
    retorque: string;
  }

  interface Caution {
    key: string;
    sentence: string;
    openedBy: string[];
    closedBy: string;
  }

  /** What keeps the car from leaving: work that is not ended, or a finding of the book's. */
  interface OpenPoint {
    key: string;
    sentence: string;
    /** Where it was read, when only this tablet knows it. */
    corner?: Corner;
    closedBy?: string;
    unsafe: boolean;
  }

  // What the book has of a visit.

  interface State {
    now: string;
    whereabouts: string;
    odometer: StoredOdometer;
    leftOn: AtCorners;
    readings: Record<string, Stored>;
    rivals: Rival[];
    ticks: Record<string, Ticked>;
    photos: Photo[];
    tools: Record<string, string>;
    air: Partial<Record<Corner, ForAll<Air>>>;
    unsafe: Unsafe[];
    onCar: string[];
    departed?: Departed;
    remarks: Record<string, string>;
    advised: Advised[];
    asking?: Asking;
    plans: Plan[];
  }

  /** Where the set goes that comes off. */
  interface Shelf {
    tag?: string | null;
    place?: string | null;
    lies: boolean;
    sentence?: string | null;
  }

  interface Plan {
    set: string;
    wheelAt: AtCorners;
    hint: ForAll<string>;
  }

  interface Advised {
    key: string;
    sentence: ForAll<string>;
    declinedBy?: string;
    corners: Corner[];
    stop?: ForAll<string>;
  }

  interface Asking {
    name: string;
    telephone?: string;
    mayCall: boolean;
    law?: ForAll<string>;
    works: Work[];
    lines: Line[];
  }

  interface Work {
    key: string;
    places: string[];
    holds: boolean;
    stop: ForAll<string>;
    amount?: ForAll<string>;
    price?: string;
    settled?: ForAll<string>;
    free: boolean;
  }

  interface Line {
    key: string;
    words: string;
  }

  interface StoredOdometer {
    written: string;
    shown: Record<string, string>;
  }

  interface Unsafe {
    key: string;
    sentence: ForAll<string>;
  }

  interface Stored {
    id: string;
    written: string;
    shown: Record<string, string>;
    person?: string;
  }

  interface Rival {
    id: string;
    key: string;
    written: string;
    person: string;
    standing?: string;
  }

  interface Air {
    set: string;
    from: string;
    limit: Limit;
  }

  interface Ticked {
    id: string;
    done: boolean;
    person: string;
    wheel?: string;
    seen: string[];
    reason?: string;
  }

  interface Photo {
    id: string;
    corner?: Corner;
    part?: string;
    person: string;
    madeAt: string;
    onSheet: boolean;
  }

  interface Departed {
    person: string;
    time: string;
    reasons: Reason[];
  }

  interface Reason {
    caution: string;
    sentence: string;
    reason: string;
  }

  // Who works here.

  interface Me {
    person?: string;
    workers: string[];
    people: string[];
    chosen: Chosen;
    chosenBy: Record<string, Chosen>;
  }

  interface Chosen {
    units: string;
    look: string;
    walk: string;
    language: string;
  }

  // Entries: as they are made, as they wait on the tablet, and what the server answers.

  interface Answer {
    id: string;
    status: string;
    sentence: string;
    pointer: string;
  }

  /** What the server says of a batch of entries, or of a photo. */
  interface Answered extends Partial<Answer> {
    answers?: Answer[];
    state?: State;
  }

  interface OfVisit {
    visit: string;
    person: string;
  }

  interface Reading extends OfVisit {
    kind: "reading";
    /** Names its field and wheel, as the state does. */
    key: string;
    written: string;
    measure: string;
    corner?: Corner;
    spot?: string;
    wheel?: string;
    goesOn: boolean;
    /** The reading that was shown when this one was typed, which it corrects. */
    shown?: string;
    reason?: string;
    /** Whether it waits for its reason. */
    held?: boolean;
  }

  interface TickEntry extends OfVisit {
    kind: "tick";
    tick: string;
    done: boolean;
    wheel?: string;
    shown?: string;
    seen?: string[];
    /** Why it is left open, when it is not done. */
    reason?: string;
  }

  interface RemarkEntry extends OfVisit {
    kind: "remark";
    topic: string;
    words: string;
  }

  interface DeclinedEntry extends OfVisit {
    kind: "declined";
    advice: string;
    declined: boolean;
    saidBy?: string;
  }

  /** The customer agreed by telephone to work that was held. */
  interface AgreedEntry extends OfVisit {
    kind: "agreed";
    work: string;
    name: string;
    contact?: string;
    /** Before taxes, as the book wrote it. */
    price: string;
  }

  /** What else was said of work that was held. */
  interface WorkEntry extends OfVisit {
    kind: "work";
    work: string;
    answer: "WITHOUT_CHARGE" | "AS_LINE" | "ASKED_AGAIN";
    line?: string;
    reason?: string;
  }

  interface ToolEntry extends OfVisit {
    kind: "tool";
    tool: string;
    toolId: string;
  }

  /** With the date codes and sensors that were read, each by its corner. */
  interface Leaving extends OfVisit {
    kind: "leaving";
    wheels: AtCorners;
    shown: AtCorners;
    [read: `dateCode.${string}` | `sensor.${string}`]: string;
  }

  /** The odometer, read again. */
  interface PutRight extends OfVisit {
    kind: "put right";
    odometer: string;
    /** What the tablet showed before. */
    seen: string;
    reason?: string;
    /** Whether it waits for its reason. */
    held?: boolean;
    /** Whether a person said that it is so, however unlikely. */
    sure?: boolean;
  }

  /** Where the car is. */
  interface SaidState extends OfVisit {
    kind: "state";
    state: string;
  }

  /** What stands in the wrong place, to where it belongs. */
  interface MoveEntry extends OfVisit {
    kind: "move";
    thing: "READING" | "TICK" | "PHOTO";
    /** Its id. */
    moved: string;
    /** The visit of the right car; absent for this one. */
    to?: string;
    /** The right corner; absent where it stays at its own. */
    corner?: Corner;
    /** Whether it comes in the place of what was read there already. */
    instead?: boolean;
  }

  interface RivalAnswer extends OfVisit {
    kind: "answer";
    rival: string;
    take: boolean;
  }

  interface PhotoEntry extends OfVisit {
    kind: "photo";
    corner?: Corner;
    blob: Blob;
  }

  interface PhotoChoice extends OfVisit {
    kind: "photo choice";
    photo: string;
    part?: string;
    onSheet: boolean;
  }

  interface DepartureEntry extends OfVisit {
    kind: "departure";
    reasons: Record<string, string>;
    acknowledgedBy?: string;
  }

  /** A value that was typed where none belongs; a person says where it goes, and it is never sent as it is. */
  interface Stray extends OfVisit {
    kind: "stray";
    written: string;
  }

  type Made = Reading | Stray | TickEntry | RemarkEntry | DeclinedEntry | AgreedEntry | WorkEntry | ToolEntry | Leaving | PutRight | SaidState | MoveEntry | RivalAnswer | PhotoEntry | PhotoChoice | DepartureEntry;
  type MadeOf<K> = Extract<Made, { kind: K }>;

  interface Waiting {
    id: string;
    at: string;
    /** Its place on the tablet's disk; absent until it is there. */
    seq?: number;
    /** Whether it may have reached the server. */
    tried?: boolean;
    held?: boolean;
    refused?: Sentence;
    /** Whether it was the server that failed at it, and how often. */
    fault?: boolean;
    failed?: number;
    /** Whether its time was refused and learned anew. */
    timed?: boolean;
    /** Kept by a person and sent no more; an older page kept the words themselves. */
    note?: boolean | string;
  }

  type Entry = Made & Waiting;
  type EntryOf<K> = MadeOf<K> & Waiting;

  // What the modules pass on.

  type Outbox = import("./bay-outbox.mjs").Outbox;
  type Visit = import("./bay-visit.mjs").Visit;
  type TypingPace = import("./bay-gauge.mjs").TypingPace;
  type Tray = import("./bay-tray.mjs").Tray;
  type View = import("./bay-sheet.mjs").SheetView;

  type Facts = Record<string, unknown>;

  /** Words of the server, or a message of the tablet with its facts. */
  type Sentence = string | (Facts & { key: string });

  /** What a step waits for. */
  type Missing = { field: Field } | { tick: Tick } | { wheels: string };

  /** What hands left open, and why. */
  interface LeftOpen {
    key: string;
    missing: Missing;
    reason: string;
    person: string;
  }

  /** What an odometer was likely meant to be. */
  interface Likely {
    value: number;
    slip: string;
  }

  // Spoken readings.

  /** What a phrase means to whoever says it. */
  interface Meaning {
    is: "corner" | "spot" | "measure" | "word" | "unit" | "parts" | "number" | "point" | "minus" | "over" | "and" | "half" | "quarter" | "same" | "correct" | "every" | "filler";
    corner?: Corner;
    spot?: string;
    measure?: string;
    written?: string;
    unit?: string;
    /** Of a whole, as 32 of thirty-seconds. */
    parts?: number;
    value?: number;
  }

  /** By which phrases things are said, in one language. */
  interface Lexicon {
    meanings: Map<string, Meaning[]>;
    /** Words of the longest phrase. */
    longest: number;
    toNineteen: Set<number>;
  }

  /** How numbers of a unit are said where nobody says a point. */
  type Scale = "tenths" | "volts" | "psi" | "whole" | "plain";

  /** A number, or the point in one, as it was said. */
  interface Said {
    start: number;
    end: number;
    /** As it would be typed; absent for a point. */
    value?: string;
    /** Of a whole number. */
    digits?: string;
    point?: boolean;
    minus?: boolean;
    /** Whether it is a fraction. */
    parts?: boolean;
  }

  /** What was understood of a dictation, or was not. */
  interface Heard {
    said: string;
    start: number;
    /** Where it belongs; none where that is not known. */
    fields: Field[];
    /** What would be typed there; absent where nothing is taken. */
    text?: string;
    /** The number without its unit, where it is one, and the unit that was said. */
    value?: string;
    unit?: string;
    why?: Facts & { key: string };
  }

  interface Progress {
    missing: Missing[];
    done: number;
    of: number;
  }

  type Where = "" | "writing" | "here" | "held" | "book" | "refused" | "rival";

  /** Work at a field that is charged for. */
  interface Asked {
    work: Work;
    /** Whether it waits for a word. */
    held: boolean;
    /** Whether it is without charge. */
    free: boolean;
    /** What was said to it and is only here. */
    entry?: EntryOf<"agreed"> | EntryOf<"work">;
    /** What was said to it, as the book has it. */
    stored?: string;
  }

  interface Look {
    key: string;
    entry?: EntryOf<"reading">;
    stored?: Stored;
    rival?: Rival;
    written: string;
    where: Where;
  }

  interface KeptVisit {
    visit: string;
    sheets: ForAll<Sheet>;
    state: State;
    keptAt: number;
  }

  interface Stores {
    outbox: Entry;
    sheets: KeptVisit;
  }

  interface Store {
    all<N extends keyof Stores>(name: N): Promise<Stores[N][]>;
    get<N extends keyof Stores>(name: N, key: IDBValidKey): Promise<Stores[N] | undefined>;
    put<N extends keyof Stores>(name: N, value: Stores[N]): Promise<IDBValidKey>;
    remove(name: keyof Stores, key: IDBValidKey): Promise<void>;
  }

  type Child = Node | string | null | undefined | false;

  /** Of an element, by the names that scripts use; an attribute that has no such name by its own. */
  type Properties<E> = Partial<Omit<E, "list">> & { [attribute: `aria-${string}` | `data-${string}`]: string; role?: string; list?: string };
}
