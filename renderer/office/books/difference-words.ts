/** What is said of a difference between what was counted and what was expected. */
export function differenceWords(difference: number, money: (minor: number) => string): string {
  if (difference === 0) return 'As expected';
  return difference > 0 ? `${money(difference)} too much` : `${money(-difference)} missing`;
}
