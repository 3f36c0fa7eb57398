/** What the atlas or the tune's schema refuses, in the page's language. In English it is shown as they say it. */
export interface RefusalWords {
  /** By the answer's status. */
  statuses: Record<number, string>;
  /** For any other failure of the atlas, 500 and above. */
  failed: string;
  /** Names of fields, by the last part of their path. */
  fields: Record<string, string>;
  /** By an error's code; `limit` is the bound with its unit where it is known, else empty. */
  codes: Record<string, (limit: string) => string>;
  /** What must stand together, by the last part of the path of the field that is told. */
  together: Record<string, string>;
  /** A field's name before what is wrong with it. */
  of: (name: string, sentence: string) => string;
}

export const refusalWords: RefusalWords | null = null;
