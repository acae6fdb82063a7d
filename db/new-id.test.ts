import { expect, test } from 'vitest';
import { z } from 'zod';
import { newId } from './new-id.ts';

test('ids are UUIDs of version 7 that sort as they were made, within a millisecond too', () => {
  const noon = Date.parse('2026-03-02T12:00:00.000Z');
  const ids = Array.from({ length: 3_000 }, (_, index) =>
    newId(new Date(noon + Math.floor(index / 1_000))),
  );
  expect([...ids].sort()).toEqual(ids);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids.slice(0, 20)) expect(z.uuidv7().safeParse(id).success).toBe(true);
});
