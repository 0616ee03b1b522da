/** Where a table of a TrueType font starts (OpenType specification, "Organization of an OpenType Font"). */
const tableAt = (font: Buffer, tag: string): number => {
  const count = font.readUInt16BE(4);
  const record = Array.from({ length: count }, (_, k) => 12 + 16 * k).find(
    (at) => font.toString("latin1", at, at + 4) === tag,
  );
  if (record === undefined) throw new Error(`the font has no ${tag} table`);
  return font.readUInt32BE(record + 8);
};

/** The subtable for Unicode's first plane: platform 3, encoding 1, which these fonts have in format 4. */
const subtableAt = (font: Buffer): number => {
  const cmap = tableAt(font, "cmap");
  const count = font.readUInt16BE(cmap + 2);
  const record = Array.from({ length: count }, (_, k) => cmap + 4 + 8 * k).find(
    (at) => font.readUInt16BE(at) === 3 && font.readUInt16BE(at + 2) === 1,
  );
  const at = record === undefined ? undefined : cmap + font.readUInt32BE(record + 4);
  if (at === undefined || font.readUInt16BE(at) !== 4)
    throw new Error("the font's letters are listed in no known form");
  return at;
};

/** The code points that a TrueType font has a letter for (OpenType specification, cmap, format 4). */
export const lettersIn = (font: Buffer): ReadonlySet<number> => {
  const at = subtableAt(font);
  const twice = font.readUInt16BE(at + 6);
  const letters = new Set<number>();
  for (let k = 0; k < twice; k += 2) {
    const last = font.readUInt16BE(at + 14 + k);
    const first = font.readUInt16BE(at + 16 + twice + k);
    for (let letter = first; letter <= last && letter < 0xffff; letter++) letters.add(letter);
  }
  return letters;
};
