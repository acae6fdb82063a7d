import type { ReachBy, Symptom } from '../vocabulary.ts';

/** What was said and seen at intake, and can turn out to be otherwise. */
export interface IntakeFacts {
  /** In the customer's words. */
  complaint: string;
  symptoms: Symptom[];
  condition: string;
  /** Key, bag, blade, charger … */
  leftWith: string[];
  /** What is in the tank and how old it is. */
  fuel: string;
  lastService: string;
  /** Running hours of the engine; null when nobody knows. */
  engineHours: number | null;
  reachBy: ReachBy;
}
