import type { Glyph } from 'fontkit';
import type { Part } from './clusters.ts';

/** Flags of a component (OpenType, table glyf): words for arguments, arguments are x and y, one more follows. */
const WORDS_AS_OFFSETS = 0x0001 | 0x0002;
const MORE_FOLLOW = 0x0020;

const HEADER_LENGTH = 10;
const COMPONENT_LENGTH = 8;

/** The entry of a TrueType font's table `glyf` for a shape made up of others; nothing for none. */
export function compoundOutline(components: readonly Part[], box: Glyph['bbox']): Uint8Array {
  if (components.length === 0) return new Uint8Array();
  const entry = new Uint8Array(HEADER_LENGTH + COMPONENT_LENGTH * components.length);
  const view = new DataView(entry.buffer);
  // A number of contours below zero: a compound glyph.
  view.setInt16(0, -1);
  for (const [index, edge] of [box.minX, box.minY, box.maxX, box.maxY].entries())
    view.setInt16(2 + index * 2, Math.round(edge));
  for (const [index, { id, x, y }] of components.entries()) {
    const at = HEADER_LENGTH + COMPONENT_LENGTH * index;
    view.setUint16(at, WORDS_AS_OFFSETS | (index < components.length - 1 ? MORE_FOLLOW : 0));
    view.setUint16(at + 2, id);
    view.setInt16(at + 4, Math.round(x));
    view.setInt16(at + 6, Math.round(y));
  }
  return entry;
}
