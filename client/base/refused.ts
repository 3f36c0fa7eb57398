/** A file or link that is not taken, in words a person can act on; the line of the file where there is one. */
export class Refused extends Error {
  readonly line: number | undefined;
  constructor(reason: string, line?: number) {
    super(reason);
    this.line = line;
  }
}
