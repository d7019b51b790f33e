// How far this tablet's clock is ahead of the server's: entries bear the time as the server has it.
const KEPT = "clockAheadMs";
const SAME_MS = 1_000;

const aheadMs = () => Number(localStorage.getItem(KEPT) ?? 0);

/**
 * Called with the server's time as it comes in.
 *
 * @param {string} now
 */
export function learn(now) {
  const learned = Date.now() - Date.parse(now);
  if (Math.abs(learned - aheadMs()) > SAME_MS) {
    localStorage.setItem(KEPT, String(learned));
  }
}

/**
 * A moment of this tablet by the server's clock; never later than now, though the clock was put back since.
 *
 * @param {string} at
 */
export const byServer = (at) => new Date(Math.min(Date.parse(at), Date.now()) - aheadMs()).toISOString();
