import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { coresOfPart, partsWithCores } from '../../../db/queries/parts/cores.ts';
import { supplierById } from '../../../db/queries/parts/suppliers.ts';
import { coreMovement } from '../../../db/schema/index.ts';
import type { PartCores } from '../../../shared/contract/parts/index.ts';
import type { CoreMovementKind } from '../../../shared/work/parts/cores.ts';
import { os } from '../implementer.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';

interface CoreEntry {
  partId: string;
  kind: CoreMovementKind;
  quantity: number;
  amount: number;
  jobId: string | null;
  supplierId: string | null;
  note: string;
}

function enterCore(writing: Writing, entry: CoreEntry): PartCores {
  const { store, staff, at, newId, note } = writing;
  if (entry.jobId !== null) found(jobRowById(store, entry.jobId), 'job');
  store
    .insert(coreMovement)
    .values({ id: newId(), ...entry, by: staff.id, at })
    .run();
  const { partId, kind, quantity, amount } = entry;
  note({ part: partId, core: kind, quantity, amount, words: entry.note });
  return found(coresOfPart(store, partId), 'part');
}

const everyCore = os.parts.cores.handler(({ context: { store } }) => partsWithCores(store.read));

const takeInCore = os.parts.takeInCore.handler(({ input, context, path }) =>
  write(context, path, input.by, (writing) => {
    const { partId, quantity, jobId, note } = input;
    found(coresOfPart(writing.store, partId), 'part');
    return enterCore(writing, {
      partId,
      kind: 'taken-in',
      quantity,
      amount: 0,
      jobId,
      supplierId: null,
      note,
    });
  }),
);

const sendCoreBack = os.parts.sendCoreBack.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { partId, supplierId, quantity, expected, note } = input;
    const { here } = found(coresOfPart(writing.store, partId), 'part');
    found(supplierById(writing.store, supplierId), 'supplier');
    if (quantity > here) throw errors.MORE_THAN_HERE({ data: { here } });
    return enterCore(writing, {
      partId,
      kind: 'sent-back',
      quantity,
      amount: expected,
      jobId: null,
      supplierId,
      note,
    });
  }),
);

const settleCore = os.parts.settleCore.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { partId, supplierId, outcome, quantity, amount, note } = input;
    const cores = found(coresOfPart(writing.store, partId), 'part');
    found(supplierById(writing.store, supplierId), 'supplier');
    const away = cores.away.find((each) => each.supplierId === supplierId)?.quantity ?? 0;
    if (quantity > away) throw errors.MORE_THAN_AWAY({ data: { away } });
    return enterCore(writing, {
      partId,
      kind: outcome,
      quantity,
      amount: outcome === 'credited' ? amount : 0,
      jobId: null,
      supplierId,
      note,
    });
  }),
);

export const cores = { cores: everyCore, takeInCore, sendCoreBack, settleCore };
