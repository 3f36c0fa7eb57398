import { parseArgs } from "node:util";

/** Runs a command that takes one folder, and prints what came of it, or in one sentence why nothing did. */
export async function runOnFolder(
  name: string,
  run: (folder: string) => Promise<string>,
): Promise<void> {
  try {
    const { positionals } = parseArgs({
      allowPositionals: true,
      options: { demo: { type: "boolean" } },
    });
    const [folder, ...more] = positionals;
    if (!folder || more.length > 0) throw new Error(`Name one folder: npm run ${name} -- FOLDER`);
    console.log(await run(folder));
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}
