import { Radio, Text } from '@mantine/core';
import { IconCheck } from '@tabler/icons-react';
import type { Decision, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { formatQuantity } from '../../../shared/money/index.ts';
import { useShop } from '../../common/shop.tsx';
import classes from './decide.module.css';
import { sizeWords, stepWords } from './decision-words.ts';

type Step = PartToDecide['steps'][number];

/** Which oversize or undersize: what it is machined to, and what the shelf holds for it. */
export function StepChoice(props: {
  readonly choice: Decision['choice'];
  readonly steps: readonly Step[];
  readonly advised: number | null;
  readonly value: number | null;
  readonly onChange: (step: number) => void;
}) {
  return (
    <Radio.Group
      label={props.choice === 'undersize' ? 'How far under' : 'How far over'}
      value={props.value === null ? null : String(props.value)}
      onChange={(value) => props.onChange(Number(value))}
    >
      <div className={classes.steps}>
        {props.steps.map((step) => (
          <Radio.Card
            key={step.step}
            value={String(step.step)}
            className={classes.choice}
            data-advised={step.step === props.advised}
          >
            <Text span fw="inherit">
              <span className={classes.label}>
                {step.step === props.value && <IconCheck size={18} aria-hidden />}
                {stepWords(props.choice, step.step)}
              </span>
            </Text>
            {step.step === props.advised && <span className={classes.note}>Advised</span>}
            {step.machineTo !== null && (
              <span className={classes.note}>to {sizeWords(step.machineTo)}</span>
            )}
            <OnTheShelf parts={step.parts} />
          </Radio.Card>
        ))}
      </div>
    </Radio.Group>
  );
}

function OnTheShelf({ parts }: { readonly parts: Step['parts'] }) {
  const { locale } = useShop();
  const [part] = parts;
  if (part === undefined) return <span className={classes.note}>none in the parts list</span>;
  return (
    <span className={classes.note}>
      {part.number}:{' '}
      {part.onHand > 0
        ? `${formatQuantity(part.onHand, locale)} on the shelf`
        : 'none on the shelf'}
    </span>
  );
}
