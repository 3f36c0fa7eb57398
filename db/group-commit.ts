import type { Database, Statement } from "./database.ts";
import { causesOf, StorageBusy, StorageFailing } from "./storage-trouble.ts";

interface Waiting {
  statements: Statement[];
  done: () => void;
  failed: (error: unknown) => void;
}

/** How long a commit waits for company, ms: a fraction of what it costs by itself on slow storage. */
const GATHER_ms = 1;
/** Statements that share one commit at most: D1 allows 1,000 queries an invocation. */
const MOST_TOGETHER = 300;

const isOfAll = (cause: unknown) => cause instanceof StorageBusy || cause instanceof StorageFailing;

/**
 * Writes that arrive while another commit is on its way share the next one, so that many submissions cost one
 * flush to disk. Each is acknowledged only after its own commit; each is all or nothing.
 */
export function groupCommit(db: Database): (statements: Statement[]) => Promise<void> {
  const waiting: Waiting[] = [];
  let busy = false;

  async function drain(): Promise<void> {
    busy = true;
    while (waiting.length > 0) {
      // A commit blocks; what is nearly ready comes along if it is given a moment.
      await new Promise((ready) => setTimeout(ready, GATHER_ms));
      const together = take();
      try {
        await run(together.flatMap((w) => w.statements));
        for (const { done } of together) done();
      } catch (error) {
        // Each would wait as long again for whoever holds the database, or for the disk.
        if (causesOf(error).some(isOfAll)) {
          for (const { failed } of together) failed(error);
          continue;
        }
        // One bad write must not fail its neighbours: each on its own.
        for (const one of together) await run(one.statements).then(one.done, one.failed);
      }
    }
    busy = false;
  }

  function take(): Waiting[] {
    let count = 0;
    const fits = waiting.findIndex((w) => {
      count += w.statements.length;
      return count > MOST_TOGETHER;
    });
    const together =
      fits < 1 ? waiting.splice(0, fits === 0 ? 1 : waiting.length) : waiting.splice(0, fits);
    return together;
  }

  async function run(statements: Statement[]): Promise<void> {
    const [first, ...rest] = statements;
    if (first) await db.batch([first, ...rest]);
  }

  return (statements) =>
    new Promise((done, failed) => {
      waiting.push({ statements, done, failed });
      if (!busy) void drain();
    });
}
