import assert from "node:assert/strict";
import { test } from "node:test";
import { byServer, learn } from "../../main/resources/cornerbook/app/assets/bay-clock.mjs";
import { newTablet } from "./tablet.mjs";

const HOUR_MS = 3_600_000;
// A minute and an hour are told apart; a busy machine may stand still for seconds.
const NEAR_MS = 20_000;

test("entries bear the time as the server has it", () => {
  newTablet();
  learn(new Date(Date.now() - HOUR_MS).toISOString());
  const entered = Date.now() - 60_000;
  assert.ok(Math.abs(Date.parse(byServer(new Date(entered).toISOString())) - (entered - HOUR_MS)) < NEAR_MS);
});

test("nothing is entered later than now, though the clock was put back", () => {
  newTablet();
  const later = new Date(Date.now() + HOUR_MS).toISOString();
  assert.ok(Date.parse(byServer(later)) <= Date.now());
});
