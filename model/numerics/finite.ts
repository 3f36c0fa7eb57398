/** Guards at the model's doors: a number that is none is refused by name, never carried into an answer. */

/** @throws RangeError naming the first field that is given and not finite */
export function requireFinite(fields: Record<string, number | undefined>): void {
  for (const [name, value] of Object.entries(fields)) {
    if (value !== undefined && !Number.isFinite(value)) {
      throw new RangeError(`${name} must be a finite number, not ${value}.`);
    }
  }
}

/** @throws RangeError naming the first field that is given and not finite and above 0 */
export function requirePositive(fields: Record<string, number | undefined>): void {
  for (const [name, value] of Object.entries(fields)) {
    if (value !== undefined && !(Number.isFinite(value) && value > 0)) {
      throw new RangeError(`${name} must be a positive number, not ${value}.`);
    }
  }
}
