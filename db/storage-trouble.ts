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

/** What is behind an error, as whoever raised it wrapped it. */
export function causesOf(error: unknown): unknown[] {
  const causes: unknown[] = [];
  for (let one = error; one && !causes.includes(one); one = (one as Error).cause) causes.push(one);
  return causes;
}
