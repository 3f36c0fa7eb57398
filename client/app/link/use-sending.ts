import { useState } from "preact/hooks";
import { linkWords as words } from "../../texts/link.ts";

export interface Sending {
  /** Whether the system has a sheet to share by. */
  hasSheet: boolean;
  send: () => Promise<void>;
  copy: () => Promise<void>;
  /** What came of it, for everyone to hear. */
  said: string;
}

/** A link handed on: by the system's share sheet, or copied. */
export function useSending(link: () => string, title: string): Sending {
  const [said, setSaid] = useState("");
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link());
      setSaid(words.copied);
    } catch {
      setSaid(words.copyByHand);
    }
  };
  const send = async () => {
    try {
      await navigator.share({ title, url: link() });
    } catch (error) {
      // Closed without sending: that is an answer too.
      if ((error as Error).name !== "AbortError") await copy();
    }
  };
  return { hasSheet: typeof navigator.share === "function", send, copy, said };
}

/** The address of a view with what it shows. */
export function addressOf(view: string, text: string): string {
  return `${location.origin}${location.pathname}#/${view}?${text}`;
}
