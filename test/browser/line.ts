import { createServer, type IncomingMessage, request, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** A line between browser and atlas that can be cut, or lose answers on their way. */
export interface Line {
  url: string;
  cut: () => void;
  mend: () => void;
  /** From now on what is written reaches the atlas, and its answer nobody. */
  swallowAnswers: () => void;
  /** Idempotency-Keys of the tunes that came through. */
  keys: string[];
  /** Serves another text in place of the atlas's under a path; null for "not found", undefined for its own again. */
  replace: (path: string, change: Change) => void;
  /** As new: mended, nothing replaced, no keys seen. */
  renew: () => void;
  close: () => Promise<void>;
}

type Change = ((text: string) => string) | null | undefined;

/** Opens a line to an atlas, on a port of its own. */
export async function openLine(atlas: string): Promise<Line> {
  let state: "open" | "cut" | "swallowing" = "open";
  const keys: string[] = [];
  const replaced = new Map<string, Change>();

  function pass(asked: IncomingMessage, answer: ServerResponse): void {
    if (state === "cut") return void asked.socket.destroy();
    const path = asked.url ?? "/";
    const change = replaced.get(path);
    if (change === null) return void answer.writeHead(404).end();
    const swallow = state === "swallowing" && asked.method === "POST";
    if (asked.method === "POST") keys.push(String(asked.headers["idempotency-key"]));
    // Packed it could not be changed, and over so short a line packing is more work than it saves.
    const { "accept-encoding": _, ...headers } = { ...asked.headers, connection: "close" };
    const onward = request(atlas + path, { method: asked.method, headers }, (got) => {
      if (swallow) return void got.resume();
      if (!change) {
        answer.writeHead(got.statusCode ?? 502, got.headers);
        return void got.pipe(answer);
      }
      const { "content-length": __, etag: ___, ...rest } = got.headers;
      let text = "";
      got.setEncoding("utf8").on("data", (part) => {
        text += part;
      });
      got.on("end", () => answer.writeHead(got.statusCode ?? 502, rest).end(change(text)));
    });
    onward.on("error", () => asked.socket.destroy());
    asked.pipe(onward);
  }

  const server = createServer(pass);
  await new Promise<void>((done) => server.listen(0, "localhost", done));
  return {
    url: `http://localhost:${(server.address() as AddressInfo).port}`,
    cut: () => {
      state = "cut";
      server.closeAllConnections();
    },
    mend: () => {
      state = "open";
    },
    swallowAnswers: () => {
      state = "swallowing";
    },
    keys,
    replace: (path, change) => void replaced.set(path, change),
    renew: () => {
      state = "open";
      replaced.clear();
      keys.length = 0;
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
    },
  };
}
