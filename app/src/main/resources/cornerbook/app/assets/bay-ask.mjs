// Asks the server, and waits only so long.
const ANSWER_MS = 10_000;

/** The compiler's libraries do not know it yet. */
const { timeout } = /** @type {{ timeout: (ms: number) => AbortSignal }} */ (/** @type {unknown} */ (AbortSignal));

/**
 * What the server answers; fails when it does not in time.
 *
 * @param {string} address
 * @param {RequestInit} [request]
 */
export const ask = (address, request = {}, waitMs = ANSWER_MS) => fetch(address, { ...request, signal: timeout(waitMs) });
