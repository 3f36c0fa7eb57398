import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/** Every example in a docstring of the model, `@example call // answer`, is run and gives its answer. */

const MODEL = join(import.meta.dirname, "../../model");

const examples = readdirSync(MODEL, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) =>
    [
      ...readFileSync(join(MODEL, file), "utf8").matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gm),
    ].map(([, call = "", answer = ""]) => ({ file, call, answer })),
  );

test("there are examples to run", () => {
  expect(examples.length).toBeGreaterThanOrEqual(8);
});

test.each(examples)("$file: $call", async ({ file, call, answer }) => {
  const module: Record<string, unknown> = await import(join(MODEL, file));
  const run = (code: string) =>
    new Function(...Object.keys(module), `return (${code});`)(...Object.values(module));
  const [got, expected] = [run(call), run(answer)];
  if (typeof expected === "number") expect(got).toBeCloseTo(expected, 3);
  else expect(got).toEqual(expected);
});
