import { defineConfig } from 'vitest/config';

// Some tests start processes of their own, and two cores may have other work besides.
const shared = { pool: 'threads', testTimeout: 20_000, hookTimeout: 30_000 } as const;

const replacing = 'tests/crash/bring-back.test.ts';

// biome's noDefaultExport is relaxed for the config files that tools load by their default export.
export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...shared,
          name: 'plain',
          include: [
            'shared/**/*.test.ts',
            'db/**/*.test.ts',
            'electron/**/*.test.ts',
            'renderer/**/*.test.ts',
            'tests/{standards,unit,desk,crash}/**/*.test.ts',
          ],
          exclude: [replacing],
          // Nothing here replaces a module (tests/shell/shared-modules.test.ts): files may share what they
          // import, which is half of their time.
          isolate: false,
        },
      },
      {
        // These stand in for modules, each in its own way: for Electron, or for a disk that gives way.
        test: { ...shared, name: 'shell', include: ['tests/shell/**/*.test.ts', replacing] },
      },
    ],
  },
});
