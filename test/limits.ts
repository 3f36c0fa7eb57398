// No verdict depends on speed: only what hangs for good reaches these. No test sets a shorter one.

/** For what one test, or what goes before or after it, takes in all. */
export const TEST_ms = 900_000;

/** For one thing waited for, so that the failure names it before the whole test's limit is reached. */
export const WAIT_ms = 300_000;
