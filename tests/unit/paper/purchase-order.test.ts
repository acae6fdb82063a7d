import { expect, test } from 'vitest';
import type { PurchaseOrder } from '../../../electron/paper/content.ts';
import { drawPaper, fingerprintOf } from '../../../electron/paper/index.ts';
import { readPaper, rowsWith } from './reading-back.ts';
import { head } from './samples.ts';

const { number: _number, issuedAt, issuedBy, shop } = head;

const order: PurchaseOrder = {
  kind: 'purchase-order',
  number: 'P-000012',
  issuedAt,
  issuedBy,
  shop,
  supplier: {
    name: 'Prairie Line Engine Supply',
    phone: '(815) 555-0117',
    email: 'orders@prairieline.example',
    addressLines: ['410 Depot Street', 'Rochelle, IL 61068'],
  },
  accountNumber: 'PL-20418',
  expectedOn: '2026-12-04',
  lines: Array.from({ length: 60 }, (_, place) => ({
    supplierNumber: `PL ${1000 + place}`,
    ownNumber: place % 2 === 0 ? `OS-172-${place}` : '',
    description: 'Piston, standard, OH-172',
    quantity: '3',
    unit: 'pc',
    unitCost: 2_490,
    amount: 7_470,
    job: place === 7 ? 'J000042' : '',
    expectedOn: place === 7 ? '2026-12-01' : null,
  })),
  goods: 448_200,
  carriage: 950,
  total: 449_150,
  note: 'Please send the pistons first.',
};

test('an order has every line in the supplier’s numbers, what it is for, and its sums', async () => {
  const paper = await readPaper(drawPaper(order, fingerprintOf(order)));
  for (const { supplierNumber } of order.lines)
    expect(rowsWith(paper, supplierNumber).join(), supplierNumber).toContain('3 pc');
  for (const words of [
    'Prairie Line Engine Supply',
    'Our account with you: PL-20418',
    'Our number OS-172-58',
    'For J000042',
    'Wanted by Dec 1, 2026',
    'Please send the pistons first.',
    '$4,491.50',
  ])
    expect(paper.text).toContain(words);
});
