import type { Feature } from '../../features.ts';

/**
 * What each feature of a small engine reads when it is new, worn, or has failed. All shares and scales here
 * are common practice, no source: they only weigh a reading against the slip that would explain it, and
 * judge nothing.
 */

/** How the values of a feature lie: each family has its own shape in `spreads.ts`. */
export type Family =
  | 'diameter'
  | 'gap'
  | 'flatness'
  | 'size'
  | 'torque'
  | 'pressure'
  | 'resistance'
  | 'speed';

export interface Habits {
  readonly family: Family;
  /** What any small engine reads, base unit. Beyond lies nothing. */
  readonly possible: readonly [low: number, high: number];
  /** Step of the usual gauge, base unit. */
  readonly resolution: number;
  /** To which side it wears. */
  readonly wears: 'up' | 'down' | 'either';
  /** Shares of new, of worn to the side of wear, and of the other side; what is left has failed. */
  readonly shares: { readonly good: number; readonly worn: number; readonly other: number };
  /** How far wear goes: a share of the size (diameters, sizes) or a factor, as its logarithm (gaps). */
  readonly reach: number;
  /** Of gaps: how rarely one is nearly closed; 0 as readily as a little too tight, 2 (usual) hardly ever. */
  readonly closes?: number;
  /** Whether a micrometer is the usual gauge. */
  readonly micrometer?: true;
  /** Whether a gauge that shows only the deviation from its setting is usual. */
  readonly deviation?: true;
  /** Machined to sizes over (1) or under (-1) its own in the trade's steps. */
  readonly machined?: 1 | -1;
}

const bored = {
  family: 'diameter',
  resolution: 0.001,
  shares: { good: 0.5, worn: 0.44, other: 0.02 },
  micrometer: true,
} as const;

const outside = { ...bored, wears: 'down', reach: 0.0012 } as const;
const inside = { ...bored, wears: 'up', reach: 0.0012, deviation: true } as const;

const gap = { family: 'gap', resolution: 0.01, wears: 'up' } as const;
const torque = {
  family: 'torque',
  possible: [0.5, 400],
  resolution: 0.5,
  wears: 'either',
  shares: { good: 0.72, worn: 0.12, other: 0.1 },
  reach: 0.3,
} as const;
const lash: Habits = {
  ...gap,
  possible: [0, 2],
  shares: { good: 0.55, worn: 0.22, other: 0.2 },
  reach: 0.5,
  closes: 0,
};
const flat: Habits = {
  family: 'flatness',
  possible: [0, 1.5],
  resolution: 0.01,
  wears: 'up',
  shares: { good: 0.42, worn: 0.45, other: 0 },
  reach: 1.8,
};
const clearance: Habits = {
  ...flat,
  possible: [0, 2],
  resolution: 0.001,
  shares: { good: 0.55, worn: 0.4, other: 0.03 },
  reach: 0.7,
};
const endPlay: Habits = {
  ...gap,
  possible: [0, 5],
  shares: { good: 0.56, worn: 0.3, other: 0.1 },
  reach: 0.95,
  closes: 0,
};
const stem: Habits = { ...outside, possible: [3, 14], reach: 0.004 };
const guide: Habits = { ...inside, possible: [3, 14], reach: 0.006 };
const lift: Habits = {
  family: 'size',
  possible: [-20, 40],
  resolution: 0.01,
  wears: 'down',
  shares: { good: 0.6, worn: 0.35, other: 0.04 },
  reach: 0.1,
};
const speed: Habits = {
  family: 'speed',
  possible: [200, 25_000],
  resolution: 10,
  wears: 'either',
  shares: { good: 0.6, worn: 0.2, other: 0.18 },
  reach: 0.2,
};

export const HABITS: Record<Feature, Habits> = {
  bore: { ...inside, possible: [20, 150], machined: 1 },
  'piston-skirt': { ...outside, possible: [20, 150], reach: 0.0015, machined: 1 },
  crankpin: { ...outside, possible: [6, 80], reach: 0.002, machined: -1 },
  'rod-big-end': { ...inside, possible: [6, 80], reach: 0.002, machined: -1 },
  'main-journal': { ...outside, possible: [6, 90], reach: 0.0015 },
  'valve-stem-intake': stem,
  'valve-stem-exhaust': stem,
  'valve-guide-intake': guide,
  'valve-guide-exhaust': guide,
  'ring-end-gap': {
    ...gap,
    possible: [0, 6],
    shares: { good: 0.42, worn: 0.46, other: 0.05 },
    reach: 0.9,
  },
  'ring-side-clearance': {
    ...gap,
    possible: [0, 1.5],
    shares: { good: 0.52, worn: 0.4, other: 0.04 },
    reach: 0.65,
  },
  'crankshaft-end-play': endPlay,
  'camshaft-end-play': endPlay,
  'coil-air-gap': {
    ...gap,
    possible: [0, 3],
    shares: { good: 0.74, worn: 0.2, other: 0.03 },
    reach: 0.5,
  },
  'valve-lash-intake': lash,
  'valve-lash-exhaust': lash,
  'plug-gap': {
    ...gap,
    possible: [0, 2.5],
    shares: { good: 0.6, worn: 0.25, other: 0.14 },
    reach: 0.2,
  },
  'head-flatness': flat,
  'deck-flatness': flat,
  'bore-taper': clearance,
  'bore-out-of-round': clearance,
  'bore-wear': clearance,
  'crankpin-out-of-round': clearance,
  'main-journal-out-of-round': clearance,
  'piston-clearance': clearance,
  'rod-clearance': clearance,
  'stem-clearance-intake': clearance,
  'stem-clearance-exhaust': clearance,
  'deck-clearance': { ...lift, possible: [-3, 5], wears: 'either', reach: 0.3 },
  'gasket-thickness': {
    ...lift,
    possible: [0.1, 4],
    shares: { good: 0.75, worn: 0.2, other: 0.04 },
    reach: 0.12,
    micrometer: true,
  },
  'chamber-volume': {
    ...lift,
    possible: [2, 200],
    resolution: 0.1,
    wears: 'either',
    reach: 0.06,
  },
  'valve-spring-length': {
    ...lift,
    possible: [12, 90],
    shares: { good: 0.55, worn: 0.42, other: 0.01 },
    reach: 0.025,
  },
  'seat-width': {
    ...gap,
    possible: [0.2, 6],
    shares: { good: 0.55, worn: 0.38, other: 0.05 },
    reach: 0.35,
  },
  'valve-travel-intake': lift,
  'valve-travel-exhaust': lift,
  'valve-lift-intake': { ...lift, possible: [0, 20] },
  'valve-lift-exhaust': { ...lift, possible: [0, 20] },
  'rod-bolt-torque': torque,
  'sump-bolt-torque': torque,
  'flywheel-nut-torque': torque,
  'plug-torque': torque,
  'head-bolt-torque': torque,
  compression: {
    family: 'pressure',
    possible: [0, 2_500],
    resolution: 10,
    wears: 'down',
    shares: { good: 0.55, worn: 0.34, other: 0.06 },
    reach: 1,
  },
  'coil-resistance': {
    family: 'resistance',
    possible: [0.05, 1_000_000],
    resolution: 10,
    wears: 'either',
    shares: { good: 0.68, worn: 0.11, other: 0.11 },
    reach: 0.4,
  },
  displacement: { ...lift, possible: [10, 2_500], resolution: 1, reach: 0.03 },
  'compression-ratio': { ...lift, possible: [3, 20], resolution: 0.1, reach: 0.06 },
  'idle-speed': speed,
  'top-speed': speed,
};
