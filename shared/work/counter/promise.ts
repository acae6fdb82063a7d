/** Whether something that is expected on a day comes too late for what was promised. ISO dates; null: nothing was promised. */
export const comesTooLate = (expectedOn: string, promisedFor: string | null): boolean =>
  promisedFor !== null && expectedOn > promisedFor;
