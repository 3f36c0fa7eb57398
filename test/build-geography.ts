import { join } from "node:path";
import { ensureGeography } from "../server/geography/build.ts";

/** Builds places and elevations once before the tests that read them. */
export default async function setup(): Promise<void> {
  await ensureGeography(join("data", "geography"), { log: console.log });
}
