// Run by bundle.test.ts in a process of its own: `node run-bundle.ts BUNDLE --data DIR`.
import { registerHooks } from 'node:module';
import { pathToFileURL } from 'node:url';

const standIn = new URL('./electron-module.ts', import.meta.url).href;
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === 'electron' ? { url: standIn, shortCircuit: true } : next(specifier, context),
});

const { app, told } = await import('./electron-module.ts');
await import(pathToFileURL(String(process.argv[2])).href);
for (let waited = 0; told.windows.length === 0 && waited < 200; waited += 1) {
  await new Promise((resolve) => setTimeout(resolve, 50));
}
const page = await told.handled.get('tappet')?.({ method: 'GET', url: 'tappet://desk/none.js' });
process.stdout.write(JSON.stringify({ windows: told.windows, status: page?.status }));
app.emit('before-quit', { preventDefault: () => undefined });
