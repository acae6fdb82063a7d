import { expect, test } from 'vitest';
import { sameThread } from '../../trade/index.ts';
import { isTorque, readFastener } from './torque-check.ts';

const bolts = { designation: '', diameter: 8, pitch: 1.25, propertyClass: '8.8', stages: [0.5, 1] };

test('a head is tightened by its bolts; a length has none', () => {
  expect(isTorque('head-bolt-torque')).toBe(true);
  expect(readFastener('head-bolt-torque', bolts)).toEqual({ ok: true, fastener: bolts });
  expect(readFastener('head-bolt-torque', null)).toMatchObject({ ok: false });
  expect(isTorque('plug-gap')).toBe(false);
  expect(readFastener('plug-gap', bolts)).toMatchObject({ ok: false });
  expect(readFastener('plug-gap', null)).toEqual({ ok: true, fastener: null });
});

// ISO 261 (M8: 1.25 coarse, 1 fine) and ASME B1.1 (5/16-18: 7.938 mm, 25.4/18 = 1.4111 mm), from memory.
test('a thread is the same however it was written', () => {
  expect(sameThread({ diameter: 7.9375, pitch: 1.4111 }, { diameter: 7.938, pitch: 1.411 })).toBe(
    true,
  );
  expect(sameThread({ diameter: 8, pitch: 1.25 }, { diameter: 8, pitch: 1 })).toBe(false);
  expect(sameThread({ diameter: 8, pitch: 1.25 }, { diameter: 7.9375, pitch: 1.25 })).toBe(false);
});
