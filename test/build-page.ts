import { join } from "node:path";
import { buildMissing } from "../server/build-missing.ts";

/** Builds page and geography once before the suite, so that servers started by several tests do not build them at once. */
export default function setup(): Promise<void> {
  return buildMissing({ geographyDir: join("data", "geography"), pageDir: "dist" });
}
