import { type BrowserServer, chromium } from "playwright-core";
import { browsersHere } from "../../../scripts/browser.mjs";

const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The first browser of this machine that starts, undefined where none does. */
export const launched = async (): Promise<BrowserServer | undefined> => {
  for (const executablePath of browsersHere()) {
    const server = await chromium.launchServer({ executablePath, args, timeout: 30_000 }).catch(() => undefined);
    if (server) return server;
  }
  return undefined;
};
