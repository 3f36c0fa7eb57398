import { gunzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { seeded } from "../../seed-demo/random.ts";
import {
  type InPieces,
  PackingInPieces,
  PIECE_bytes,
  unpackedPart,
} from "../../server/gzip-in-pieces.ts";
import { inMemory } from "../../server/stored.ts";

const { uniform } = seeded(3);
const textOf = (bytes: number) => {
  const lines: string[] = [];
  for (let length = 0; length <= bytes; length += 40) lines.push(`${uniform()}`.padEnd(39));
  return Buffer.from(lines.join("\n").slice(0, bytes));
};

async function packed(
  whole: Buffer,
  chunk: number,
): Promise<InPieces & { bytes: Uint8Array<ArrayBuffer> }> {
  const parts: Uint8Array[] = [];
  const packing = new PackingInPieces((part) => parts.push(part));
  for (let at = 0; at < whole.length; at += chunk)
    await packing.write(whole.subarray(at, at + chunk));
  const pieces = await packing.end();
  const bytes = new Uint8Array(Buffer.concat(parts));
  return { bytes, stored: inMemory(bytes), pieces };
}

const read = async (stream: ReadableStream) =>
  Buffer.from(await new Response(stream).arrayBuffer());

test.each([
  ["nothing", 0, 1000],
  ["less than a piece", 5000, 333],
  ["a piece", PIECE_bytes, 70_000],
  ["three and a bit, in chunks", 3 * PIECE_bytes + 17, 99_991],
  ["three and a bit, at once", 3 * PIECE_bytes + 17, 4 * PIECE_bytes],
])("%s: an ordinary gzip, and the same unpacked piece by piece", async (_, size, chunk) => {
  const whole = textOf(size);
  const file = await packed(whole, chunk);
  expect(gunzipSync(file.bytes).equals(whole)).toBe(true);
  const browsers = new Blob([file.bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  expect((await read(browsers)).equals(whole)).toBe(true);
  const all = await read(unpackedPart(file, 0, Number.POSITIVE_INFINITY));
  expect(all.equals(whole)).toBe(true);
});

test("a part takes the pieces it lies in and no others: it comes out of a file that is damaged everywhere else", async () => {
  const whole = textOf(5 * PIECE_bytes);
  const file = await packed(whole, PIECE_bytes);
  const [, , two, three, four, five] = file.pieces as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  file.bytes.fill(0xff, 0, two).fill(0xff, three, four).fill(0xff, five);
  const parts = [
    [whole.length - 1, whole.length - 1],
    [2 * PIECE_bytes, 3 * PIECE_bytes - 1],
    [2 * PIECE_bytes + 1000, 2 * PIECE_bytes + 1999],
  ] as const;
  const asked = parts.map(async ([first, last]) => {
    const part = await read(unpackedPart(file, first, last));
    expect(part.equals(whole.subarray(first, last + 1))).toBe(true);
  });
  await Promise.all(asked);
  // The test sees damage.
  await expect(read(unpackedPart(file, 0, 0))).rejects.toThrow();
  // And one that fails keeps nobody else waiting.
  expect(await read(unpackedPart(file, 4 * PIECE_bytes, 4 * PIECE_bytes + 9))).toHaveLength(10);
});

test("what cannot be put anywhere ends the packing with its own error", async () => {
  let put_bytes = 0;
  const packing = new PackingInPieces((bytes) => {
    put_bytes += bytes.length;
    if (put_bytes > PIECE_bytes / 2) throw new Error("no room");
  });
  const pack = async () => {
    for (let n = 0; n < 5; n++) await packing.write(textOf(PIECE_bytes));
    return packing.end();
  };
  await expect(pack()).rejects.toThrow("no room");
  await expect(packing.write(textOf(10))).rejects.toThrow("no room");
  await expect(packing.end()).rejects.toThrow("no room");
});
