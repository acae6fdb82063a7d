/** Refusals that several procedures of the till share. */

export const JOB_CLOSED = {
  status: 409,
  message: 'The job was handed over; its bill is closed. Open a new job for further work.',
} as const;

export const ALREADY_INVOICED = {
  status: 409,
  message: 'The invoice of this job is issued and never changes. Correct it by a credit note.',
} as const;

export const OWNER_WANTED = {
  status: 409,
  message: 'Only an owner can do this. Let the owner take this station, then repeat it.',
} as const;
