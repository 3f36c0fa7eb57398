import { z } from "zod";
import { trimmed } from "./quantities.ts";

/** How long a challenge can be solved for, and which tune its proof lets in: under the atlas's signature with the rest. */
const data = trimmed({
  until: z.number().describe("Unix time, s"),
  tune: z.string().describe("SHA-256 of the tune it was asked for"),
});

/** A proof of work asked for in a flood. */
export const challenge = trimmed({
  parameters: trimmed({
    algorithm: z.string().describe("PBKDF2/SHA-256"),
    nonce: z.string().describe("Hexadecimal, as salt, keyPrefix and derivedKey are"),
    salt: z.string(),
    cost: z.number().describe("Iterations"),
    keyLength: z.number().describe("Bytes"),
    keyPrefix: z.string(),
    data,
  }),
  signature: z.string(),
});
export type Challenge = z.infer<typeof challenge>;

/** What a sender hands in for it. */
export const proof = z.object({
  challenge,
  solution: z.object({ counter: z.number(), derivedKey: z.string() }),
});

export const HOW_TO_SOLVE =
  "Only in a flood (429): find a counter (0, 1, 2, …) for which PBKDF2 with HMAC-SHA-256, of the nonce's bytes followed by the counter " +
  "as 32 bits, big-endian, as the password, gives a key that begins with keyPrefix; some 256 tries. Send the same tune again with the header " +
  'Proof-Of-Work: the Base64 of the JSON {"challenge": this, "solution": {"counter", "derivedKey"}}. It holds for that tune, once, until data.until';
