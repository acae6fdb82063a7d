import type { Font, Glyph, Subset } from 'fontkit';
import type { Shape } from './clusters.ts';
import { compoundOutline } from './compound-outline.ts';

/** No font has as many of its own. */
const FIRST_NUMBER = 0x1_0000;

interface OwnGlyph extends Glyph, Shape {}

/** Glyphs that are added to a font for one document, each made up of glyphs of the font. */
export class OwnGlyphs {
  readonly #font: Font;
  readonly #glyphs: OwnGlyph[] = [];
  readonly #known = new Map<string, OwnGlyph>();

  constructor(font: Font) {
    this.#font = font;
  }

  /** The glyph of a shape that stands for some characters: the same one each time. */
  glyphFor(characters: string, { parts, advance }: Shape): Glyph {
    const places = parts.map(({ id, x, y }) => `${id},${x},${y}`).join(' ');
    const key = `${characters} ${advance} ${places}`;
    let glyph = this.#known.get(key);
    if (glyph === undefined) {
      glyph = {
        id: FIRST_NUMBER + this.#glyphs.length,
        codePoints: Array.from(characters, (character) => character.codePointAt(0) ?? 0),
        advanceWidth: advance,
        bbox: this.#boxOf(parts),
        parts,
        advance,
      };
      this.#known.set(key, glyph);
      this.#glyphs.push(glyph);
    }
    return glyph;
  }

  /** Undefined for a glyph of the font. */
  find(id: number): Glyph | undefined {
    return this.#glyphs[id - FIRST_NUMBER];
  }

  /** Lets a subset of the font take these glyphs too. */
  addTo(subset: Subset) {
    const addFromFont = subset._addGlyph.bind(subset);
    subset._addGlyph = (id) => {
      const glyph = this.#glyphs[id - FIRST_NUMBER];
      if (glyph === undefined) return addFromFont(id);
      const { parts, bbox, advance } = glyph;
      const numbered = parts.map((part) => ({ ...part, id: subset.includeGlyph(part.id) }));
      const outline = compoundOutline(numbered, bbox);
      subset.glyf.push(outline);
      subset.loca.offsets.push(subset.offset);
      subset.hmtx.metrics.push({ advance, bearing: Math.round(bbox.minX) });
      subset.offset += outline.length;
      return subset.glyf.length - 1;
    };
  }

  /** The most that a font holds, which says so at its beginning (table maxp), with these glyphs. */
  most(): Font['maxp'] {
    const { maxp } = this.#font;
    const count = Math.max(1, ...this.#glyphs.map(({ parts }) => parts.length));
    const atMost = (value = 0) => Math.min(0xffff, value);
    return {
      ...maxp,
      maxComponentElements: Math.max(maxp.maxComponentElements ?? 0, count),
      maxComponentDepth: (maxp.maxComponentDepth ?? 0) + 1,
      maxComponentPoints: atMost(
        Math.max(maxp.maxPoints ?? 0, maxp.maxComponentPoints ?? 0) * count,
      ),
      maxComponentContours: atMost(
        Math.max(maxp.maxContours ?? 0, maxp.maxComponentContours ?? 0) * count,
      ),
    };
  }

  #boxOf(parts: Shape['parts']): Glyph['bbox'] {
    const boxes = parts.flatMap(({ id, x, y }) => {
      const { minX, minY, maxX, maxY } = this.#font.getGlyph(id).bbox;
      // An empty glyph has an infinite box.
      return minX > maxX ? [] : [[minX + x, minY + y, maxX + x, maxY + y] as const];
    });
    if (boxes.length === 0) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
    return {
      minX: Math.min(...boxes.map(([minX]) => minX)),
      minY: Math.min(...boxes.map(([, minY]) => minY)),
      maxX: Math.max(...boxes.map(([, , maxX]) => maxX)),
      maxY: Math.max(...boxes.map(([, , , maxY]) => maxY)),
    };
  }
}
