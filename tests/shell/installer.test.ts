import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, matchesGlob, resolve } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { FAMILIES } from '../../electron/paper/fonts/families.ts';

const root = resolve(import.meta.dirname, '..', '..');

type Configuration = {
  files: (string | { filter: string[] })[];
  asarUnpack: string[];
  icon: string;
  electronFuses: object;
};
type Builder = {
  getConfig: (projectFolder: string, path: null, options: null) => Promise<Configuration>;
  validateConfiguration: (configuration: Configuration, debugLogger: object) => Promise<void>;
};

/** electron-builder's own reading of its file; it offers no other way to check one without packing. */
const fromBuilder = createRequire(
  createRequire(import.meta.url).resolve('electron-builder/package.json'),
);

let builder: Builder;
let configuration: Configuration;
/** Patterns of what is packed; an exclamation mark leaves out. */
let files: string[];
beforeAll(async () => {
  builder = fromBuilder('app-builder-lib/out/util/config/config.js') as Builder;
  configuration = await builder.getConfig(root, null, null);
  files = configuration.files.flatMap((entry) =>
    typeof entry === 'string' ? entry : entry.filter,
  );
}, 60_000);

test('electron-builder knows every setting', async () => {
  const debugLogger = { add: () => undefined };
  await builder.validateConfiguration(configuration, debugLogger);
  const wrong = { ...configuration, colour: 'red' };
  await expect(builder.validateConfiguration(wrong, debugLogger)).rejects.toThrow('colour');
});

test('every fuse is set to the safe side', () => {
  // Electron's tutorial on fuses, electron/electron docs/tutorial/fuses.md.
  expect(configuration.electronFuses).toMatchObject({
    runAsNode: false,
    enableCookieEncryption: true,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false,
  });
});

test('what is packed is there, and the native part lies outside the archive', () => {
  expect(existsSync(join(root, configuration.icon))).toBe(true);
  const plain = files.filter((pattern) => !/^!|\*/.test(pattern));
  expect(plain.filter((file) => !existsSync(join(root, file)))).toEqual([]);
  expect(configuration.asarUnpack).toEqual(['node_modules/better-sqlite3/**']);
});

test('each font that papers are drawn in is packed', () => {
  const excluded = files
    .filter((pattern) => pattern.startsWith('!'))
    .map((pattern) => pattern.slice(1));
  const isLeftOut = (path: string) => excluded.some((pattern) => matchesGlob(path, pattern));
  const fonts = Object.values(FAMILIES).flatMap(({ package: name, ...faces }) =>
    [faces.regular, faces.strong, faces.oblique].map((face) => `node_modules/${name}/${face}`),
  );
  expect(fonts.filter((font) => !existsSync(join(root, font)) || isLeftOut(font))).toEqual([]);
  expect(isLeftOut('node_modules/@expo-google-fonts/noto-sans/100Thin/a.ttf')).toBe(true);
});
