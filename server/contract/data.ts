import { z } from "zod";
import { num } from "./quantities.ts";
import { safety } from "./safety.ts";

export const data = z.strictObject({
  revision: z.string().describe("Follows from what the files hold"),
  before: z.array(z.string()).describe("Revisions before it whose files are still there"),
  fit: z.string(),
  files: z.array(
    z.strictObject({
      name: z.string(),
      address: z.string().describe("What is there never changes"),
      media_type: z.string(),
      size_bytes: num,
      sha256: z.string().describe("Hexadecimal, of the file as it is unpacked"),
    }),
  ),
  dictionary: z.string(),
  licence: z.strictObject({ name: z.string(), url: z.string() }),
  citation: z.string(),
  demo: z.boolean(),
  safety,
});
