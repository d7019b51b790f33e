// Work that the customer has not agreed to waits at its place: what is missing, what it costs, and each way on by a tap.
import { h, note } from "./bay-dom.mjs";
import { chosen } from "./bay-person.mjs";
import { say } from "./bay-words.mjs";

/** Why a shop charges nothing, as the server knows it; behind them a person's own words. */
const REASONS = ["SAFETY", "OWN_FAULT", "GOODWILL"];

/**
 * In the language and the units of the person who works here now.
 *
 * @param {bay.ForAll<string> | undefined} words
 */
const here = (words) => words?.[chosen().language]?.[chosen().units] ?? "";

/**
 * What a field says of work that is charged for; the same text means that nothing has to be drawn anew.
 *
 * @param {bay.Visit} visit
 * @param {bay.Asked | undefined} asked
 */
export const shapeOf = (visit, asked) => (asked ? JSON.stringify([asked.work, asked.held, asked.entry?.id, asked.stored, visit.outbox.linked, visit.state.asking?.name, visit.state.asking?.telephone, visit.state.asking?.law, visit.state.asking?.lines]) : "");

/**
 * What stands below the field.
 *
 * @param {bay.Visit} visit
 * @param {bay.Field} field
 * @param {bay.Asked} asked
 * @returns {HTMLElement[]}
 */
export function workAsked(visit, field, asked) {
  const { work, held, free } = asked;
  if (held) {
    return holds(visit, field, work);
  }
  const said = settledWords(visit, asked);
  const again = h("button", { type: "button", className: "quiet", onclick: () => visit.record("work", { work: work.key, answer: "ASKED_AGAIN" }) }, say("held-ask-again"));
  return [said ? note(asked.entry ? "here" : "book", said) : note("asks", here(work.stop)), ...(free ? [h("div", { className: "row" }, again)] : [])];
}

/**
 * What was said to work, here or in the book; empty while nothing was.
 *
 * @param {bay.Visit} visit
 * @param {bay.Asked} asked
 */
function settledWords(visit, { entry, stored }) {
  if (!entry) {
    return stored ?? "";
  }
  if (entry.kind === "agreed") {
    return say("held-agreed-here", { name: entry.name });
  }
  return entry.answer === "AS_LINE"
    ? say("held-as-line", { words: visit.state.asking?.lines.find(({ key }) => key === entry.line)?.words ?? "" })
    : say("held-free-here", { reason: reasonWords(entry.reason ?? ""), person: entry.person });
}

/** @param {string} reason */
const reasonWords = (reason) => (REASONS.includes(reason) ? say("held-free-why", { reason }) : reason);

/**
 * @param {bay.Visit} visit
 * @param {bay.Field} field
 * @param {bay.Work} work
 */
function holds(visit, field, work) {
  const { asking } = visit.state;
  const amount = here(work.amount);
  const law = here(asking?.law);
  /**
   * @param {string} words
   * @param {() => unknown} onclick
   */
  const button = (words, onclick) => h("button", { type: "button", className: "quiet", onclick }, words);
  const lines = (asking?.lines ?? []).map(({ key, words }) => button(say("held-as-line", { words }), () => visit.record("work", { work: work.key, answer: "AS_LINE", line: key })));
  return [
    note("wrong", amount ? say("held-costs", { sentence: here(work.stop), amount }) : say("held-no-price", { sentence: here(work.stop) })),
    ...(work.price === undefined ? [] : [byTelephone(visit, field, work, work.price, amount)]),
    h("div", { className: "row" }, ...lines, showHere(visit, work), button(say("held-take-back"), () => visit.takeBack(field))),
    withoutCharge(visit, field, work),
    ...(law ? [h("p", { className: "law" }, law)] : []),
  ];
}

/**
 * Who agreed, at which number, and to how much: one tap where both stand there already.
 *
 * @param {bay.Visit} visit
 * @param {bay.Field} field
 * @param {bay.Work} work
 * @param {string} price
 * @param {string} amount
 */
function byTelephone(visit, field, work, price, amount) {
  const { asking } = visit.state;
  const id = `held.${field.measure}.${field.corner ?? ""}`;
  const name = h("input", { id: `${id}.name`, type: "text", maxLength: 200, autocomplete: "off", value: asking?.name ?? "", oninput: () => update() });
  const number = h("input", { id: `${id}.number`, type: "text", inputMode: "tel", maxLength: 200, autocomplete: "off", value: asking?.telephone ?? "" });
  const agree = h("button", { type: "button", onclick: () => visit.record("agreed", { work: work.key, name: name.value.trim(), contact: number.value.trim() || undefined, price }) }, say("held-telephone", { amount }));
  const update = () => {
    agree.disabled = name.value.trim() === "";
  };
  update();
  const call = asking?.telephone ? h("a", { className: "button quiet", href: `tel:${asking.telephone.replaceAll(/[^0-9+*#]/g, "")}` }, say("held-call", { number: asking.telephone })) : asking && !asking.mayCall ? note("asks", say("held-not-called", { name: asking.name })) : null;
  return h("div", { className: "held" },
    call,
    h("div", { className: "held-who" },
      h("div", { className: "field" }, h("label", { htmlFor: name.id }, say("held-name")), name),
      h("div", { className: "field" }, h("label", { htmlFor: number.id }, say("held-number")), number)),
    agree);
}

/**
 * The estimate is made by the server: without a link it waits.
 *
 * @param {bay.Visit} visit
 * @param {bay.Work} work
 */
function showHere(visit, work) {
  const address = `/visits/${encodeURIComponent(visit.id)}/estimate`;
  if (!visit.outbox.linked) {
    return note("asks", say("held-show-later"));
  }
  return work.price === undefined
    ? h("a", { className: "button quiet", href: address }, say("held-price-it"))
    : h("form", { action: `${address}/work`, method: "post" }, h("input", { type: "hidden", name: "work", value: work.key }), h("button", { type: "submit", className: "quiet" }, say("held-show")));
}

/**
 * A tap on the reason; own words are typed first.
 *
 * @param {bay.Visit} visit
 * @param {bay.Field} field
 * @param {bay.Work} work
 */
function withoutCharge(visit, field, work) {
  /** @param {string} reason */
  const free = (reason) => visit.record("work", { work: work.key, answer: "WITHOUT_CHARGE", reason });
  const words = h("input", { id: `held.${field.measure}.${field.corner ?? ""}.why`, type: "text", maxLength: 200, autocomplete: "off" });
  const keep = h("button", { type: "button", className: "quiet", disabled: true, onclick: () => free(words.value.trim()) }, say("held-keep"));
  words.addEventListener("input", () => (keep.disabled = words.value.trim() === ""));
  const own = h("div", { className: "held-who", hidden: true }, h("div", { className: "field" }, h("label", { htmlFor: words.id }, say("held-free-words")), words), keep);
  const other = h("button", { type: "button", className: "quiet", onclick: () => {
    own.hidden = false;
    words.focus();
  } }, say("held-free-why", { reason: undefined }));
  return h("fieldset", { className: "held-free" }, h("legend", {}, say("held-free")), h("div", { className: "row" }, ...REASONS.map((reason) => h("button", { type: "button", className: "quiet", onclick: () => free(reason) }, say("held-free-why", { reason }))), other), own);
}
