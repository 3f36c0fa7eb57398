const encoder = new TextEncoder();

/** Keyed hashes under the atlas's secret, and random keys. All of it Web Crypto, so it runs at the edge too. */
export interface Keys {
  /** HMAC-SHA-256 of a text under one purpose, hex. */
  hash(
    purpose: "contributor" | "home" | "idempotency" | "client" | "check" | "import" | "challenge",
    text: string,
  ): Promise<string>;
  /** A receipt that follows from an idempotency key's hash, so a repeated submission gets the same one again. */
  receiptFor(keyHash: string): Promise<string>;
}

export async function openKeys(secret: string): Promise<Keys> {
  if (secret.length < 16) {
    throw new Error(
      "ATLAS_SECRET must be at least 16 characters long; leave it unset to have one made.",
    );
  }
  const key = await crypto.subtle.importKey(
    "raw",
    encoder.encode(secret),
    { name: "HMAC", hash: "SHA-256" },
    false,
    ["sign"],
  );
  const sign = async (text: string) =>
    new Uint8Array(await crypto.subtle.sign("HMAC", key, encoder.encode(text)));
  return {
    hash: async (purpose, text) => toHex(await sign(`${purpose}|${text}`)),
    receiptFor: async (keyHash) => toBase64Url(await sign(`receipt|${keyHash}`)),
  };
}

/** SHA-256 of a text, hex. */
export const sha256 = (text: string): Promise<string> => sha256OfBytes(encoder.encode(text));

/** The same of bytes. */
export async function sha256OfBytes(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  return toHex(new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)));
}

/** An unguessable receipt: 256 random bits. */
export function randomReceipt(): string {
  return toBase64Url(crypto.getRandomValues(new Uint8Array(32)));
}

/** A tune's id: 96 random bits, hex. */
export function randomId(): string {
  return toHex(crypto.getRandomValues(new Uint8Array(12)));
}

function toHex(bytes: Uint8Array): string {
  return Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
}

function toBase64Url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}
