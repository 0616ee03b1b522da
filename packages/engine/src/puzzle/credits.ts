import { nearest } from "../rules/nearest.ts";
import type { Consent, Consents, Setter } from "./puzzle.ts";
import { readText, shownTree } from "./texts.ts";
import { isNothing, onlyKeys, type Tell, type Tree, under } from "./tree.ts";

const consents: readonly Consent[] = ["own", "granted", "asked", "refused", "unknown"];
const uses = ["show", "page", "print", "change"] as const;

const forAll = (consent: Consent): Consents => ({ show: consent, page: consent, print: consent, change: consent });

const consentOf = (tree: Tree, tell: Tell): Consent => {
  const found = consents.find((consent) => tree.shape === "scalar" && tree.text === consent);
  if (!found) tell(tree, shownTree(tree), "a permission: own, granted, asked, refused or unknown");
  return found ?? "unknown";
};

const readPermission = (tree: Tree | undefined, tell: Tell): Consents => {
  if (!tree) return forAll("unknown");
  if (tree.shape !== "keys") return forAll(consentOf(tree, tell));
  onlyKeys(tree, uses, tell);
  const of = (use: (typeof uses)[number]): Consent => {
    const said = under(tree, use);
    return said ? consentOf(said, tell) : "unknown";
  };
  return { show: of("show"), page: of("page"), print: of("print"), change: of("change") };
};

const readLink = (tree: Tree | undefined, tell: Tell): string | undefined => {
  if (!tree || isNothing(tree) || (tree.shape === "scalar" && tree.text === "")) return undefined;
  const link = readText(tree, { right: "a web address", most: 500 }, tell);
  // Links are published, so nothing that a page could run.
  if (link === undefined || !/^\s*[a-z][a-z0-9+.-]*:/i.test(link) || /^(https?|mailto):/i.test(link)) return link;
  tell(tree, shownTree(tree), "a web address that starts with https://");
  return undefined;
};

const keys = ["name", "link", "permission"];

const readSetter = (tree: Tree, tell: Tell): Setter[] => {
  if (tree.shape !== "keys") return tell(tree, shownTree(tree), "a setter: { name, link, permission }") ?? [];
  onlyKeys(tree, keys, tell);
  const named = under(tree, "name");
  if (!named && !tree.entries.some(({ key }) => nearest(key, keys) === "name"))
    tell(tree, "a setter without a name", "a name as well");
  const name = named && readText(named, { right: "the setter's name", most: 200 }, tell);
  const link = readLink(under(tree, "link"), tell);
  const permission = readPermission(under(tree, "permission"), tell);
  return name === undefined ? [] : [{ name, permission, ...(link === undefined ? {} : { link }) }];
};

/** One setter or a list of them. */
export const readSetters = (tree: Tree | undefined, tell: Tell): Setter[] => {
  if (!tree || isNothing(tree)) return [];
  return (tree.shape === "list" ? tree.items : [tree]).flatMap((setter) => readSetter(setter, tell));
};
