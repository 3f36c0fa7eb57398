import type { Database } from "../db/database.ts";
import { dataRevision } from "../db/decisions.ts";
import { sha256, sha256OfBytes } from "./keys.ts";
import { type Chunk, DOCUMENTS, type DocumentName, writeDocuments } from "./open-documents.ts";
import type { Packed } from "./packed.ts";
import { inMemory } from "./stored.ts";

/** What a file of the open data holds. */
interface Summed {
  /** Unpacked. */
  size_bytes: number;
  /** Of what is unpacked, hexadecimal. */
  sha256: string;
}

/**
 * The open data of one moment, named by what its files hold: the same data made again have the same name.
 * Of each file: what it holds, and where its bytes were put.
 */
export interface Made<Where> {
  revision: string;
  /** The state of the data that it was made of. */
  data_revision: number;
  files: (Where & Summed & { name: DocumentName })[];
}

/** The open data of one moment, to be read until it is dropped. */
export interface Release extends Made<Packed> {
  drop: () => void;
}

/** One of its files. */
export type ReleasedFile = Release["files"][number];

/** Takes a file piece by piece, and says where it put its bytes. */
export interface Packing<Where> {
  write: (chunk: Chunk) => Promise<void>;
  end: () => Promise<Where & Summed>;
}

/** Characters of a revision's name: among all revisions there will ever be, no two have the same 64 bits by chance. */
const NAME_LETTERS = 16;

export async function makeRelease<Where>(
  db: Database,
  demo: boolean,
  packing: (name: DocumentName) => Packing<Where>,
): Promise<Made<Where>> {
  const data_revision = await dataRevision(db);
  const into = new Map(DOCUMENTS.map((name) => [name, packing(name)]));
  await writeDocuments(db, demo, async (name, chunk) => into.get(name)?.write(chunk));
  const files: Made<Where>["files"] = [];
  for (const [name, packed] of into) files.push({ name, ...(await packed.end()) });
  const sums = files.map(({ name, sha256 }) => `${sha256}  ${name}\n`).join("");
  const revision = (await sha256(sums)).slice(0, NAME_LETTERS);
  return { revision, data_revision, files };
}

/** Makes it in memory and packs nothing: for where there is no better way. */
export async function releaseInMemory(db: Database, demo: boolean): Promise<Release> {
  return { ...(await makeRelease(db, demo, plainPacking)), drop: () => {} };
}

function plainPacking(): Packing<Packed> {
  const parts: Chunk[] = [];
  return {
    write: async (chunk) => void parts.push(chunk),
    end: async () => {
      const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
      const summed = { size_bytes: bytes.length, sha256: await sha256OfBytes(bytes) };
      return { stored: inMemory(bytes), pieces: null, ...summed };
    },
  };
}

/** Revisions that are kept, the newest among them. */
const KEPT = 2;

/** The newest releases that were asked for. */
export class Releases {
  #kept: Release[] = [];
  readonly #most: number;
  /** Grows when all of it is dropped, so that what was begun before is not kept after. */
  #dropped = 0;

  constructor(most = KEPT) {
    this.#most = most;
  }

  /** Newest first. */
  get all(): readonly Release[] {
    return this.#kept;
  }

  async keep(made: Promise<Release>): Promise<Release> {
    const dropped = this.#dropped;
    const release = await made;
    if (dropped === this.#dropped) {
      const kept = [release, ...this.#kept.filter(({ revision }) => revision !== release.revision)];
      this.#keepOnly(kept.slice(0, this.#most));
    } else {
      // Whoever waited for it begins to read it first.
      setTimeout(release.drop);
    }
    return release;
  }

  forget(): void {
    this.#dropped++;
    this.#keepOnly([]);
  }

  #keepOnly(kept: Release[]): void {
    for (const one of this.#kept) if (!kept.includes(one)) one.drop();
    this.#kept = kept;
  }
}
