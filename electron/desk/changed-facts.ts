type Value = string | number | boolean | null | readonly string[];

const inWords = (value: Value): string => {
  if (value === null) return '–';
  return (typeof value === 'object' ? value.join(', ') : String(value)) || '–';
};

/** What is different, as the journal tells it: `old → new` under each name. */
export function changedFacts<Facts extends { [Name in keyof Facts]: Value }>(
  before: Facts,
  after: Facts,
): Record<string, string> {
  const names = Object.keys(after) as (keyof Facts & string)[];
  return Object.fromEntries(
    names
      .map((name) => [name, `${inWords(before[name])} → ${inWords(after[name])}`] as const)
      .filter(([name]) => inWords(before[name]) !== inWords(after[name])),
  );
}
