import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { create, type Font } from 'fontkit';

/** `regular` for text, `strong` for headings and figures that count, `oblique` for remarks. */
export type Face = 'regular' | 'strong' | 'oblique';

/** Which alphabets a family is there for: `base` is Latin, Greek, Cyrillic and Devanagari. */
export type Family = 'base' | 'japanese' | 'chinese';

/**
 * The font files that papers are drawn with, as package and path in it. Whoever packs the program needs
 * these and no other file of the three packages. Han characters have no oblique: they stay upright.
 */
const FONT_FILES = {
  base: {
    package: '@expo-google-fonts/noto-sans',
    regular: '400Regular/NotoSans_400Regular.ttf',
    strong: '600SemiBold/NotoSans_600SemiBold.ttf',
    oblique: '400Regular_Italic/NotoSans_400Regular_Italic.ttf',
  },
  japanese: {
    package: '@expo-google-fonts/noto-sans-jp',
    regular: '400Regular/NotoSansJP_400Regular.ttf',
    strong: '600SemiBold/NotoSansJP_600SemiBold.ttf',
    oblique: '400Regular/NotoSansJP_400Regular.ttf',
  },
  chinese: {
    package: '@expo-google-fonts/noto-sans-sc',
    regular: '400Regular/NotoSansSC_400Regular.ttf',
    strong: '600SemiBold/NotoSansSC_600SemiBold.ttf',
    oblique: '400Regular/NotoSansSC_400Regular.ttf',
  },
} satisfies Record<Family, Record<'package' | Face, string>>;

const loaded = new Map<string, Font>();

/**
 * A font for one document. fontkit remembers with each glyph the first text that asked for it, so that a
 * font shared between documents would let an earlier paper decide how a later one is written. The parsed
 * tables are shared all the same: reading them anew costs more than the drawing.
 */
export function fontForOneDocument(family: Family, face: Face): Font {
  const own: Font = Object.create(load(family, face));
  own._glyphs = {};
  return own;
}

/** Whether a font of this family and face can draw a character. */
export function hasGlyph(family: Family, face: Face, character: string): boolean {
  const codePoint = character.codePointAt(0);
  return codePoint !== undefined && load(family, face).hasGlyphForCodePoint(codePoint);
}

/** Read when first asked for and then kept: a Han font is 5 to 10 MB. */
function load(family: Family, face: Face): Font {
  const path = join(fontFolder(FONT_FILES[family].package), FONT_FILES[family][face]);
  let font = loaded.get(path);
  if (font === undefined) {
    font = create(readFileSync(path));
    loaded.set(path, font);
  }
  return font;
}

const folders = new Map<string, string>();

/**
 * Where a font package lies. Asked of Node's own resolution, so that it is found from the sources as well
 * as from a bundle inside an Electron archive, as long as `node_modules` stands beside or above it.
 */
function fontFolder(packageName: string): string {
  let folder = folders.get(packageName);
  if (folder === undefined) {
    folder = dirname(createRequire(import.meta.url).resolve(`${packageName}/package.json`));
    folders.set(packageName, folder);
  }
  return folder;
}
