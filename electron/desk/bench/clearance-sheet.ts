import { nextNumber } from '../../../db/numbers.ts';
import { readingsOf } from '../../../db/queries/bench.ts';
import { specificationsById } from '../../../db/queries/specbook.ts';
import { BENCH_CAUTIONS } from '../../../shared/work/cautions.ts';
import { os } from '../implementer.ts';
import { decisionLines } from '../papers/decisions.ts';
import { paperHead, paperNumber } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { photoLines } from '../papers/photos.ts';
import { featureReadings } from '../papers/readings.ts';
import { write } from '../writing.ts';
import { bookOf } from './book.ts';
import { sheetOf } from './sheet.ts';

export const printClearanceSheet = os.bench.printClearanceSheet.handler(
  ({ input, context, errors, path }) =>
    write(context, path, input.by, (writing) => {
      const { store, shop, note } = writing;
      const { jobId, bothUnits } = input;
      const { job, model } = bookOf(store, jobId);
      const sheet = sheetOf(store, jobId);
      const readings = readingsOf(store, jobId);
      if (readings.every(({ superseded }) => superseded)) throw errors.NOTHING_MEASURED();
      const heldAgainst = readings.flatMap(({ specificationId }) => specificationId ?? []);
      const number = paperNumber('K', nextNumber(store, 'clearance-sheet'));
      const paper = issue(writing, jobId, {
        kind: 'clearance-sheet',
        ...paperHead(writing, job, number),
        engineModel: model ? `${model.make} ${model.model}` : '',
        engineHours:
          job.engineHours === null
            ? ''
            : new Intl.NumberFormat(shop.locale).format(job.engineHours),
        decisions: decisionLines(store, jobId, { cylinders: sheet.cylinders, bothUnits }),
        features: featureReadings(sheet, specificationsById(store, heldAgainst), {
          ...shop,
          bothUnits,
        }),
        photos: photoLines(store, job),
        cautions: BENCH_CAUTIONS,
      });
      note({ job: jobId, clearanceSheet: number, fingerprint: paper.fingerprint });
      return paper;
    }),
);
