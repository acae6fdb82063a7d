import { defineConfig } from 'vitest/config';

// biome's noDefaultExport is relaxed for the config files that tools load by their default export.
export default defineConfig({
  test: {
    include: [
      'shared/**/*.test.ts',
      'db/**/*.test.ts',
      'electron/**/*.test.ts',
      'renderer/**/*.test.ts',
      'tests/{standards,unit,desk,shell,crash}/**/*.test.ts',
    ],
    pool: 'threads',
    // Some tests start processes of their own, and two cores may have other work besides.
    testTimeout: 20_000,
    hookTimeout: 30_000,
  },
});
