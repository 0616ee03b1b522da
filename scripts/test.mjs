/** Installs what is missing (a browser and a Redis too, where it can), builds, and runs every check. The last line is `N passed, N failed`. */
import process from "node:process";
import { ensureBrowser } from "./browser.mjs";
import { buildAll } from "./build.mjs";
import { check } from "./check.mjs";
import { ensureInstalled } from "./install.mjs";
import { ensureRedis } from "./redis.mjs";

/** A failed build counts as a failed check: the others still have something to say. */
const isBuilt = () =>
  buildAll().then(
    () => true,
    (error) => {
      console.error(error.message);
      console.log("FAILED  build");
      return false;
    },
  );

ensureInstalled();
ensureBrowser();
ensureRedis();
process.exitCode = (await check([await isBuilt()])) ? 0 : 1;
