import { expect, test } from "vitest";
import { isFine } from "./licences.ts";

test.each([
  ["MIT", true, true],
  ["(MIT OR CC0-1.0)", true, true],
  ["MIT AND Zlib", true, true],
  ["GPL-3.0-only OR MIT", true, true],
  ["MIT OR GPL-3.0-only AND ISC", true, true],
  ["(MIT OR GPL-3.0-only) AND ISC", true, true],
  ["LGPL-3.0-or-later", false, true],
  ["Apache-2.0 AND LGPL-3.0-or-later AND MIT", false, true],
  ["Apache-2.0 AND GPL-3.0-only", false, false],
  ["(MIT OR ISC) AND GPL-3.0-only", false, false],
  ["(MIT AND GPL-3.0-only) OR GPL-2.0-only", false, false],
  ["BUSL-1.1", false, false],
  ["SEE LICENSE IN LICENSE.txt", false, false],
  ["(MIT", false, false],
  ["MIT ISC", false, false],
  ["", false, false],
])("%j may be used: in the page and the server %s, among tools %s", (licence, here, asTool) => {
  expect(isFine(licence)).toBe(here);
  expect(isFine(licence, true)).toBe(asTool);
});
