import { ORPCError } from '@orpc/server';
import { afterEach, expect, test, vi } from 'vitest';
import { tellFaults } from '../../electron/launch/tell-faults.ts';

afterEach(() => vi.restoreAllMocks());

const failingWith = (error: unknown) => tellFaults({ next: () => Promise.reject(error) });

test('a fault of ours is told on standard error and goes on; a refusal is not told', async () => {
  const told = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const fault = new TypeError('a mistake');
  await expect(failingWith(fault)).rejects.toBe(fault);
  expect(told).toHaveBeenCalledExactlyOnceWith(expect.stringContaining('TypeError: a mistake\n'));

  const refusal = new ORPCError('NOT_FOUND');
  await expect(failingWith(refusal)).rejects.toBe(refusal);
  expect(await tellFaults({ next: async () => 'done' })).toBe('done');
  expect(told).toHaveBeenCalledOnce();
});
