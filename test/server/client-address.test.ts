import { expect, test } from "vitest";
import { clientAddress } from "../../server/client-address.ts";

test("without a proxy of one's own, what is said to be forwarded counts for nothing", () => {
  expect(clientAddress("192.0.2.1", "203.0.113.9", 0)).toBe("192.0.2.1");
  expect(clientAddress(undefined, undefined, 0)).toBe("unknown");
});

test("behind proxies the outermost of them says who asks, whatever the client wrote before", () => {
  expect(clientAddress("127.0.0.1", "203.0.113.9", 1)).toBe("203.0.113.9");
  expect(clientAddress("127.0.0.1", "made up, 203.0.113.9", 1)).toBe("203.0.113.9");
  expect(clientAddress("127.0.0.1", "made up, 203.0.113.9, 10.0.0.2", 2)).toBe("203.0.113.9");
});

test("a proxy that forwards no address leaves its own", () => {
  expect(clientAddress("127.0.0.1", undefined, 1)).toBe("127.0.0.1");
  expect(clientAddress("127.0.0.1", "203.0.113.9", 2)).toBe("127.0.0.1");
});
