import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import mantinePreset from 'postcss-preset-mantine';
import simpleVars from 'postcss-simple-vars';
import { defineConfig } from 'vite';

const breakpoints = { xs: '36em', sm: '48em', md: '62em', lg: '75em', xl: '88em' };

/** The contract but for `sentences.ts`, which is there for what it does. */
const unneededUnlessUsed = /[\\/]shared[\\/]contract[\\/](?!sentences\.ts)/;

export default defineConfig({
  root: join(import.meta.dirname, 'renderer'),
  plugins: [react()],
  css: {
    postcss: {
      plugins: [
        mantinePreset(),
        simpleVars({
          variables: Object.fromEntries(
            Object.entries(breakpoints).map(([name, width]) => [
              `mantine-breakpoint-${name}`,
              width,
            ]),
          ),
        }),
      ],
    },
  },
  build: {
    outDir: join(import.meta.dirname, 'dist', 'renderer'),
    emptyOutDir: true,
    // Only the Chromium of Electron and the browsers of today's desktops open this page.
    target: 'es2023',
    // The page's policy allows scripts and images from files of its own only.
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1500,
    rolldownOptions: {
      // The screens take single schemas of the contract and none of its procedures: what is not used of it
      // is left out, which is a quarter of what a page has to run before it shows anything.
      treeshake: { moduleSideEffects: (id: string) => !unneededUnlessUsed.test(id) },
      // What the libraries are compiled to stays in the browser’s cache while the screens change.
      output: { codeSplitting: { groups: [{ name: 'libraries', test: /node_modules/ }] } },
    },
  },
});
