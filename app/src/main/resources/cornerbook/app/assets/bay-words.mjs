// What the modules say by themselves, in the language of the person who works here now.
import catalogue from "./bay-catalogue.mjs";
import { fill } from "./bay-message.mjs";
import { chosen } from "./bay-person.mjs";
import { withMark } from "./bay-written.mjs";

export const LANGUAGES = Object.keys(catalogue);

/**
 * A message by its key, with these facts.
 *
 * @param {string} key
 * @param {bay.Facts} [facts]
 */
export function say(key, facts = {}) {
  const { language } = chosen();
  const message = catalogue[language]?.[key];
  if (message === undefined) {
    throw new Error(`There is no ${key} in ${language}`);
  }
  return fill(message, facts, language);
}

/**
 * A corner as this person calls it.
 *
 * @param {bay.Corner} corner
 */
export const cornerName = (corner) => say(corner);

/**
 * What was refused or failed: words of the server, or a message with its facts.
 *
 * @param {bay.Sentence} said
 */
export const told = (said) => (typeof said === "string" ? said : say(said.key, said));

/**
 * Several things with commas between them.
 *
 * @param {string[]} words
 */
export const listed = (words) => words.filter(Boolean).join(", ");

/** @param {number} value */
export const number = (value) => new Intl.NumberFormat(habits(), { maximumFractionDigits: 3, useGrouping: false }).format(value);

/**
 * A value as it was typed, with the decimal mark of this person's language.
 *
 * @param {string} text
 */
export const asHere = (text) => withMark(text, number(0.5).charAt(1));

/** @param {string} at */
export const moment = (at) => new Date(at).toLocaleString(habits());

/** Numbers and times as where the shop is. */
const habits = () => `${chosen().language}-CA`;
