/** How large a file is: `4.2 MB`. */
export function sizeText(bytes: number, locale: string): string {
  const megabytes = bytes >= 1_000_000;
  return new Intl.NumberFormat(locale, {
    style: 'unit',
    unit: megabytes ? 'megabyte' : 'kilobyte',
    maximumFractionDigits: 1,
  }).format(bytes / (megabytes ? 1_000_000 : 1_000));
}
