// The catalogue of the modules, as the server would send it.
import { readFileSync } from "node:fs";
import { fill } from "../../main/resources/cornerbook/app/assets/bay-message.mjs";

const CATALOGUE = new URL("../../../../words/src/main/resources/cornerbook/words/app/bay/modules.properties", import.meta.url);

/** Lines that end with a backslash go on. */
const messages = new Map(
  readFileSync(CATALOGUE, "utf8").replaceAll(/\\\n\s*/g, "").split("\n").flatMap((line) => {
    const [, key, text] = /^([\w.-]+) = (.*)$/.exec(line) ?? [];
    return key ? [[key, text]] : [];
  }),
);

/**
 * Says the messages of a language.
 *
 * @param {string} language
 */
export const sayIn = (language) => (/** @type {string} */ key, facts = {}) => fill(messages.get(`${key}.${language}`) ?? "", facts, language);
