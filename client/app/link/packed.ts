/** A list as a piece of an address: JSON in UTF-8 and base64url. */
export function packed(list: unknown): string {
  const bytes = new TextEncoder().encode(JSON.stringify(list));
  const base64 = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return base64.replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** @throws Error when the text is no packed list, or part of it is missing */
export function unpacked(text: string): unknown {
  const binary = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
  return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
}
