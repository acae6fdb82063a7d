import { describe, expect, it } from 'vitest';
import { canonicalJson, fingerprintOf } from '../../../electron/paper/fingerprint.ts';
import { claimTicket, workOrder } from './samples.ts';

// RFC 8785, JSON Canonicalization Scheme (2020), sections 3.2.2 to 3.2.4: the example. From memory.
describe('canonical JSON', () => {
  it('writes literals, numbers and strings as RFC 8785 does', () => {
    const value: unknown = JSON.parse(
      String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
    );
    expect(canonicalJson(value)).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('sorts names by their UTF-16 code units', () => {
    const names = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    const json = canonicalJson(Object.fromEntries(names.map((name) => [name, 0])));
    expect(json).toBe(`{${sorted.map((name) => `${JSON.stringify(name)}:0`).join(',')}}`);
  });

  it('refuses what JSON cannot carry', () => {
    expect(() => canonicalJson(Number.NaN)).toThrow(TypeError);
    expect(() => canonicalJson(['\ud800'])).toThrow(TypeError);
    expect(() => canonicalJson(() => 1)).toThrow(TypeError);
  });
});

describe('fingerprint', () => {
  it('does not depend on the order in which the content was put together', () => {
    const reversed = Object.fromEntries(Object.entries(workOrder).reverse());
    expect(fingerprintOf({ ...workOrder, ...reversed })).toBe(fingerprintOf(workOrder));
    expect(fingerprintOf(workOrder)).toMatch(/^[0-9a-f]{64}$/);
  });

  it('changes with one digit', () => {
    const changed = { ...claimTicket, spendingLimit: claimTicket.spendingLimit + 1 };
    expect(fingerprintOf(changed)).not.toBe(fingerprintOf(claimTicket));
  });
});
