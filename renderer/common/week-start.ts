declare global {
  namespace Intl {
    // ECMA-402's Intl Locale Info; the browsers have it, TypeScript's library not yet.
    interface Locale {
      getWeekInfo(): { firstDay: number };
    }
  }
}

const DAYS = [0, 1, 2, 3, 4, 5, 6] as const;

/** The day that a locale's week begins with; 0 is Sunday, 6 is Saturday. */
export function weekStart(locale: string): (typeof DAYS)[number] {
  const { firstDay } = new Intl.Locale(locale).getWeekInfo();
  return DAYS.find((day) => day === firstDay % 7) ?? 1;
}
