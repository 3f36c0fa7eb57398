/** Another process holds the database for longer than anyone would wait. Nothing was written. */
export class StorageBusy extends Error {
  constructor(cause: unknown) {
    super("Another process holds the database.", { cause });
  }
}

/** There is no room left for what was to be written. Nothing was written. */
export class StorageFull extends Error {
  constructor(cause?: unknown) {
    super("There is no room left for the database.", { cause });
  }
}

/** The disk takes nothing: it fails, or may only be read. Nothing was written. */
export class StorageFailing extends Error {
  constructor(cause: unknown) {
    super("The disk takes nothing.", { cause });
  }
}

const TROUBLES = { busy: StorageBusy, full: StorageFull, failing: StorageFailing };
/** What of a storage's troubles it is, as it goes from thread to thread. */
export type StorageTrouble = keyof typeof TROUBLES;

/** What of a storage's troubles is behind an error, if it is one. */
export function troubleOf(error: unknown): StorageTrouble | undefined {
  const causes = causesOf(error);
  const kinds = Object.entries(TROUBLES);
  const found = kinds.find(([, Kind]) => causes.some((cause) => cause instanceof Kind));
  return found?.[0] as StorageTrouble | undefined;
}

export const troubled = (trouble: StorageTrouble, cause: unknown): Error =>
  new TROUBLES[trouble](cause);

/** What is behind an error, as whoever raised it wrapped it. */
export function causesOf(error: unknown): unknown[] {
  const causes: unknown[] = [];
  for (let one = error; one && !causes.includes(one); one = (one as Error).cause) causes.push(one);
  return causes;
}
