import type { StaffRole } from '../../shared/work/vocabulary.ts';

/** Who works in the invented shop. The owner opens it. */
export const DEMO_STAFF = {
  ruth: { name: 'Ruth Halloran', role: 'owner' },
  ignacio: { name: 'Ignacio Peña', role: 'bench' },
  wren: { name: 'Wren Castellane', role: 'bench' },
  odile: { name: 'Odile Marchetti', role: 'counter' },
} as const satisfies Record<string, { name: string; role: StaffRole }>;

export type StaffKey = keyof typeof DEMO_STAFF;
