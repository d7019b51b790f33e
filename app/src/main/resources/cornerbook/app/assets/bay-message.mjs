// Messages in ICU syntax, as the catalogues have them: facts by name, {n, plural, one {…} other {…}} with # and =n, and
// {x, select, a {…} other {…}}. An apostrophe is only an apostrophe.
const ARGUMENT = /^\s*(\w+)\s*(?:,\s*(plural|select)\s*,\s*)?/;
const WORD = /^\s*([=\w]+)\s*\{/;

/**
 * The message with these facts in a language; a fact that is missing chooses "none".
 *
 * @param {string} text
 * @param {bay.Facts} facts
 * @param {string} language
 * @returns {string}
 */
export function fill(text, facts, language, counted = "#") {
  let filled = "";
  for (let at = 0; at < text.length; at++) {
    if (text[at] === "{") {
      const end = closing(text, at);
      filled += argument(text.slice(at + 1, end), facts, language, counted);
      at = end;
    } else {
      filled += text[at] === "#" ? counted : text[at];
    }
  }
  return filled;
}

/**
 * @param {string} text
 * @param {bay.Facts} facts
 * @param {string} language
 * @param {string} counted
 */
function argument(text, facts, language, counted) {
  const [start, name, kind] = found(ARGUMENT, text);
  const fact = facts[name];
  if (!kind) {
    if (fact === undefined || fact === null) {
      throw new Error(`The fact ${name} is missing`);
    }
    return String(fact);
  }
  const messages = choices(text.slice(start.length));
  const words = kind === "plural" ? [`=${fact}`, new Intl.PluralRules(language).select(Number(fact))] : [String(fact ?? "none")];
  const message = [...words, "other"].map((each) => messages[each]).find((each) => each !== undefined);
  if (message === undefined) {
    throw new Error(`No choice for ${fact} in ${text}`);
  }
  return fill(message, facts, language, kind === "plural" ? String(fact) : counted);
}

/**
 * The messages of a choice by their words.
 *
 * @param {string} text
 */
function choices(text) {
  /** @type {Record<string, string>} */
  const messages = {};
  for (let rest = text; WORD.test(rest); ) {
    const [start, word] = found(WORD, rest);
    const end = closing(rest, start.length - 1);
    messages[word] = rest.slice(start.length, end);
    rest = rest.slice(end + 1);
  }
  return messages;
}

/**
 * What was found and its parts.
 *
 * @param {RegExp} pattern
 * @param {string} text
 */
function found(pattern, text) {
  const [all, name, kind] = pattern.exec(text) ?? [];
  if (all === undefined || name === undefined) {
    throw new Error(`No name stands in ${text}`);
  }
  return /** @type {const} */ ([all, name, kind]);
}

/**
 * Where the brace closes that opens here.
 *
 * @param {string} text
 * @param {number} open
 */
function closing(text, open) {
  let depth = 0;
  for (let at = open; at < text.length; at++) {
    depth += text[at] === "{" ? 1 : text[at] === "}" ? -1 : 0;
    if (depth === 0) {
      return at;
    }
  }
  throw new Error(`A brace stays open in ${text}`);
}
