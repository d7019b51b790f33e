// What browsers have and the compiler's libraries do not know yet.

interface Array<T> {
  /** ECMA-262, edition of 2023. */
  findLast(fits: (value: T) => boolean): T | undefined;
}

interface Element {
  checkVisibility(): boolean;
}

interface ARIAMixin {
  ariaInvalid: string | null;
}

/** Where the browser has one (Shape Detection API, W3C draft). */
declare var BarcodeDetector:
  | { new (options: { formats: string[] }): { detect(source: CanvasImageSource): Promise<{ rawValue: string }[]> }; getSupportedFormats(): Promise<string[]> }
  | undefined;

/** The one function of the library that reads QR codes. */
declare function jsQR(pixels: Uint8ClampedArray, width: number, height: number): { data: string } | null;
