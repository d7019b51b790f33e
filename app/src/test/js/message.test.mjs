import assert from "node:assert/strict";
import { test } from "node:test";
import { fill } from "../../main/resources/cornerbook/app/assets/bay-message.mjs";

test("a fact stands where its name does", () => {
  assert.equal(fill("Go to: {step}", { step: "Lift" }, "en"), "Go to: Lift");
});

test("a plural chooses by the language: nothing is one in French and many in English", () => {
  const message = "{n, plural, one {# thing} other {# things}}";
  assert.equal(fill(message, { n: 0 }, "en"), "0 things");
  assert.equal(fill(message, { n: 0 }, "fr"), "0 thing");
  assert.equal(fill(message, { n: 1 }, "en"), "1 thing");
});

test("an exact count comes before the rule", () => {
  assert.equal(fill("{n, plural, =1 {alone} one {#} other {#}}", { n: 1 }, "en"), "alone");
});

test("a select chooses by its word, another by other, nothing by none", () => {
  const message = "{who, select, none {nobody} ada {her} other {{who} there}}";
  assert.equal(fill(message, {}, "en"), "nobody");
  assert.equal(fill(message, { who: "ada" }, "en"), "her");
  assert.equal(fill(message, { who: "Bo" }, "en"), "Bo there");
});

test("a number sign outside of a plural, and an apostrophe, are themselves", () => {
  assert.equal(fill("{person}'s #", { person: "Ada" }, "en"), "Ada's #");
});

test("a count goes on inside a choice", () => {
  assert.equal(fill("{n, plural, other {{x, select, a {# a} other {# b}}}}", { n: 3, x: "a" }, "en"), "3 a");
});

test("what a person typed is never read as a message", () => {
  assert.equal(fill("{written}", { written: "{n} #" }, "en"), "{n} #");
});

test("a fact that is missing is a mistake of the program", () => {
  assert.throws(() => fill("{step}", {}, "en"), /step is missing/);
});
