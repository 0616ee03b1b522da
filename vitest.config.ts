import { defineConfig } from "vitest/config";

// Workspace packages are read from their sources, so that a clean clone needs no build before its tests.
const conditions = ["source", "module", "node", "development|production"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    // Files that share a worker share its modules: six times quicker, and warm. So a test leaves no state behind.
    pool: "forks",
    isolate: false,
    maxWorkers: 2,
    testTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: "code",
          include: [
            "packages/*/src/**/*.test.ts",
            "packages/*/test-kit/**/*.test.ts",
            "checks/**/*.test.ts",
            "scripts/**/*.test.ts",
          ],
        },
      },
      {
        // Its setup builds the page and starts a browser, so it stands apart.
        extends: true,
        test: {
          name: "browser",
          include: ["packages/page/browser/**/*.test.ts"],
          globalSetup: "packages/page/browser/setup.ts",
        },
      },
    ],
  },
});
