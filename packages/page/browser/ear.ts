import type { Page } from "playwright-core";

interface Value {
  readonly value?: unknown;
}
interface Node {
  readonly nodeId: string;
  readonly ignored: boolean;
  readonly role?: Value;
  readonly name?: Value;
  readonly description?: Value;
  readonly properties?: readonly { readonly name: string; readonly value: Value }[];
  readonly childIds?: readonly string[];
}

/** One thing as it is heard. */
export interface Heard {
  readonly role: string;
  readonly name: string;
  readonly description: string;
  has(property: string): unknown;
}

const textOf = (value: Value | undefined): string => String(value?.value ?? "");
const heardOf = ({ role, name, description, properties = [] }: Node): Heard => ({
  role: textOf(role),
  name: textOf(name),
  description: textOf(description),
  has: (property) => properties.find((each) => each.name === property)?.value.value,
});

/** The page as a screen reader has it: nothing but the browser's accessibility tree. */
export const earOn = async (page: Page) => {
  const client = await page.context().newCDPSession(page);
  const nodes = async (): Promise<readonly Node[]> =>
    ((await client.send("Accessibility.getFullAXTree")).nodes as readonly Node[]).filter(({ ignored }) => !ignored);
  const all = async (role: string): Promise<readonly Heard[]> =>
    (await nodes()).map(heardOf).filter((heard) => heard.role === role);
  const focused = async (): Promise<Heard> => {
    const found = (await nodes()).map(heardOf).filter((heard) => heard.has("focused") === true);
    return found.at(-1)!;
  };
  /** What stands in the live region. */
  const said = async (): Promise<string> => {
    const tree = await nodes();
    const byId = new Map(tree.map((node) => [node.nodeId, node]));
    const textIn = (node: Node): string =>
      heardOf(node).role === "StaticText"
        ? heardOf(node).name
        : (node.childIds ?? []).map((id) => (byId.has(id) ? textIn(byId.get(id)!) : "")).join("");
    return tree
      .filter((node) => heardOf(node).role === "status")
      .map(textIn)
      .join("");
  };
  return { all, focused, said };
};
