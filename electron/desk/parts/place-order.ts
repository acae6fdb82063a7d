import { nextNumber } from '../../../db/numbers.ts';
import { jobRowById } from '../../../db/queries/counter/jobs.ts';
import { chainOf } from '../../../db/queries/parts/chain.ts';
import { jobNeeds } from '../../../db/queries/parts/needs.ts';
import { orderById, orderNumber } from '../../../db/queries/parts/orders.ts';
import { partById } from '../../../db/queries/parts/part.ts';
import { offerOf } from '../../../db/queries/parts/supplier-numbers.ts';
import { supplierById } from '../../../db/queries/parts/suppliers.ts';
import { purchaseOrder, purchaseOrderLine } from '../../../db/schema/index.ts';
import type { ReadStore } from '../../../db/store.ts';
import { jobCode } from '../../../shared/contract/ids.ts';
import type { Supplier } from '../../../shared/contract/parts/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { addDays } from '../../../shared/work/calendar.ts';
import { shortOfMinimum } from '../../../shared/work/parts/order-quantity.ts';
import { costAt } from '../../../shared/work/parts/stock-ledger.ts';
import type { OrderedLine, PurchaseOrder } from '../../paper/content.ts';
import { os } from '../implementer.ts';
import { partyOf, shopHead } from '../papers/head.ts';
import { issue } from '../papers/issue.ts';
import { found } from '../refuse.ts';
import { type Writing, write } from '../writing.ts';
import { enterMovement } from './ledger.ts';
import { settleJob } from './promises.ts';
import { keepWaitingWords } from './waiting-words.ts';

interface Line {
  partId: string;
  quantity: number;
  unitCost: number;
  supplierNumber: string;
  jobId: string | null;
  expectedOn: string | null;
}

/** A line as it stands on the paper. */
function orderedLine({ store, shop }: Writing, line: Line, supplier: Supplier): OrderedLine {
  const part = found(partById(store, line.partId), 'part');
  const supplierNumber =
    line.supplierNumber === ''
      ? offerOf(store, line.partId, supplier).supplierNumber
      : line.supplierNumber;
  return {
    supplierNumber,
    ownNumber: supplierNumber === part.number ? '' : part.number,
    description: part.description,
    quantity: formatQuantity(line.quantity, shop.locale),
    unit: part.unit,
    unitCost: line.unitCost,
    amount: costAt(line.unitCost, line.quantity),
    job: line.jobId === null ? '' : jobCode(found(jobRowById(store, line.jobId), 'job').number),
    expectedOn: line.expectedOn,
  };
}

interface Order {
  number: string;
  supplier: Supplier;
  expectedOn: string;
  carriage: number;
  note: string;
  lines: OrderedLine[];
}

function paperOf(writing: Writing, order: Order): PurchaseOrder {
  const { supplier, carriage, lines } = order;
  const goods = lines.reduce((sum, { amount }) => sum + amount, 0);
  return {
    kind: 'purchase-order',
    ...shopHead(writing, order.number),
    supplier: partyOf(supplier),
    accountNumber: supplier.accountNumber,
    expectedOn: order.expectedOn,
    lines,
    goods,
    carriage,
    total: goods + carriage,
    note: order.note,
  };
}

export const placeOrder = os.parts.placeOrder.handler(({ input, context, errors, path }) =>
  write(context, path, input.by, (writing) => {
    const { store, shop, staff, at, today, newId, note } = writing;
    const supplier = found(supplierById(store, input.supplierId), 'supplier');
    const lines = input.lines.map((line) => orderedLine(writing, line, supplier));
    const short = shortOfMinimum(
      supplier,
      lines.reduce((sum, { amount }) => sum + amount, 0),
    );
    if (short > 0 && !input.belowMinimum) throw errors.BELOW_MINIMUM({ data: { short } });
    const expectedOn = input.expectedOn ?? addDays(today, supplier.leadDays);
    const serial = nextNumber(store, 'purchase-order');
    const number = orderNumber(serial);
    const { carriage, note: words } = input;
    const paper = issue(
      writing,
      null,
      paperOf(writing, { number, supplier, expectedOn, carriage, note: words, lines }),
    );
    const id = newId();
    store
      .insert(purchaseOrder)
      .values({
        id,
        number: serial,
        supplierId: supplier.id,
        note: words,
        carriage,
        currency: shop.currency,
        expectedOn,
        paperId: paper.id,
        by: staff.id,
        at,
      })
      .run();
    keepWaitingWords(writing, () => {
      input.lines.forEach((line, place) => {
        const lineId = newId();
        const supplierNumber = lines[place]?.supplierNumber ?? '';
        store
          .insert(purchaseOrderLine)
          .values({ id: lineId, orderId: id, ...line, supplierNumber })
          .run();
        const { partId, quantity, jobId } = line;
        enterMovement(writing, {
          kind: 'ordered',
          partId,
          quantity,
          jobId,
          orderLineId: lineId,
          reason: `Order ${number}`,
        });
      });
      for (const { jobId, partId } of input.lines) {
        // What was ordered for a job is a need of it; only of a closed one, and of a bill without it, it is none.
        if (jobId !== null && !waitsFor(store, jobId, partId))
          throw errors.JOB_NEEDS_NOTHING({
            data: { jobCode: jobCode(found(jobRowById(store, jobId), 'job').number) },
          });
      }
      const jobs = new Set(input.lines.flatMap(({ jobId }) => jobId ?? []));
      for (const jobId of jobs) settleJob(writing, jobId);
    });
    note({ order: id, number, supplier: supplier.name, lines: lines.length, paper: paper.id });
    return found(orderById(store, id, today), 'order');
  }),
);

/** Whether a job that is here needs a part, or one that took its place or whose place it took. */
function waitsFor(store: ReadStore, jobId: string, partId: string): boolean {
  const { needed, gone } = jobNeeds(store, jobId);
  return !gone && chainOf(store, partId).some((each) => (needed.get(each) ?? 0) > 0);
}
