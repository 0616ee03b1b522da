import { describe, expect, test } from "vitest";
import { addressIn } from "./address.ts";

describe("an address", () => {
  test.each([
    ["redis://big-box", "redis://big-box", { host: "big-box", port: 6379, db: 0 }],
    ["redis://big-box:7000/3", "redis://big-box:7000/3", { host: "big-box", port: 7000, db: 3 }],
    ["redis://:a%2Fb%40c@h/", "redis://h", { host: "h", port: 6379, db: 0, password: "a/b@c" }],
    ["rediss://me:pw@h", "rediss://h", { host: "h", port: 6379, db: 0, username: "me", password: "pw", tls: {} }],
    ["redis://[::1]:7000", "redis://[::1]:7000", { host: "::1", port: 7000, db: 0 }],
  ])("%s is read, and shown without secrets", (text, shown, options) =>
    expect(addressIn(text)).toEqual({ shown, options }),
  );
  test.each([
    "",
    "big-box:6379",
    "redis://",
    "http://me:secret@h",
    "unix:///tmp/redis.sock",
    "redis://me:secret@h/zero",
    "redis://h?password=secret",
    "redis://me:sec%ret@h",
    "redis://me:secret@h:port",
  ])("%s is refused, and not said again", (text) => {
    const refused = () => addressIn(text);
    expect(refused).toThrow(/^--queue takes the address of a Redis/);
    expect(refused).not.toThrow(/secret/);
  });
});
