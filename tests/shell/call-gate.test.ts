import { expect, test } from 'vitest';
import { createCallGate } from '../../electron/launch/call-gate.ts';

function pending() {
  let finish: (value: string) => void = () => undefined;
  const promise = new Promise<string>((resolve) => {
    finish = resolve;
  });
  return { promise, finish };
}

test('draining waits for the calls under way and lets no new one in', async () => {
  const gate = createCallGate();
  const slow = pending();
  const call = gate.pass({ next: () => slow.promise });
  let drained = false;
  const draining = gate.drain().then((left) => {
    drained = true;
    return left;
  });
  await expect(gate.pass({ next: async () => 'late' })).rejects.toMatchObject({
    code: 'STORE_BUSY',
    status: 503,
  });
  expect(drained).toBe(false);
  slow.finish('done');
  expect(await call).toBe('done');
  expect(await draining).toBe(0);
});

test('a call that fails is no longer under way', async () => {
  const gate = createCallGate();
  const failing = gate.pass({ next: () => Promise.reject(new Error('no')) });
  await expect(failing).rejects.toThrow('no');
  expect(await gate.drain()).toBe(0);
});

test('a call that hangs holds the end up no longer than the limit', async () => {
  const gate = createCallGate();
  void gate.pass({ next: () => pending().promise });
  expect(await gate.drain(20)).toBe(1);
});

test('who wants to be alone waits for the others, and those that come meanwhile wait for it', async () => {
  const gate = createCallGate();
  const order: string[] = [];
  const slow = pending();
  const before = gate.pass({ next: () => slow.promise.then(() => order.push('before')) });
  const alone = gate.alone(() => order.push('alone'), 0);
  const after = gate.pass({ next: async () => order.push('after') });
  await new Promise(setImmediate);
  expect(order).toEqual([]);
  slow.finish('done');
  await Promise.all([before, alone, after]);
  expect(order).toEqual(['before', 'alone', 'after']);
});

test('a call that wants to be alone does not wait for itself', async () => {
  const gate = createCallGate();
  const call = gate.pass({ next: () => gate.alone(() => 'done', 1) });
  expect(await call).toBe('done');
});

test('others who don’t end are not waited for without end, and the gate is open again', async () => {
  const gate = createCallGate();
  const slow = pending();
  const before = gate.pass({ next: () => slow.promise });
  await expect(gate.alone(() => 'done', 0, 20)).rejects.toMatchObject({ code: 'STORE_BUSY' });
  expect(await gate.pass({ next: async () => 'in' })).toBe('in');
  slow.finish('done');
  await before;
});

test('nobody is alone in a gate that was closed meanwhile', async () => {
  const gate = createCallGate();
  const slow = pending();
  const before = gate.pass({ next: () => slow.promise });
  const alone = gate.alone(() => 'done', 0);
  const drained = gate.drain();
  slow.finish('done');
  await expect(alone).rejects.toMatchObject({ code: 'STORE_BUSY' });
  expect(await drained).toBe(0);
  await before;
});
