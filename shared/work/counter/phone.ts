import {
  type CountryCode,
  isSupportedCountry,
  parsePhoneNumberFromString,
} from 'libphonenumber-js';

/**
 * A telephone number in international form (E.164), or empty when it can't be read as one: what was typed
 * is kept in any case, since a shop also notes 'ask for Ruth'.
 * @param country two-letter country that numbers without a + belong to
 */
export function internationalPhone(typed: string, country: string): string {
  const home: CountryCode | undefined = isSupportedCountry(country) ? country : undefined;
  const number = parsePhoneNumberFromString(typed, home);
  return number?.isPossible() ? number.number : '';
}
