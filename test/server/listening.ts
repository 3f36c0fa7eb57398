import { once } from "node:events";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

interface Taken {
  method: string | undefined;
  headers: IncomingMessage["headers"];
  body: string;
}

/**
 * A real HTTP server that answers as it is told, and remembers what it was sent.
 * @param closing gets what closes it
 */
export async function listening(
  answer: (response: ServerResponse, n: number) => void,
  closing: (() => Promise<void>)[],
): Promise<{ url: string; taken: Taken[] }> {
  const taken: Taken[] = [];
  const server = createServer(async (request, response) => {
    let body = "";
    for await (const part of request) body += part;
    taken.push({ method: request.method, headers: request.headers, body });
    answer(response, taken.length);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  closing.push(async () => {
    server.closeAllConnections();
    server.close();
    await once(server, "close");
  });
  const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/a-secret-path`;
  return { url, taken };
}
