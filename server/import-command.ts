import { DrizzleQueryError } from "drizzle-orm/errors";
import { causesOf } from "../db/storage-trouble.ts";
import { runImport } from "./import/command.ts";

try {
  console.log(await runImport(process.argv.slice(2), process.env));
} catch (error) {
  // What wraps a failure of the database repeats a tune's figures, which belong on no screen.
  const said = causesOf(error).find((cause) => !(cause instanceof DrizzleQueryError));
  console.error((said as Error).message);
  process.exitCode = 1;
}
