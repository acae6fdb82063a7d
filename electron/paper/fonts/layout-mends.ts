import type { Font, LookupProcessor, Positioning } from 'fontkit';

/** Two things in which fontkit departs from OpenType, mended for one font. */
export function mendLayout(font: Font) {
  const { GSUBProcessor, GPOSProcessor } = font._layoutEngine.engine ?? {};
  if (GSUBProcessor) passOverWhatWasPutIn(GSUBProcessor);
  if (GPOSProcessor) allowMissingAnchors(GPOSProcessor);
}

/**
 * What a substitution puts in is passed over, and not looked at again by the same lookup. Without that, a
 * glyph that is replaced by itself and another one would be replaced for ever.
 */
function passOverWhatWasPutIn(substitution: LookupProcessor) {
  const applyLookup = substitution.applyLookup.bind(substitution);
  let depth = 0;
  substitution.applyLookup = (type, table) => {
    const { length } = substitution.glyphs;
    depth += 1;
    const applied = applyLookup(type, table);
    depth -= 1;
    const more = substitution.glyphs.length - length;
    if (depth === 0 && more > 0) substitution.glyphIterator.index += more;
    return applied;
  };
}

class MissingAnchor extends Error {}

/** A font may have no anchor for a mark on a base (its offset is NULL); the next table is asked then. */
function allowMissingAnchors(positioning: Positioning) {
  const applyLookup = positioning.applyLookup.bind(positioning);
  const getAnchor = positioning.getAnchor.bind(positioning);
  positioning.getAnchor = (anchor) => {
    if (anchor === null || anchor === undefined) throw new MissingAnchor();
    return getAnchor(anchor);
  };
  positioning.applyLookup = (type, table) => {
    try {
      return applyLookup(type, table);
    } catch (error) {
      if (error instanceof MissingAnchor) return false;
      throw error;
    }
  };
}
