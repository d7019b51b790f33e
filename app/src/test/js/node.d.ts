// What the tests use of Node.js.
declare module "node:test" {
  export function test(name: string, run: () => unknown): void;
  export function beforeEach(run: () => unknown): void;
}

declare module "node:assert/strict" {
  const assert: {
    ok(value: unknown, message?: string): asserts value;
    equal<T>(actual: unknown, expected: T, message?: string): asserts actual is T;
    deepEqual(actual: unknown, expected: unknown, message?: string): void;
    throws(run: () => unknown, message: RegExp): void;
  };
  export default assert;
}

declare module "node:fs" {
  export function readFileSync(path: URL, encoding: string): string;
}

declare module "node:process" {
  export const argv: string[];
}

declare module "node:url" {
  export function pathToFileURL(path: string): URL;
}

declare module "node:crypto" {
  export const webcrypto: Crypto;
}
