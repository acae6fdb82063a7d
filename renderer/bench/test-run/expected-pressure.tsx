import { Text, TextInput } from '@mantine/core';
import { useState } from 'react';
import { cranking } from '../../../shared/work/bench/test-run-rules.ts';
import { pressureWords } from '../../../shared/work/bench/test-run-words.ts';
import { rememberChoice, rememberedChoice } from '../../common/local-choice.ts';
import { decimal } from '../../common/measure/decimal.ts';
import classes from './test-run.module.css';

/** What the gauge might show at this altitude: to compare with, and no verdict. */
export function ExpectedPressure() {
  const [ratio, setRatio] = useState('');
  const [altitude, setAltitude] = useState(() => rememberedChoice('altitude') ?? '');
  return (
    <details className={classes.expected}>
      <summary>What pressure is to be expected here?</summary>
      <div className={classes.fields}>
        <TextInput
          label="Compression ratio"
          description="As computed or from the manual, such as 6.5"
          value={ratio}
          onChange={(event) => setRatio(event.currentTarget.value)}
          inputMode="decimal"
          autoComplete="off"
          classNames={{ input: classes.figure }}
        />
        <TextInput
          label="Altitude of the shop, metres"
          description="Kept on this station"
          value={altitude}
          onChange={(event) => {
            setAltitude(event.currentTarget.value);
            rememberChoice('altitude', event.currentTarget.value);
          }}
          inputMode="decimal"
          autoComplete="off"
          classNames={{ input: classes.figure }}
        />
      </div>
      <Text role="status" mt="xs">
        {expectation(decimal(ratio), altitude.trim() === '' ? 0 : decimal(altitude))}
      </Text>
    </details>
  );
}

function expectation(ratio: number | null, altitude: number | null): string {
  if (ratio === null || altitude === null)
    return 'Type both figures; sea level when none is given.';
  try {
    const { expected, sentence } = cranking(ratio, altitude);
    return `About ${pressureWords(expected)}. ${sentence}`;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}
