import { root } from "./install.mjs";

/** A module of our own, which is TypeScript: bundled before it can be asked. */
export const fromSource = async (entry) => {
  const { build } = await import("esbuild");
  const options = {
    absWorkingDir: root,
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
  };
  const { outputFiles } = await build({ ...options, conditions: ["source"], entryPoints: [entry], logLevel: "error" });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`);
};
