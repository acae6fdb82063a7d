import { and, asc, desc, eq, isNull, sql } from 'drizzle-orm';
import { type PhotoCard, PhotoCard as PhotoCardSchema } from '../../shared/contract/bench/index.ts';
import type { MeasuredFeature } from '../../shared/work/features.ts';
import { prepared } from '../prepared.ts';
import { remembered } from '../remembered.ts';
import {
  buildSheet,
  engineModel,
  gauge,
  jobBuild,
  photo,
  staff,
  torquePull,
} from '../schema/index.ts';
import type { ReadStore } from '../store.ts';

const buildRow = prepared((store) =>
  store
    .select({
      steps: jobBuild.steps,
      sheetId: jobBuild.buildSheetId,
      sheetOf: buildSheet.engineModelId,
      work: jobBuild.work,
      touched: jobBuild.touched,
      workReason: jobBuild.workReason,
    })
    .from(jobBuild)
    .leftJoin(buildSheet, eq(buildSheet.id, jobBuild.buildSheetId))
    .where(eq(jobBuild.jobId, sql.placeholder('jobId')))
    .prepare(),
);

/** The steps that a job took over, if it has. */
export const jobBuildOf = remembered((store, jobId) => buildRow(store).get({ jobId }));

/** The latest revision of a model's own build sheet, or, for null, of the shop's for every engine. */
export const latestBuildSheet = (store: ReadStore, engineModelId: string | null) =>
  store
    .select({
      id: buildSheet.id,
      revision: buildSheet.revision,
      steps: buildSheet.steps,
      by: staff.name,
      at: buildSheet.at,
    })
    .from(buildSheet)
    .innerJoin(staff, eq(staff.id, buildSheet.by))
    .where(
      engineModelId === null
        ? isNull(buildSheet.engineModelId)
        : eq(buildSheet.engineModelId, engineModelId),
    )
    .orderBy(desc(buildSheet.revision))
    .get();

/** A model as the build sheets name it, with the family that it takes from. */
export const modelOfSheet = (store: ReadStore, engineModelId: string) =>
  store
    .select({
      id: engineModel.id,
      make: engineModel.make,
      model: engineModel.model,
      cycle: engineModel.cycle,
      variantOf: engineModel.variantOf,
    })
    .from(engineModel)
    .where(eq(engineModel.id, engineModelId))
    .get();

/** What was pulled on one feature of a job, oldest first. */
export const pullsOf = (store: ReadStore, jobId: string, feature: MeasuredFeature) =>
  store
    .select({ pull: torquePull, wrench: gauge.name, byName: staff.name })
    .from(torquePull)
    .innerJoin(staff, eq(staff.id, torquePull.by))
    .leftJoin(gauge, eq(gauge.id, torquePull.gaugeId))
    .where(and(eq(torquePull.jobId, jobId), eq(torquePull.feature, feature)))
    .orderBy(asc(torquePull.at), asc(torquePull.id))
    .all();

/** Every pull of a job, oldest first: what was tightened, when, and with which wrench. */
export const pullsOfJob = (store: ReadStore, jobId: string) =>
  store
    .select({
      feature: torquePull.feature,
      stage: torquePull.stage,
      at: torquePull.at,
      wrench: gauge.name,
    })
    .from(torquePull)
    .leftJoin(gauge, eq(gauge.id, torquePull.gaugeId))
    .where(eq(torquePull.jobId, jobId))
    .orderBy(asc(torquePull.at), asc(torquePull.id))
    .all();

const photoFacts = {
  id: photo.id,
  subject: photo.subject,
  caption: photo.caption,
  mediaType: photo.mediaType,
  size: sql<number>`length(${photo.bytes})`,
  sha256: photo.sha256,
  by: staff.name,
  at: photo.at,
};

/** The photos of a job, oldest first, without their bytes. */
export const photosOf = (store: ReadStore, jobId: string): PhotoCard[] =>
  store
    .select(photoFacts)
    .from(photo)
    .innerJoin(staff, eq(staff.id, photo.by))
    .where(eq(photo.jobId, jobId))
    .orderBy(asc(photo.at), asc(photo.id))
    .all()
    .map((row) => PhotoCardSchema.parse(row));

export function photoById(store: ReadStore, id: string) {
  const row = store
    .select({ ...photoFacts, bytes: photo.bytes })
    .from(photo)
    .innerJoin(staff, eq(staff.id, photo.by))
    .where(eq(photo.id, id))
    .get();
  return row && { ...PhotoCardSchema.parse(row), bytes: row.bytes };
}
