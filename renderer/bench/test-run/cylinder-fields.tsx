import { Select, Text, TextInput } from '@mantine/core';
import {
  LEAK_PATH_LABELS,
  LEAK_PATHS,
  type LeakPath,
} from '../../../shared/work/bench/test-run.ts';
import { judgeLeak } from '../../../shared/work/bench/test-run-rules.ts';
import classes from './test-run.module.css';

const isPath = (value: string): value is LeakPath => LEAK_PATHS.some((path) => path === value);

interface CylinderFieldsProps {
  /** Empty for a single cylinder. */
  readonly name: string;
  readonly unit: 'kPa' | 'psi';
  readonly compression: string;
  readonly leak: { percent: string; path: LeakPath };
  /** As read, when it could be. */
  readonly percent: number | null;
  readonly faults: { compression: string | undefined; percent: string | undefined };
  readonly onCompression: (text: string) => void;
  readonly onLeak: (leak: { percent: string; path: LeakPath }) => void;
}

/** Cranking pressure and leak-down of one cylinder, with what the leak says. */
export function CylinderFields(props: CylinderFieldsProps) {
  const { leak, percent } = props;
  const judged = percent === null ? null : judgeLeak({ percent, path: leak.path });
  const of = props.name === '' ? '' : `, ${props.name.toLowerCase()}`;
  return (
    <div className={classes.cylinder}>
      <div className={classes.fields}>
        <TextInput
          label={`Compression${of}`}
          rightSection={<Text size="sm">{props.unit}</Text>}
          rightSectionWidth={52}
          value={props.compression}
          onChange={(event) => props.onCompression(event.currentTarget.value)}
          error={props.faults.compression}
          inputMode="decimal"
          autoComplete="off"
          maxLength={40}
          classNames={{ input: classes.figure }}
        />
        <TextInput
          label={`Leak-down${of}`}
          rightSection={<Text size="sm">%</Text>}
          value={leak.percent}
          onChange={(event) => props.onLeak({ ...leak, percent: event.currentTarget.value })}
          error={props.faults.percent}
          inputMode="decimal"
          autoComplete="off"
          maxLength={40}
          classNames={{ input: classes.figure }}
        />
        <Select
          label={`Air leaves by${of}`}
          data={LEAK_PATHS.map((value) => ({ value, label: LEAK_PATH_LABELS[value] }))}
          value={leak.path}
          onChange={(value) => {
            if (value !== null && isPath(value)) props.onLeak({ ...leak, path: value });
          }}
          classNames={{ input: classes.choice, option: classes.option }}
        />
      </div>
      {judged !== null && (
        <Text size="sm" role="status">
          <strong>{LEAK_WORDS[judged.size]}</strong> {judged.sentence}
        </Text>
      )}
    </div>
  );
}

const LEAK_WORDS = {
  usual: 'A usual leak.',
  'more-than-usual': 'More than usual.',
  large: 'A large leak.',
} as const;
