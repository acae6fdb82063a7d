import type { Fastener, Specification } from '../../../shared/contract/specbook.ts';
import type { Feature } from '../../../shared/work/features.ts';
import type { Cycle, ValveLayout } from '../../../shared/work/vocabulary.ts';
import type { SourceKey } from '../sources.ts';
import type { StaffKey } from '../staff.ts';

export type SpecificationUnit = Specification['unit'];

/** A specification as its invented source prints it. */
export interface DemoSpecification {
  low?: string;
  high?: string;
  aim?: string;
  wearLimit?: string;
  unit: SpecificationUnit;
  condition?: string;
  source: SourceKey;
  page: string;
  /** Who checked it again; against another source when one is named. */
  confirmed?: { by: StaffKey; source?: SourceKey; page?: string };
  /** Another source prints something else, in the same unit, and nobody has settled it. */
  contradicted?: { by: StaffKey; source: SourceKey; page: string; low: string; high: string };
  /** The thread by its designation, where the source prints more than its size. */
  fastener?: Omit<Fastener, 'designation'> & { designation?: string };
}

/** A model that is its family but for what it states itself. */
export interface DemoVariant {
  /** Maker and shape are the family's. */
  model: string;
  note: string;
  specifications: Partial<Record<Feature, DemoSpecification>>;
}

export interface DemoEngine {
  make: string;
  model: string;
  cycle: Cycle;
  cylinders: number;
  /** mm */
  bore: number;
  stroke: number;
  valves: ValveLayout | null;
  /** ml; null for an engine that is lubricated by its fuel. */
  oilAmount: number | null;
  oilGrade: string;
  /** Parts of fuel to one of oil. */
  fuelRatio: number | null;
  plug: string;
  note: string;
  specifications: Partial<Record<Feature, DemoSpecification>>;
}
