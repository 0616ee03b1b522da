import type { ShownKind } from "./shown-kinds.ts";

const entry = ({ name, form, sentence, source }: ShownKind): string => `### ${name}

${sentence}

Body: ${form}.

\`\`\`yaml
${source}
\`\`\`
`;

/** What is written by hand, and an entry for each kind. */
export const formatPage = (head: string, shown: readonly ShownKind[]): string =>
  `${head}\n${shown.map(entry).join("\n")}`;
