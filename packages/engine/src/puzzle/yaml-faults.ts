import type { YAMLError } from "yaml";

/** What YAML's own errors come down to for a person who wrote the file by hand, by code and by what the message says. */
const rights: readonly (readonly [code: string, message: RegExp, right: string])[] = [
  ["TAB_AS_INDENT", /./, "spaces; YAML takes no tabs as indentation"],
  ["MISSING_CHAR", /Missing closing/, "a quote that closes the text"],
  ["MISSING_CHAR", /^Missing , /, "a comma before this"],
  ["MISSING_CHAR", /Implicit map keys/, "a colon and a value after this key"],
  ["MISSING_CHAR", /Comments must/, "a space before the #"],
  ["MISSING_CHAR", /Missing space after/, "a space after the colon"],
  ["MISSING_CHAR", /Sequence item/, "a dash before each entry of the list"],
  ["BAD_INDENT", /end with a \]/, "a closing ] for the list before this"],
  ["BAD_INDENT", /end with a \}/, "a closing } for the keys before this"],
  ["BAD_INDENT", /./, "the same indentation as the lines it belongs to"],
  ["BLOCK_AS_IMPLICIT_KEY", /./, "one key a line; a text with a colon and a space in it wants quotes"],
  ["MULTILINE_IMPLICIT_KEY", /./, "a key, a colon and a space, all on one line"],
  ["BAD_SCALAR_START", /./, "quotes around a text that starts with this sign"],
  ["BAD_DQ_ESCAPE", /./, "an escape that YAML knows, or single quotes"],
  ["DUPLICATE_KEY", /./, "each key once"],
  ["BAD_ALIAS", /./, "a name after the * or &, or quotes around the text"],
  ["TAG_RESOLVE_FAILED", /./, "no tag, or quotes around a text that starts with !"],
  ["MULTIPLE_DOCS", /./, "one puzzle a file"],
  ["RESOURCE_EXHAUSTION", /./, "lists and keys that are nested less deeply"],
  ["UNEXPECTED_TOKEN", /Unexpected ,/, "no comma without something before it"],
  ["UNEXPECTED_TOKEN", /block-seq-ind on same line/, "the list on the next line, or in [ ]"],
  ["UNEXPECTED_TOKEN", /at node end/, "nothing more here; is the indentation as it should be?"],
  ["UNEXPECTED_TOKEN", /Block scalar header/, "nothing after the |"],
];

export const rightOf = ({ code, message }: YAMLError): string =>
  rights.find(([of, says]) => of === code && says.test(message))?.[2] ?? "YAML; this can't stand here";
