import fc from "fast-check";
import { expect, test } from "vitest";
import { clientAddress, clientOf, networkOf } from "../../server/client-address.ts";

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

// Documentation addresses of RFC 5737 and RFC 3849; text forms of RFC 4291, 2.2.
test.each([
  ["203.0.113.7", "203.0.113.7", "203.0.113"],
  ["::ffff:203.0.113.7", "203.0.113.7", "203.0.113"],
  ["2001:db8:1:2:3:4:5:6", "2001:0db8:0001:0002", "2001:0db8:0001"],
  ["2001:DB8:1:2::9", "2001:0db8:0001:0002", "2001:0db8:0001"],
  ["2001:db8::", "2001:0db8:0000:0000", "2001:0db8:0000"],
  ["fe80::1%eth0", "fe80:0000:0000:0000", "fe80:0000:0000"],
  ["unknown", "unknown", "unknown"],
])("%s is of the client %s in the network %s", (address, client, network) => {
  expect([clientOf(address), networkOf(address)]).toEqual([client, network]);
});

test("whatever stands in the place of an address is somebody", () => {
  const text = fc.oneof(fc.string(), fc.stringMatching(/^[0-9a-f:.]{0,60}$/), fc.ipV6(), fc.ipV4());
  fc.assert(
    fc.property(text, (address) => {
      expect(typeof networkOf(address)).toBe("string");
      expect(typeof clientOf(address)).toBe("string");
    }),
    { numRuns: 2000, seed: 20261125 },
  );
});
