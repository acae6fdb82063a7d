/** `2026-10-17` on its own, not within a longer number or code. */
const CALENDAR_DATE = /(?<![\w-])\d{4}-\d{2}-\d{2}(?![\w-])/g;

/** A remark that was kept with its dates in ISO 8601, with each of them as the shop writes dates. */
export const datesWritten = (words: string, write: (isoDate: string) => string): string =>
  words.replace(CALENDAR_DATE, (date) => write(date));
