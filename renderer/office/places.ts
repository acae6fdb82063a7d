/** What a new shop is offered from the machine it is opened on; everything can be changed. */
export interface Place {
  locale: string;
  timeZone: string;
  country: string;
  currency: string;
  paperSize: 'A4' | 'Letter';
}

/** Countries that print on Letter. */
const LETTER = ['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'GT', 'PA', 'DO', 'PR'];

const EURO = 'AT BE CY DE EE ES FI FR GR HR IE IT LT LU LV MT NL PT SI SK BG'.split(' ');
const CURRENCY: Record<string, string> = {
  US: 'USD',
  CA: 'CAD',
  MX: 'MXN',
  GB: 'GBP',
  AU: 'AUD',
  NZ: 'NZD',
  JP: 'JPY',
  PL: 'PLN',
  NO: 'NOK',
  SE: 'SEK',
  DK: 'DKK',
  CH: 'CHF',
  CZ: 'CZK',
  ...Object.fromEntries(EURO.map((country) => [country, 'EUR'])),
};

export function placeOf(locale: string, timeZone: string): Place {
  const country = new Intl.Locale(locale).maximize().region ?? 'US';
  return {
    locale,
    timeZone,
    country,
    currency: CURRENCY[country] ?? 'USD',
    paperSize: LETTER.includes(country) ? 'Letter' : 'A4',
  };
}

export const thisPlace = (): Place =>
  placeOf(navigator.language, Intl.DateTimeFormat().resolvedOptions().timeZone);

const names = (kind: 'currency' | 'timeZone'): string[] => Intl.supportedValuesOf(kind);

export const CURRENCIES: readonly string[] = names('currency');
/** UTC is missing from what Intl lists, and a container's clock is often set to it. */
export const TIME_ZONES: readonly string[] = [...new Set([...names('timeZone'), 'UTC'])].sort();
