import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { create, type Font } from 'fontkit';
import { FAMILIES, type Face, type Family } from './families.ts';

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

const probes = new Map<string, Font>();

/** Whether a font draws a letter as several glyphs, of which all but the first stand for no character. */
export function isTakenApart(family: Family, face: Face, letter: string): boolean {
  const name = `${family} ${face}`;
  const probe = probes.get(name) ?? fontForOneDocument(family, face);
  probes.set(name, probe);
  return probe.layout(letter).glyphs.length > 1;
}

/** Read when first asked for and then kept: a Han font is 5 to 10 MB. */
function load(family: Family, face: Face): Font {
  const path = join(fontFolder(FAMILIES[family].package), FAMILIES[family][face]);
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
