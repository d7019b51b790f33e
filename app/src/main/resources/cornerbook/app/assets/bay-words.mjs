// What the modules say by themselves, in the language of the person who works here now.
import catalogue from "./bay-catalogue.mjs";
import { fill } from "./bay-message.mjs";
import { chosen } from "./bay-person.mjs";

export const LANGUAGES = Object.keys(catalogue);

/** A message by its key, with these facts. */
export const say = (key, facts = {}) => fill(catalogue[chosen().language][key], facts, chosen().language);

/** A corner as this person calls it. */
export const cornerName = (corner) => say(corner);

/** What was refused or failed: words of the server, or a message with its facts. */
export const told = (said) => (typeof said === "string" ? said : say(said.key, said));

/** Several things with commas between them. */
export const listed = (words) => words.filter(Boolean).join(", ");

export const number = (value) => new Intl.NumberFormat(habits(), { maximumFractionDigits: 3, useGrouping: false }).format(value);

export const moment = (at) => new Date(at).toLocaleString(habits());

/** Numbers and times as where the shop is. */
const habits = () => `${chosen().language}-CA`;
