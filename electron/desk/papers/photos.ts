import { photosOf } from '../../../db/queries/build.ts';
import type { ReadStore } from '../../../db/store.ts';
import type { JobDossier } from '../../../shared/contract/counter/index.ts';
import { CHECK_LABELS, CHECKS } from '../../../shared/work/bench/diagnosis.ts';
import { FEATURE_LABELS, FEATURES } from '../../../shared/work/features.ts';
import type { PhotoLine } from '../../paper/content.ts';
import { stepsOfJob } from '../bench/job-steps.ts';

/** The photos on record: what each shows, who took it and when. The pictures stay with the shop. */
export function photoLines(store: ReadStore, job: JobDossier): PhotoLine[] {
  const labels = new Map<string, string>([
    ...CHECKS.map((check) => [`finding-${check}`, `Diagnosis, ${CHECK_LABELS[check]}`] as const),
    ...FEATURES.map((feature) => [feature, FEATURE_LABELS[feature]] as const),
    ...stepsOfJob(store, job).steps.map(({ key, label }) => [key, label] as const),
  ]);
  return photosOf(store, job.id).map(({ subject, caption, sha256, by, at }) => ({
    shows: labels.get(subject) ?? subject,
    caption,
    fingerprint: sha256,
    by,
    at,
  }));
}
