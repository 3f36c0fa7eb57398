/** One after another: what passes over all tunes takes a core and much memory, so no two of its kind run at once. */
export class Turns {
  #last: Promise<unknown> = Promise.resolve();

  take<T>(run: () => Promise<T>): Promise<T> {
    const done = this.#last.then(run);
    this.#last = done.catch(() => {});
    return done;
  }
}
