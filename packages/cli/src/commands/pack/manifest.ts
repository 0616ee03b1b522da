import type { Fact, Waiting } from "@solvewright/press";

/** Lies beside the files of a pack and says what each is for and what it still lacks. */
export const manifestName = "manifest.json";

export interface Entry {
  readonly name: string;
  readonly purpose: string;
  /** What it should not go out without and is not known yet. */
  readonly lacks: readonly Fact[];
  /** Of what we wrote, so that a file changed by hand is known. */
  readonly sha256: string;
  /** The same of what lay there before, while the pack is being written. */
  readonly was?: string;
}

export interface Manifest {
  readonly pack: 1;
  readonly title: string;
  /** The puzzle's fingerprint. */
  readonly puzzle: string;
  /** The day of the show, where it is known. */
  readonly date?: string;
  /** What may not go out before a setter has agreed, and why. */
  readonly held: readonly Waiting[];
  /** What holds for a puzzle that was changed. */
  readonly changes: string;
  readonly files: readonly Entry[];
}

const isEntry = (value: unknown): value is Entry =>
  typeof value === "object" && value !== null && "name" in value && "sha256" in value;

/** The manifest that lies in a folder; nothing where none does that we can read. */
export const readManifest = (bytes: Uint8Array | undefined): Manifest | undefined => {
  try {
    const found = JSON.parse(new TextDecoder().decode(bytes));
    return Array.isArray(found.files) && found.files.every(isEntry) ? found : undefined;
  } catch {
    return undefined;
  }
};
