import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { newTablet, serve } from "./tablet.mjs";

let tablet;
let Outbox;

beforeEach(async () => {
  tablet = newTablet();
  ({ Outbox } = await import("../../main/resources/cornerbook/app/assets/bay-outbox.mjs"));
});

const reading = (values = {}) => ({ visit: "v", kind: "reading", person: "Ada", written: "5.0 mm", ...values });
const answer = (id, status, sentence = "") => ({ id, status, sentence, pointer: "" });
const each = (status) => ({ entries }) => [200, { answers: entries.map(({ id }) => answer(id, status)) }];

test("an entry leaves the tablet when the server says that it is in the book", async () => {
  serve(each("stored"));
  const outbox = new Outbox(tablet.store);
  await outbox.add(reading());
  await outbox.send();
  assert.deepEqual(outbox.entries, []);
  assert.deepEqual(await tablet.store.all("outbox"), []);
});

test("without a link it stays, outlives a restart, and is sent under the same identity", async () => {
  globalThis.fetch = async () => {
    throw new TypeError("no link");
  };
  const first = new Outbox(tablet.store);
  const { id } = await first.add(reading());
  await first.send();
  assert.equal(first.linked, false);
  const asked = serve(each("already"));
  const again = new Outbox(tablet.store);
  await again.load();
  assert.equal(again.entries[0].id, id);
  await again.send();
  assert.equal(asked[0].body.entries[0].id, id);
  assert.deepEqual(again.entries, []);
  // A try that the first one planned.
  await first.drop(first.entries[0]);
});

test("one that the book refuses stays with its reason and keeps no other back", async () => {
  serve(({ entries }) => [200, { answers: entries.map(({ id, written }) => (written === "99 mm" ? answer(id, "refused", "99 mm cannot be.") : answer(id, "stored"))) }]);
  const outbox = new Outbox(tablet.store);
  await outbox.add(reading({ written: "99 mm" }));
  await outbox.add(reading());
  await outbox.send();
  assert.deepEqual(outbox.refused.map(({ written, refused }) => [written, refused]), [["99 mm", "99 mm cannot be."]]);
});

test("what the tablet itself has to say of an entry it keeps as a message with its facts", async () => {
  serve(each("conflict"));
  const outbox = new Outbox(tablet.store);
  await outbox.add({ visit: "v", kind: "tick", tick: "ROCKED", done: true, person: "Ada" });
  await outbox.send();
  assert.deepEqual(outbox.refused[0].refused, { key: "taken-back" });
});

test("the one entry that the server cannot read is found among the others", async () => {
  serve(({ entries }) => (entries.some(({ written }) => written === "odd") ? [400, {}] : each("stored")({ entries })));
  const outbox = new Outbox(tablet.store);
  for (const written of ["1 mm", "2 mm", "odd", "3 mm"]) {
    await outbox.add(reading({ written, held: true }));
  }
  for (const entry of [...outbox.entries]) {
    await outbox.amend(entry, { held: false });
  }
  await outbox.send();
  assert.deepEqual(outbox.entries.map(({ written, refused }) => [written, refused]), [["odd", { key: "server-answered", status: 400 }]]);
});

test("what waits for a reason, or for a PIN, is not sent", async () => {
  const asked = serve(each("stored"));
  tablet.kept.set("me", JSON.stringify({ person: "Ada", workers: ["Ada"], people: ["Ada", "Bo"], chosenBy: {} }));
  const outbox = new Outbox(tablet.store);
  await outbox.add(reading({ held: true }));
  await outbox.add(reading({ person: "Bo" }));
  await outbox.send();
  assert.equal(asked.length, 0);
  assert.equal(outbox.waiting.length, 2);
});

test("a refusal without a reason is sent no more, too", async () => {
  const asked = serve(each("refused"));
  const outbox = new Outbox(tablet.store);
  await outbox.add(reading());
  await outbox.send();
  assert.equal(asked.length, 1);
  assert.deepEqual(outbox.refused[0].refused, { key: "refused-silently" });
});

test("a note is kept and sent no more", async () => {
  const asked = serve(each("refused"));
  const outbox = new Outbox(tablet.store);
  await outbox.add(reading());
  await outbox.send();
  await outbox.amend(outbox.entries[0], { note: true });
  await outbox.send();
  assert.equal(asked.length, 1);
  assert.equal(outbox.notes.length, 1);
  assert.equal(outbox.waiting.length, 0);
});

test("what is changed or dropped before it is on the disk is there once, or not at all", async () => {
  const { store } = tablet;
  // A slow disk.
  const outbox = new Outbox({ ...store, put: async (name, value) => {
    await new Promise((resolve) => setTimeout(resolve, 5));
    return store.put(name, value);
  } });
  const adding = [outbox.add(reading({ held: true })), outbox.add(reading({ held: true }))];
  const [kept, dropped] = outbox.entries;
  await Promise.all([...adding, outbox.amend(kept, { reason: "MISREAD" }), outbox.drop(dropped)]);
  assert.deepEqual((await store.all("outbox")).map(({ id, reason }) => [id, reason]), [[kept.id, "MISREAD"]]);
});
