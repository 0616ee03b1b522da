import { inflateSync } from "node:zlib";

const padded = (length: number): number => (length + 3) & ~3;

interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly data: Buffer;
}

const tableAt = (woff: Buffer, at: number): Table => {
  const [offset, stored, length] = [4, 8, 12].map((place) => woff.readUInt32BE(at + place)) as [number, number, number];
  const data = woff.subarray(offset, offset + stored);
  return {
    tag: woff.toString("latin1", at, at + 4),
    checksum: woff.readUInt32BE(at + 16),
    data: stored < length ? inflateSync(data) : data,
  };
};

/** The number of tables, and the search hints that old readers want beside it. */
const headOf = (flavour: number, tables: number): Buffer => {
  const power = Math.floor(Math.log2(tables));
  const head = Buffer.alloc(12);
  head.writeUInt32BE(flavour, 0);
  [tables, 16 << power, power, 16 * tables - (16 << power)].forEach(
    (value, k) => void head.writeUInt16BE(value, 4 + 2 * k),
  );
  return head;
};

const recordOf = ({ tag, checksum, data }: Table, offset: number): Buffer => {
  const record = Buffer.alloc(16);
  record.write(tag, "latin1");
  [checksum, offset, data.length].forEach((value, k) => void record.writeUInt32BE(value, 4 + 4 * k));
  return record;
};

/** Unpacks a WOFF file (W3C, WOFF 1.0) to the TrueType file that it holds. */
export const sfntOf = (woff: Buffer): Buffer => {
  if (woff.toString("latin1", 0, 4) !== "wOFF") throw new Error("no WOFF 1.0 file");
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, k) => tableAt(woff, 44 + 20 * k));
  let offset = 12 + 16 * count;
  const records = tables.map((table) => {
    const record = recordOf(table, offset);
    offset += padded(table.data.length);
    return record;
  });
  const bodies = tables.map(({ data }) => Buffer.concat([data], padded(data.length)));
  return Buffer.concat([headOf(woff.readUInt32BE(4), count), ...records, ...bodies]);
};
