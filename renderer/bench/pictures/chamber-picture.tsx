import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

export type ChamberPart = 'chamber' | 'gasket' | 'deck';

const WORDS: Record<ChamberPart, string> = {
  chamber: 'the volume of the chamber in the head',
  gasket: 'the thickness of the gasket, compressed',
  deck: 'from the piston’s edge up to the deck, at top dead centre',
};

const LINES: Record<ChamberPart, { x1: number; y1: number; x2: number; y2: number }> = {
  chamber: { x1: 110, y1: 46, x2: 110, y2: 84 },
  gasket: { x1: 30, y1: 88, x2: 30, y2: 102 },
  deck: { x1: 74, y1: 102, x2: 74, y2: 120 },
};

/** Head, gasket and cylinder cut through, the piston at the top of its stroke. */
export function ChamberPicture({ now, part }: PictureProps & { readonly part: ChamberPart }) {
  const words = now === null ? 'Measured' : `Measure now: ${WORDS[part]}`;
  return (
    <svg
      viewBox="0 0 220 210"
      className={classes.picture}
      role="img"
      aria-label={`Combustion chamber. ${words}.`}
    >
      <path
        d="M 12 20 H 208 V 88 H 164 Q 150 44 110 42 Q 70 44 56 88 H 12 z"
        className={classes.body}
      />
      <rect x={12} y={88} width={44} height={14} className={classes.magnet} />
      <rect x={164} y={88} width={44} height={14} className={classes.magnet} />
      <rect x={12} y={102} width={44} height={92} className={classes.body} />
      <rect x={164} y={102} width={44} height={92} className={classes.body} />
      <path d="M 60 120 H 160 V 194 H 60 z" className={classes.opening} />
      <line x1={60} x2={160} y1={134} y2={134} className={classes.ring} />
      <line x1={60} x2={160} y1={146} y2={146} className={classes.ring} />
      <text x={110} y={172} textAnchor="middle" className={classes.small}>
        piston
      </text>
      <g className={classes.spot} data-now={now !== null}>
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
    </svg>
  );
}
