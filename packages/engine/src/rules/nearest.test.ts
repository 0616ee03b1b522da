import { expect, test } from "vitest";
import { nearest } from "./nearest.ts";

const kinds = ["thermometer", "slow-thermometer", "kropke-black", "kropke-white", "cage", "x-sum", "xv-x", "xv-v"];

test.each([
  ["thermometre", "thermometer"],
  ["Thermometer", "thermometer"],
  ["slow thermometer", "slow-thermometer"],
  ["kropke_whit", "kropke-white"],
  ["gace", "cage"],
  ["acge", "cage"],
  ["xvx", "xv-x"],
  ["qqqqqqqqqqqq", undefined],
  ["", undefined],
  ["x".repeat(60_000), undefined],
])("%.20s means %s", (word, name) => expect(nearest(word, kinds)).toBe(name));
