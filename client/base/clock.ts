/** The day where this device is, "2026-11-26": near midnight, and far from Greenwich, it is not the one there. */
export function dayHere(at = new Date()): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** The month where this device is, "2026-11". */
export function monthHere(at = new Date()): string {
  return dayHere(at).slice(0, 7);
}
