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
