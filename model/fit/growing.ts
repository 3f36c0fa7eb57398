type Numbers = Float64Array | Float32Array | Int32Array | Uint8Array;

/** The same numbers in an array twice as long, the new ones filled with one value. */
export function twiceAsLong<T extends Numbers>(numbers: T, fill = 0): T {
  const longer = new (numbers.constructor as new (length: number) => T)(2 * numbers.length);
  longer.set(numbers);
  if (fill !== 0) longer.fill(fill, numbers.length);
  return longer;
}
