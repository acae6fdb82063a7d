import type { TextStyle } from '../fonts/typesetter.ts';

/** Black and greys only: a paper must say as much from a monochrome printer as on a screen. */
export const INK = '#111111';
export const SOFT_INK = '#454545';
export const RULE = '#9a9a9a';
export const WASH = '#f1f1f1';

export const MILLIMETRE = 72 / 25.4;

export const STYLE = {
  title: { face: 'strong', size: 20, leading: 24, ink: INK },
  shopName: { face: 'strong', size: 15, leading: 19, ink: INK },
  heading: { face: 'strong', size: 11, leading: 15, ink: INK },
  subheading: { face: 'strong', size: 9.5, leading: 13, ink: INK },
  text: { face: 'regular', size: 9, leading: 12.2, ink: INK },
  strong: { face: 'strong', size: 9, leading: 12.2, ink: INK },
  soft: { face: 'regular', size: 8, leading: 11, ink: SOFT_INK },
  label: { face: 'strong', size: 8, leading: 11, ink: SOFT_INK, spacing: 0.1 },
  cell: { face: 'regular', size: 8.3, leading: 11, ink: INK },
  cellStrong: { face: 'strong', size: 8.3, leading: 11, ink: INK },
  cellSoft: { face: 'regular', size: 8, leading: 11, ink: SOFT_INK },
  oblique: { face: 'oblique', size: 8.3, leading: 11, ink: INK },
  remark: { face: 'oblique', size: 8, leading: 10.4, ink: INK },
  total: { face: 'strong', size: 11, leading: 15, ink: INK },
  sum: { face: 'strong', size: 16, leading: 22, ink: INK },
  typedName: { face: 'regular', size: 17, leading: 22, ink: INK },
  footer: { face: 'regular', size: 7, leading: 9, ink: SOFT_INK },
  fingerprint: { face: 'strong', size: 8.3, leading: 12, ink: INK },
} satisfies Record<string, TextStyle>;
