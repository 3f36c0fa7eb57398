import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/tunes.ts";
import { sha256, sha256OfBytes } from "./keys.ts";
import { type Chunk, DOCUMENTS, type DocumentName, writeDocuments } from "./open-documents.ts";
import type { Packed } from "./packed.ts";

/** One file of the open data, complete. */
export type ReleasedFile = Packed & {
  name: DocumentName;
  /** Unpacked. */
  size_bytes: number;
  /** Of what is unpacked, hexadecimal. */
  sha256: string;
};

/** The open data of one moment, named by what its files hold: the same data made again have the same name. */
export interface Release {
  revision: string;
  /** The state of the data that it was made of. */
  data_revision: number;
  files: ReleasedFile[];
}

/** Takes a file piece by piece. */
export interface Packing {
  write: (chunk: Chunk) => Promise<void>;
  end: () => Promise<Packed & Pick<ReleasedFile, "size_bytes" | "sha256">>;
}

/** Characters of a revision's name: among all revisions there will ever be, no two have the same 64 bits by chance. */
const NAME_LETTERS = 16;

export async function makeRelease(
  db: Database,
  demo: boolean,
  packing: (name: DocumentName) => Packing,
): Promise<Release> {
  const data_revision = await dataRevision(db);
  const into = new Map(DOCUMENTS.map((name) => [name, packing(name)]));
  await writeDocuments(db, demo, async (name, chunk) => into.get(name)?.write(chunk));
  const files: ReleasedFile[] = [];
  for (const [name, packed] of into) files.push({ name, ...(await packed.end()) });
  const sums = files.map(({ name, sha256 }) => `${sha256}  ${name}\n`).join("");
  const revision = (await sha256(sums)).slice(0, NAME_LETTERS);
  return { revision, data_revision, files };
}

/** Packs nothing and keeps all of it until it is hashed: for where there is no better way. */
export function plainPacking(): Packing {
  const parts: Chunk[] = [];
  return {
    write: async (chunk) => void parts.push(chunk),
    end: async () => {
      const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
      return { bytes, pieces: null, size_bytes: bytes.length, sha256: await sha256OfBytes(bytes) };
    },
  };
}

/** Revisions that stay when newer ones are made. */
const KEPT = 2;

/** The newest releases that were asked for. */
export class Releases {
  #kept: Release[] = [];
  /** Grows when all of it is dropped, so that what was begun before is not kept after. */
  #dropped = 0;

  /** Newest first. */
  get all(): readonly Release[] {
    return this.#kept;
  }

  async keep(made: Promise<Release>): Promise<Release> {
    const dropped = this.#dropped;
    const release = await made;
    if (dropped === this.#dropped) {
      const others = this.#kept.filter(({ revision }) => revision !== release.revision);
      this.#kept = [release, ...others].slice(0, KEPT);
    }
    return release;
  }

  forget(): void {
    this.#dropped++;
    this.#kept = [];
  }
}
