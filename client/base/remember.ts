/** Small things this browser remembers. Storage may be full, wiped or forbidden: then it just forgets. */
export function recall<T>(key: string): T | undefined {
  try {
    const text = localStorage.getItem(`hypsotune.${key}`);
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** @returns whether it was kept */
export function remember(key: string, value: unknown): boolean {
  try {
    localStorage.setItem(`hypsotune.${key}`, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export function forget(key: string): void {
  try {
    localStorage.removeItem(`hypsotune.${key}`);
  } catch {
    // Nothing was kept, then.
  }
}
