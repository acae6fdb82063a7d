import type { MeasuredFeature } from '../../../shared/work/features.ts';
import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

/** Which part of the valve a feature is about. */
export type ValvePart = 'stem' | 'guide' | 'spring' | 'seat' | 'travel' | 'lash';

const PARTS: Partial<Record<MeasuredFeature, ValvePart>> = {
  'valve-stem-intake': 'stem',
  'valve-stem-exhaust': 'stem',
  'valve-guide-intake': 'guide',
  'valve-guide-exhaust': 'guide',
  'valve-spring-length': 'spring',
  'seat-width': 'seat',
  'valve-travel-intake': 'travel',
  'valve-travel-exhaust': 'travel',
  'valve-lash-intake': 'lash',
  'valve-lash-exhaust': 'lash',
};

/** The part of the valve that is measured; undefined for what has nothing to do with one. */
export const valvePartOf = (feature: MeasuredFeature): ValvePart | undefined => PARTS[feature];

const WORDS: Record<ValvePart, string> = {
  stem: 'across the stem, where it runs in the guide',
  guide: 'the bore of the guide',
  spring: 'the free length of the spring',
  seat: 'the width of the ground seat',
  travel: 'the travel of the retainer, along the stem',
  lash: 'the gap between rocker and stem',
};

/** Where the arrow for each part stands: two ends of a measuring line. */
const LINES: Record<ValvePart, { x1: number; y1: number; x2: number; y2: number }> = {
  stem: { x1: 104, y1: 152, x2: 116, y2: 152 },
  guide: { x1: 102, y1: 126, x2: 118, y2: 126 },
  spring: { x1: 158, y1: 50, x2: 158, y2: 96 },
  seat: { x1: 66, y1: 186, x2: 78, y2: 174 },
  travel: { x1: 62, y1: 40, x2: 62, y2: 72 },
  lash: { x1: 124, y1: 23, x2: 124, y2: 35 },
};

/** A valve in its head, seat below and rocker above, with the line along which to measure. */
export function ValvePicture({ done, now, part }: PictureProps & { readonly part: ValvePart }) {
  const which = now === null || now === 'only' ? '' : `, ${now}`;
  const words = now === null ? 'Every place measured' : `Measure now: ${WORDS[part]}${which}`;
  return (
    <svg
      viewBox="0 0 220 226"
      className={classes.picture}
      role="img"
      aria-label={`Valve. ${words}.`}
    >
      {/* Head with the port, cut through. */}
      <path d="M 20 100 H 92 V 150 Q 92 162 72 172 L 62 190 H 20 z" className={classes.body} />
      <path
        d="M 200 100 H 128 V 150 Q 128 162 148 172 L 158 190 H 200 z"
        className={classes.body}
      />
      {/* Guide, left and right of the stem. */}
      <rect x={92} y={92} width={10} height={54} className={classes.winding} />
      <rect x={118} y={92} width={10} height={54} className={classes.winding} />
      {/* Valve. */}
      <path
        d="M 104 36 H 116 V 162 Q 118 176 152 190 V 198 H 68 V 190 Q 102 176 104 162 z"
        className={classes.opening}
      />
      {/* Spring and retainer. */}
      <path
        d="M 80 98 L 140 88 M 80 84 L 140 74 M 80 70 L 140 60 M 80 98 L 140 98"
        className={classes.coil}
      />
      <rect x={76} y={46} width={68} height={10} rx={3} className={classes.magnet} />
      {/* Rocker. */}
      <path
        d="M 100 22 Q 110 30 120 22 L 196 6 V 20 L 126 24 Q 110 36 98 24 z"
        className={classes.body}
      />
      <g className={classes.spot} data-now={now !== null} data-done={now === null}>
        <line {...LINES[part]} />
        {now === null ? (
          <ReadingDot x={LINES[part].x1} y={LINES[part].y1} />
        ) : (
          <>
            <circle cx={LINES[part].x1} cy={LINES[part].y1} r={5} />
            <circle cx={LINES[part].x2} cy={LINES[part].y2} r={5} />
          </>
        )}
      </g>
      {done.size > 0 && now !== null && <ReadingDot x={206} y={214} />}
      <text x={110} y={220} textAnchor="middle" className={classes.small}>
        {now === null ? 'all measured' : `${part}${which}`}
      </text>
    </svg>
  );
}
