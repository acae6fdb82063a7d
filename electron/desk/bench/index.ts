import { eq } from 'drizzle-orm';
import { dossierOf, jobRowById } from '../../../db/queries/counter/jobs.ts';
import { engineModelById } from '../../../db/queries/specbook.ts';
import { engine } from '../../../db/schema/index.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { write } from '../writing.ts';
import { beginBuild, build, buildSheet, reviseBuildSheet, sayWork } from './build.ts';
import { printClearanceSheet } from './clearance-sheet.ts';
import { decide, decisions } from './decisions.ts';
import { diagnosis, noteFinding } from './diagnosis.ts';
import { addGauge, checkGauge, gauge, gaugeReadings, gauges, measureWrench } from './gauges.ts';
import { engineHistory } from './history.ts';
import { overrideHoldPoint, passHoldPoint, reopenHoldPoint } from './hold-points.ts';
import { retakeSteps } from './job-steps.ts';
import { addPhoto, photo, photos } from './photos.ts';
import { proposals } from './proposals.ts';
import { record } from './record.ts';
import { sheetOf } from './sheet.ts';
import { recordTestRun, testRuns } from './test-run.ts';
import { beginTorqueAnew, pullBolt, torqueWalk } from './torque.ts';

const sheet = os.bench.sheet.handler(({ input, context }) =>
  sheetOf(context.store.read, input.jobId),
);

const chooseEngineModel = os.bench.chooseEngineModel.handler(
  ({ input: { by, jobId, engineModelId }, context, errors, path }) =>
    write(context, path, by, (writing) => {
      const { store, note } = writing;
      const job = found(jobRowById(store, jobId), 'job');
      if (job.state === 'handed-over') throw errors.JOB_CLOSED();
      found(engineModelById(store, engineModelId), 'engine model');
      store.update(engine).set({ engineModelId }).where(eq(engine.id, job.engineId)).run();
      retakeSteps(writing, found(dossierOf(store, jobId), 'job'));
      note({ job: jobId, engine: job.engineId, engineModel: engineModelId });
      return sheetOf(store, jobId);
    }),
);

export const bench = {
  sheet,
  chooseEngineModel,
  record,
  diagnosis,
  noteFinding,
  decisions,
  decide,
  proposals,
  passHoldPoint,
  overrideHoldPoint,
  reopenHoldPoint,
  gauges,
  addGauge,
  gauge,
  measureWrench,
  checkGauge,
  gaugeReadings,
  testRuns,
  recordTestRun,
  engineHistory,
  printClearanceSheet,
  build,
  beginBuild,
  buildSheet,
  reviseBuildSheet,
  sayWork,
  torqueWalk,
  pullBolt,
  beginTorqueAnew,
  addPhoto,
  photos,
  photo,
};
