import { expect, test } from 'vitest';
import { JobId } from '../../shared/contract/ids.ts';
import { afterEvent, EMPTY_QUEUE, placesTaken, type SentReading } from './reading-queue.ts';

const sent = (id: number, place: string): SentReading => ({
  id,
  label: place,
  band: { low: 67, high: 67.02 },
  input: {
    jobId: JobId.parse('00000000-0000-7000-8000-000000000001'),
    feature: 'bore',
    place,
    phase: 'final',
    text: '67.01',
    unit: 'mm',
    gaugeId: null,
    temperature: null,
    position: null,
    keepAsTyped: false,
    typed: null,
    supersedes: null,
  },
});
const slip = { kind: 'decimal', likely: 67.01, unit: 'mm', beside: [] } as const;

test('a place is taken from the Enter on, until its reading is recorded or back in the field', () => {
  const first = sent(1, 'top');
  const second = sent(2, 'middle');
  let queue = afterEvent(EMPTY_QUEUE, { what: 'sent', reading: first });
  queue = afterEvent(queue, { what: 'sent', reading: second });
  expect(placesTaken(queue, 'bore', 'final')).toEqual(new Set(['top', 'middle']));
  expect(placesTaken(queue, 'bore', 'as-received')).toEqual(new Set());

  queue = afterEvent(queue, { what: 'asked', reading: { ...first, slip } });
  expect(queue.waiting).toEqual([second]);
  expect(placesTaken(queue, 'bore', 'final')).toEqual(new Set(['top', 'middle']));

  queue = afterEvent(queue, { what: 'refused', reading: { ...second, error: new Error('full') } });
  queue = afterEvent(queue, { what: 'settled', id: 1 });
  expect(placesTaken(queue, 'bore', 'final')).toEqual(new Set(['middle']));
  queue = afterEvent(queue, { what: 'settled', id: 2 });
  expect(queue).toEqual(EMPTY_QUEUE);
});
