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

/** What an error of the file system means for storage; itself where it means nothing for it. */
export function storageTrouble(error: unknown): unknown {
  const { code } = error as { code?: string };
  if (code === "ENOSPC" || code === "EDQUOT") return new StorageFull(error);
  if (code === "EIO" || code === "EROFS") return new StorageFailing(error);
  return error;
}

/** What is behind an error, as whoever raised it wrapped it. */
export function causesOf(error: unknown): unknown[] {
  const causes: unknown[] = [];
  for (let one = error; one && !causes.includes(one); one = (one as Error).cause) causes.push(one);
  return causes;
}
