import { expect, test } from "vitest";
import { fnv1a } from "./fnv1a.ts";

// Test vectors published with the hash: Noll, "FNV Hash", test_fnv.c, and RFC 9923.
test.each([
  ["", "cbf29ce484222325"],
  ["a", "af63dc4c8601ec8c"],
  ["foobar", "85944171f73967e8"],
])("%j", (text, hash) => expect(fnv1a(text)).toBe(hash));
