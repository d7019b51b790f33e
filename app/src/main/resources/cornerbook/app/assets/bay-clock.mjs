// How far this tablet's clock is ahead of the server's: entries bear the time as the server has it.
const KEPT = "clockAheadMs";

/** Called with the server's time as it comes in. */
export const learn = (now) => localStorage.setItem(KEPT, String(Date.now() - Date.parse(now)));

/** A moment of this tablet by the server's clock; never later than now, though the clock was put back since. */
export const byServer = (at) => new Date(Math.min(Date.parse(at), Date.now()) - Number(localStorage.getItem(KEPT) ?? 0)).toISOString();
