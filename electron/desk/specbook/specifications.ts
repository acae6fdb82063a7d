import { engineModelRow } from '../../../db/queries/specbook/models.ts';
import { sourceById } from '../../../db/queries/specbook/sources.ts';
import {
  revisionsOf,
  specificationRow,
  specificationsById,
  torquesOfThread as torquesInBook,
} from '../../../db/queries/specbook/specifications.ts';
import { confirmationRows, contradictingSources } from '../../../db/queries/specbook/witnesses.ts';
import { confirmation, contradiction, specification } from '../../../db/schema/index.ts';
import { questionedTorque, readFastener } from '../../../shared/work/bench/torque-check.ts';
import { figuresAgree } from '../../../shared/work/specbook/contradiction.ts';
import {
  readBand,
  type SpecificationBand,
} from '../../../shared/work/specbook/specification-band.ts';
import { os } from '../implementer.ts';
import { badInput, found } from '../refuse.ts';
import { write } from '../writing.ts';

/** Limits in the base unit, as the store keeps them. */
export const inBase = (band: SpecificationBand) => ({
  lowBase: band.low ?? null,
  highBase: band.high ?? null,
  aimBase: band.aim ?? null,
  wearLimitBase: band.wearLimit ?? null,
});

export const addSpecification = os.specbook.addSpecification.handler(
  ({ input: { by, keepQuestioned, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, staff, at, newId, note }) => {
      found(engineModelRow(store, facts.engineModelId), 'engine model');
      found(sourceById(store, facts.sourceId), 'source');
      const band = readBand(facts.feature, facts);
      if (!band.ok) throw badInput(band.issues);
      const fastener = readFastener(facts.feature, facts.fastener);
      if (!fastener.ok) throw badInput(fastener.issues);
      const questioned = questionedTorque(band.band, fastener.fastener);
      if (questioned !== null && !keepQuestioned)
        throw errors.TORQUE_QUESTIONED({ data: questioned });
      const former = revisionsOf(store, facts.engineModelId, facts.feature)[0];
      const revision = (former?.revision ?? 0) + 1;
      const id = newId();
      store
        .insert(specification)
        .values({
          id,
          ...facts,
          ...inBase(band.band),
          revision,
          enteredBy: staff.id,
          enteredAt: at,
        })
        .run();
      note({
        specification: id,
        engineModel: facts.engineModelId,
        feature: facts.feature,
        revision,
        keptQuestioned: questioned !== null,
      });
      return found(specificationsById(store, [id])[0], 'specification');
    }),
);

export const confirm = os.specbook.confirm.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, ({ store, staff, at, newId, note }) => {
    const { specificationId, sourceId, page } = input;
    const row = found(specificationRow(store, specificationId), 'specification');
    found(sourceById(store, sourceId), 'source');
    const witnesses = [
      { by: row.enteredBy, sourceId: row.sourceId },
      ...confirmationRows(store, specificationId),
    ];
    if (witnesses.some((witness) => witness.by === staff.id && witness.sourceId === sourceId))
      throw errors.ALREADY_WITNESSED();
    store
      .insert(confirmation)
      .values({ id: newId(), specificationId, sourceId, page, by: staff.id, at })
      .run();
    note({ specification: specificationId, source: sourceId });
    return found(specificationsById(store, [specificationId])[0], 'specification');
  }),
);

export const contradict = os.specbook.contradict.handler(
  ({ input: { by, ...facts }, context, errors, path }) =>
    write(context, path, by, ({ store, staff, at, newId, note }) => {
      const row = found(specificationRow(store, facts.specificationId), 'specification');
      found(sourceById(store, facts.sourceId), 'source');
      if (facts.sourceId === row.sourceId) throw errors.SAME_SOURCE();
      if (revisionsOf(store, row.engineModelId, row.feature)[0]?.id !== row.id)
        throw errors.REVISED_SINCE();
      const band = readBand(row.feature, { ...facts, aim: '', wearLimit: '' });
      if (!band.ok) throw badInput(band.issues);
      const { lowBase, highBase } = inBase(band.band);
      // What was written down wrongly is taken back by writing it down again as it stands there.
      const mends = contradictingSources(store, row.id).has(facts.sourceId);
      if (!mends && figuresAgree(row, { ...facts, lowBase, highBase })) throw errors.SAME_FIGURES();
      store
        .insert(contradiction)
        .values({ id: newId(), ...facts, lowBase, highBase, by: staff.id, at })
        .run();
      note({
        specification: row.id,
        source: facts.sourceId,
        low: facts.low,
        high: facts.high,
        unit: facts.unit,
      });
      return found(specificationsById(store, [row.id])[0], 'specification');
    }),
);

export const revisions = os.specbook.revisions.handler(({ input, context: { store } }) => {
  found(engineModelRow(store.read, input.engineModelId), 'engine model');
  return revisionsOf(store.read, input.engineModelId, input.feature);
});

export const torquesOfThread = os.specbook.torquesOfThread.handler(({ input, context }) =>
  torquesInBook(context.store.read, input),
);
