/** D1 allows 100 bound parameters a statement. */
export const IDS_AT_ONCE = 90;

export function chunks<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
