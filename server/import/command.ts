import { basename, extname } from "node:path";
import { parseArgs } from "node:util";
import { settingsFrom } from "../settings.ts";
import { importFile, takeBack } from "./atlas-file.ts";
import { importText } from "./import-text.ts";
import { mappingOf, readMapOptions, readMappingFile } from "./mapping.ts";
import { ImportError, readSpreadsheet } from "./spreadsheet.ts";

const USAGE =
  'npm run import -- FILE.csv [--map "our_field=Their column"]… [--mapping FILE.json] [--contributor "Their column"] [--name NAME] [--write] [--counts-now], or npm run import -- --undo NAME';

/**
 * Brings a club's spreadsheet into the atlas, or takes an import back as a whole.
 * @returns what came of it
 * @throws Error with the remedy
 */
export async function runImport(args: string[], env: NodeJS.ProcessEnv): Promise<string> {
  const { values, positionals } = readArguments(args);
  const settings = settingsFrom(env, values.demo);
  if (values.undo !== undefined) {
    if (positionals.length > 0 || values.write) {
      throw new ImportError(`--undo takes the import's name alone. Usage: ${USAGE}`);
    }
    const gone = await takeBack(settings, nameOf(values.undo));
    return `Withdrawn: ${gone} tunes of import "${nameOf(values.undo)}". The next start of the atlas makes the fit without them.`;
  }
  const [file, ...more] = positionals;
  if (!file || more.length > 0) throw new ImportError(`Name one file. Usage: ${USAGE}`);
  const sheet = readSpreadsheet(file);
  const mapping = mappingOf(
    {
      ...(values.mapping !== undefined && readMappingFile(values.mapping)),
      ...readMapOptions(values.map),
      ...(values.contributor !== undefined && { contributor: values.contributor }),
    },
    sheet.columns,
  );
  const name = nameOf(values.name ?? basename(file, extname(file)));
  const { write, "counts-now": countsNow } = values;
  const done = await importFile(settings, sheet, mapping, { name, write, countsNow });
  return importText(done, sheet, mapping, { name, write });
}

function readArguments(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        map: { type: "string", multiple: true, default: [] },
        mapping: { type: "string" },
        contributor: { type: "string" },
        name: { type: "string" },
        write: { type: "boolean", default: false },
        "counts-now": { type: "boolean", default: false },
        undo: { type: "string" },
        demo: { type: "boolean", default: false },
      },
    });
  } catch (error) {
    throw new ImportError(`${(error as Error).message}\nUsage: ${USAGE}`);
  }
}

function nameOf(text: string): string {
  const name = text.trim();
  if (name.length > 0 && name.length <= 100) return name;
  throw new ImportError("An import's name has 1 to 100 characters.");
}
