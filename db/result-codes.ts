/** Primary result codes of SQLite: "Result and Error Codes", sqlite.org/rescode.html. */
export const SQLITE = {
  busy: 5,
  locked: 6,
  read_only: 8,
  io_error: 10,
  corrupt: 11,
  full: 13,
  cannot_open: 14,
  no_database: 26,
} as const;

/** The lower byte of an extended result code. */
export function primaryCode(error: unknown): number | undefined {
  const code = (error as { errcode?: number } | null)?.errcode;
  return code === undefined ? undefined : code & 0xff;
}
