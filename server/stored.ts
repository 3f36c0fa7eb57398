/** Bytes that are kept, wherever that is, and read in parts. */
export interface Stored {
  readonly length: number;
  /** What `c.body` sends of it: from a byte to before another one. */
  body: (from: number, to: number) => Uint8Array<ArrayBuffer> | ReadableStream<Uint8Array>;
  /** Begins to read: until `done` is called it is there to be read, whoever drops it meanwhile. */
  open: () => Reading;
}

export interface Reading {
  read: (from: number, to: number) => Promise<Uint8Array<ArrayBuffer>>;
  done: () => void;
}

export function inMemory(bytes: Uint8Array<ArrayBuffer>): Stored {
  return {
    length: bytes.length,
    body: (from, to) => bytes.subarray(from, to),
    open: () => ({ read: async (from, to) => bytes.subarray(from, to), done: () => {} }),
  };
}

/** Parts one after another, each made when there is somebody to take it. */
export function streamOf(parts: AsyncGenerator<Uint8Array, void>): ReadableStream<Uint8Array> {
  return new ReadableStream<Uint8Array>(
    {
      pull: async (to) => {
        const { done, value } = await parts.next();
        if (done) to.close();
        else to.enqueue(value);
      },
      cancel: async () => void (await parts.return()),
    },
    { highWaterMark: 0 },
  );
}
